import { z } from "zod";
import { Digest, OptionId } from "./ids.ts";
import { Scheme } from "./scheme.ts";

/** An alternative as it is drawn. */
export const OptionDrawn = z
  .strictObject({ id: OptionId, contentDigest: Digest, scheme: Scheme })
  .meta({ id: "OptionDrawn" });
export type OptionDrawn = z.infer<typeof OptionDrawn>;
