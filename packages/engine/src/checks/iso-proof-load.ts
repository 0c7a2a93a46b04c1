import { gravity } from "../catalog/gravity.ts";
import { openWorking } from "../working/open-working.ts";
import type { Clause, Working } from "../working/working.ts";

/** What is known of the stacking a container was tested for: nothing, or the mass on its plate, kg. */
export type StackingRecord = { readonly allowableStackingKg?: number; readonly edition: "1990" | "2006 and later" };

const proof: Readonly<Record<StackingRecord["edition"], number>> = { "1990": 848_000, "2006 and later": 942_000 };

/**
 * Force the stacking test puts on each corner post of a whole, undamaged, new container, N. A plate overrides the
 * edition's figure: its mass is the one allowed at 1.8 g on four posts.
 */
export function isoProofLoad(record: StackingRecord): Working {
  const clause: Clause = {
    document: "ISO 1496-1",
    edition: record.edition,
    place: "test 1, stacking",
    certainty: "memory",
  };
  const working = openWorking("Proof load of a corner post", clause);
  if (record.allowableStackingKg === undefined) {
    working.let("F_p", proof[record.edition], "N", "force on each post in the stacking test", "memory", "ISO 1496-1");
  } else {
    working.let("m", record.allowableStackingKg, "kg", "allowable stacking mass on the plate", "published", "plate");
    working.let("g", gravity.value, "m/s²", "gravity", gravity.certainty, gravity.source);
    working.compute("F_p", "1.8*m*g/4", "N");
  }
  working.note("A proof load on a new, whole, undamaged container; any cut of wall, rail or roof voids it.");
  return working.giving("F_p");
}
