import { z } from "zod";
import { ElementId } from "./ids.ts";
import { MemberName } from "./part-names.ts";
import { PositiveLengthUm } from "./quantity.ts";
import { SectionName } from "./sections.ts";
import { personText } from "./text.ts";

/** What was found or proved of one member, in place of what the catalogue assumes. Absent fields stay as assumed. */
export const Override = z
  .strictObject({
    id: ElementId,
    /** A container, post or beam. */
    elementId: ElementId,
    /** Which part of a container; absent for a post or beam. */
    member: MemberName.exactOptional(),
    section: SectionName.exactOptional(),
    yieldMpa: z.int().min(100).max(1000).exactOptional(),
    /** Measured thickness of the steel. */
    thicknessUm: PositiveLengthUm.exactOptional(),
    /** Certificate, survey or test it rests on. */
    source: personText(300),
  })
  .refine((found) => found.section !== undefined || found.yieldMpa !== undefined || found.thicknessUm !== undefined, {
    message: "says neither section nor yield strength nor thickness",
  })
  .meta({ id: "Override" });
export type Override = z.infer<typeof Override>;
