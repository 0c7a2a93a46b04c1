import type { Assessment } from "./assessment.ts";
import { dispositions, type Disposition, type Stamp } from "./review.ts";
import { hangsOn } from "./scheme-collections.ts";
import type { Scheme } from "./scheme.ts";

/** The gravest disposition stamped on the items of a revision; undefined while none is. */
export function gravestOf(stamps: readonly Pick<Stamp, "elementId" | "disposition">[]): Disposition | undefined {
  const items = stamps.filter(({ elementId }) => elementId !== undefined);
  return items.map(({ disposition }) => disposition).sort((one, other) => gravity(other) - gravity(one))[0];
}

/** From the lightest to the gravest. */
export const gravity = (disposition: Disposition): number => dispositions.indexOf(disposition);

/** Of the elements found otherwise those that a stamp covers: its item with what hangs on it, or the whole. */
export function foundOn(found: readonly string[], scheme: Scheme, elementId: string | undefined): string[] {
  if (elementId === undefined) return found.toSorted();
  const ids = new Set([elementId, ...hangsOn(scheme, elementId)]);
  return found.filter((id) => ids.has(id)).toSorted();
}

/** What an assessment says of one item and what hangs on it; of everything where no item is named. */
export function resultOn(result: Assessment, scheme: Scheme, elementId: string | undefined): Assessment {
  if (elementId === undefined) return result;
  const ids = new Set([elementId, ...hangsOn(scheme, elementId)]);
  return { ...result, marks: result.marks.filter(({ elements }) => elements.some((id) => ids.has(id))) };
}
