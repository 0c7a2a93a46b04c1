import { containerTypes } from "@cornerway/schema";
import type { Scheme } from "@cornerway/schema";
import type { Hand } from "../../hand/use-hand.ts";
import { alsoKeys, choiceKeys } from "../../hand/step-choice.ts";
import { labelled } from "../../hand/first-unit.ts";
import type { Eye } from "../../paper/use-eye.ts";
import type { Keys } from "../../keys/use-keys.ts";
import { moveUnit, retypeUnit } from "../../tools/move-unit.ts";
import { turnUnit } from "../../tools/turn-unit.ts";
import type { useDraftActs } from "./use-draft-acts.ts";

const stepMm = 10;
/** A cross-member bay; pitch from memory. */
const bayMm = 305;

interface SchemeKeysGiven {
  hand: Hand;
  eye: Eye;
  acts: ReturnType<typeof useDraftActs>;
  draft: Scheme;
  keysShown: boolean;
  showKeys: (shown: boolean) => void;
}

export function schemeKeys({ hand, eye, acts, draft, keysShown, showKeys }: SchemeKeysGiven): Keys {
  const away = () => hand.remove();
  return {
    s: () => hand.take("stack"),
    h: () => hand.take("shift"),
    t: () => turn(hand, draft),
    c: () => hand.take("cut"),
    w: () => hand.take("open-wall"),
    p: () => hand.take("post"),
    "[": () => resize(hand, draft, 1),
    "]": () => resize(hand, draft, -1),
    ...choiceKeys(hand.shown, hand.chosenId, hand.choose),
    ...alsoKeys(hand.shown, hand.chosenId, hand.chooseAlso),
    "Ctrl+a": () => hand.chooseAll(draft.containers.map(({ id }) => id)),
    e: focusAdding,
    PageUp: eye.up,
    PageDown: eye.down,
    Enter: () => hand.setHeldUnit(),
    Escape: () => (keysShown ? showKeys(false) : hand.letGo()),
    Delete: away,
    Backspace: away,
    "Ctrl+z": acts.undo,
    "Ctrl+Shift+z": acts.redo,
    "Ctrl+y": acts.redo,
    "?": () => showKeys(!keysShown),
    ...(hand.chosenId === null && hand.held === null
      ? {}
      : { ...arrows("", stepMm, hand), ...arrows("Shift+", bayMm, hand) }),
  };
}

/** Puts the focus on the first of what can be added to the chosen thing. */
function focusAdding(): void {
  document.querySelector<HTMLElement>(".adding button")?.focus();
}

const arrows = (held: string, byMm: number, hand: Hand): Keys => ({
  [`${held}ArrowRight`]: () => hand.step({ rightMm: byMm, upMm: 0 }),
  [`${held}ArrowLeft`]: () => hand.step({ rightMm: -byMm, upMm: 0 }),
  [`${held}ArrowUp`]: () => hand.step({ rightMm: 0, upMm: byMm }),
  [`${held}ArrowDown`]: () => hand.step({ rightMm: 0, upMm: -byMm }),
});

/** Turns what is in hand or chosen by a quarter; with neither, takes the tool. */
function turn(hand: Hand, draft: Scheme): void {
  if (hand.held?.kind === "unit") return hand.hold({ kind: "unit", unit: turnUnit(hand.held.unit, 90_000) });
  const unit = draft.containers.find(({ id }) => id === hand.chosenId);
  if (unit === undefined) return hand.take("turn");
  hand.finish(moveUnit(draft, turnUnit(unit, 90_000)));
}

/** The next size down (1) or up (−1) in the list of ISO 668. */
function resize(hand: Hand, draft: Scheme, by: 1 | -1): void {
  const held = hand.held?.kind === "unit" ? hand.held.unit : null;
  const unit = held ?? draft.containers.find(({ id }) => id === hand.chosenId);
  if (unit === undefined) return resizeOpening(hand, draft, -by);
  const type = containerTypes[containerTypes.indexOf(unit.type) + by];
  if (type === undefined) return;
  if (held !== null) hand.hold({ kind: "unit", unit: labelled(draft, { ...held, type }) });
  else hand.finish(retypeUnit(draft, unit, type));
}

function resizeOpening(hand: Hand, draft: Scheme, sign: number): void {
  const opening = draft.openings.find(({ id }) => id === hand.chosenId);
  if (opening === undefined) return;
  const { id, offsetUm, sillUm, heightUm } = opening;
  const widthUm = Math.max(stepMm * 1000, opening.widthUm + sign * stepMm * 1000);
  hand.finish([{ kind: "opening.shape", id, offsetUm, sillUm, widthUm, heightUm }]);
}
