import type { Scheme } from "@cornerway/schema";
import type { Hand } from "../../hand/use-hand.ts";
import { alsoKeys, choiceKeys } from "../../hand/step-choice.ts";
import type { Eye } from "../../paper/use-eye.ts";
import type { Keys } from "../../keys/use-keys.ts";
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
    t: () => hand.turn(),
    c: () => hand.take("cut"),
    w: () => hand.take("open-wall"),
    p: () => hand.take("post"),
    "[": () => hand.resize(1),
    "]": () => hand.resize(-1),
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
