import type { Mark } from "@cornerway/schema";
import type { HoldNeeded } from "../strength/holds-needed.ts";
import type { PadSize } from "../strength/element-result.ts";
import type { SharedWork } from "../strength/shared-work.ts";
import type { Drawn } from "./drawn-trial.ts";
import { usedLive, usedOf, WALL_MODEL_ACCURACY, type UsedPart } from "./known-parts.ts";
import { asksForBearings, moves } from "./mark-groups.ts";
import { newElements } from "./new-elements.ts";
import type { Lacking } from "./repairs/repair.ts";
import type { Accepted, SearchGround } from "./search-ground.ts";

/** What a trial lacks under the vectors that governed the scheme as it is: never more than the whole run finds. */
export function* lackingAtALook(drawn: Drawn, coming: readonly Drawn[], ground: SearchGround): SharedWork<Lacking> {
  const { parts } = yield* ground.look(drawn, coming);
  return yield* lacking(drawn, ground, { parts: parts.map(usedLive), holds: [], wouldDo: new Map() });
}

/** What it lacks by the whole run. */
export function* lackingOf(drawn: Drawn, after: Accepted, ground: SearchGround): SharedWork<Lacking> {
  const wouldDo = new Map<string, PadSize>();
  for (const { ownerId, wouldDo: size } of after.results) if (size !== undefined) wouldDo.set(ownerId, size);
  const holds = after.holds.filter((hold) => isNewHold(hold, ground));
  return yield* lacking(drawn, ground, { parts: after.results.map(usedOf), holds, wouldDo });
}

function* lacking(
  { trial, scheme: tried }: Drawn,
  ground: SearchGround,
  found: Pick<Lacking, "parts" | "holds" | "wouldDo">,
): SharedWork<Lacking> {
  const added = newElements(trial.operations);
  const over = found.parts.filter(({ use }) => use > 1);
  const unsettled = over.filter((part) => ground.isLeftOpen(part));
  const parts: UsedPart[] = [];
  for (const part of over) {
    const asked = unsettled.includes(part) || added.has(part.ownerId) || isOfMark(part, ground.mark);
    if (asked || (yield* ground.isWorse(part))) parts.push(part);
  }
  return { ...found, scheme: ground.scheme, tried, parts, unsettled };
}

/** A part in which two of the elements the mark is about bear on each other, where the mark asks for it. */
export function isOfMark({ id }: Pick<UsedPart, "id">, { elements, fact }: Mark): boolean {
  if (!asksForBearings(fact.kind)) return false;
  const words = new Set(id.split(/[ ,:]+/));
  return elements.filter((element) => words.has(element)).length >= 2;
}

/**
 * What nothing holds already has a mark of its own, where it asks for no more than before; a mark of a body that moves asks for
 * every hold of its unit.
 */
function isNewHold(hold: HoldNeeded, { asIs, mark, unitId }: SearchGround): boolean {
  if (moves.has(mark.fact.kind) && hold.ownerId === unitId) return true;
  return !asIs.holds.some(
    ({ kind, ownerId, forceN }) =>
      kind === hold.kind && ownerId === hold.ownerId && hold.forceN <= forceN * (1 + WALL_MODEL_ACCURACY) + NEWTON,
  );
}

const NEWTON = 1;
