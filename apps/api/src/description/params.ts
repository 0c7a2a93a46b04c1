import { ProjectId } from "@cornerway/schema";
import { z } from "zod";

/** The address of everything that belongs to one project. */
export const projectParams = z.strictObject({ projectId: ProjectId });

/** The largest act or file taken for a draft: a scheme of 5,000 elements laid out with spaces is about half of it. */
export const largestDrawnBytes = 4 * 1024 * 1024;
