import { z } from "zod";
import { ElementId } from "./ids.ts";
import { LengthUm } from "./quantity.ts";
import { SectionName } from "./sections.ts";
import { Tag } from "./text.ts";

const SpotUm = z.strictObject({ xUm: LengthUm, yUm: LengthUm, zUm: LengthUm });

/** Added beam, straight between two points of its upper face on its centre line. */
export const Beam = z
  .strictObject({ id: ElementId, tag: Tag, from: SpotUm, to: SpotUm, section: SectionName })
  .refine(({ from, to }) => from.xUm !== to.xUm || from.yUm !== to.yUm, {
    path: ["to"],
    message: "the two ends must be apart in plan; what stands upright is a post",
  })
  .meta({ id: "Beam" });
export type Beam = z.infer<typeof Beam>;
