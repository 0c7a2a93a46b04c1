import { z } from "zod";

/** Names a row of the section catalogue. */
export const SectionName = z
  .string()
  .regex(/^[A-Za-z0-9 ×.x/-]{1,40}$/, "the name of a section in the catalogue")
  .meta({ id: "SectionName" });
