import { ProjectId } from "@cornerway/schema";
import { z } from "zod";

/** The address of everything that belongs to one project. */
export const projectParams = z.strictObject({ projectId: ProjectId });
