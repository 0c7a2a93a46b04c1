import { containerTypes, type Operation, type Scheme } from "@cornerway/schema";
import { moveUnit, retypeUnit } from "../tools/move-unit.ts";
import { turnUnit } from "../tools/turn-unit.ts";
import { labelled } from "./first-unit.ts";
import type { Held } from "./held.ts";

/** What a key comes to that turns or sizes what is in hand or chosen; null where there is nothing to. */
export type TurnedOrSized = { kind: "hold"; held: Held } | { kind: "draw"; operations: Operation[] } | null;

const stepUm = 10_000;

/** By a quarter. */
export function turned(scheme: Scheme, held: Held | null, chosenId: string | null): TurnedOrSized {
  if (held?.kind === "unit") return { kind: "hold", held: { kind: "unit", unit: turnUnit(held.unit, 90_000) } };
  const unit = scheme.containers.find(({ id }) => id === chosenId);
  return unit === undefined ? null : { kind: "draw", operations: moveUnit(scheme, turnUnit(unit, 90_000)) };
}

/** The next size down (1) or up (−1) in the list of ISO 668; an opening narrower or wider by a step. */
export function resized(scheme: Scheme, held: Held | null, chosenId: string | null, by: 1 | -1): TurnedOrSized {
  const inHand = held?.kind === "unit" ? held.unit : null;
  const unit = inHand ?? scheme.containers.find(({ id }) => id === chosenId);
  if (unit === undefined) return resizedOpening(scheme, chosenId, -by);
  const type = containerTypes[containerTypes.indexOf(unit.type) + by];
  if (type === undefined) return null;
  if (inHand === null) return { kind: "draw", operations: retypeUnit(scheme, unit, type) };
  return { kind: "hold", held: { kind: "unit", unit: labelled(scheme, { ...inHand, type }) } };
}

function resizedOpening(scheme: Scheme, chosenId: string | null, sign: number): TurnedOrSized {
  const opening = scheme.openings.find(({ id }) => id === chosenId);
  if (opening === undefined) return null;
  const { id, offsetUm, sillUm, heightUm } = opening;
  const widthUm = Math.max(stepUm, opening.widthUm + sign * stepUm);
  return { kind: "draw", operations: [{ kind: "opening.shape", id, offsetUm, sillUm, widthUm, heightUm }] };
}
