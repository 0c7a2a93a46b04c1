import { choiceKeys } from "../../hand/step-choice.ts";
import type { Hand } from "../../hand/use-hand.ts";
import type { Eye } from "../../paper/use-eye.ts";
import type { KeyLine } from "../../room/KeysSlip.tsx";
import type { Keys } from "../../keys/use-keys.ts";
import type { RequestDraft } from "./use-request-draft.ts";

export const reviewKeyLines: readonly KeyLine[] = [
  ["P S H T C W", "tools, while a change request is drawn"],
  [". and ,", "choose the next, the former thing"],
  ["Page Up, Page Down", "level"],
  ["V, Shift V", "next, former side of the building"],
  ["U", "the chosen container unfolded"],
  ["Enter", "set what is in hand; the working of the chosen thing's governing check"],
  ["A, R", "take in; write or answer"],
  ["Ctrl Z", "take the last proposed thing back"],
];

interface ReviewKeysGiven {
  hand: Hand;
  eye: Eye;
  request: RequestDraft;
  keysShown: boolean;
  showKeys: (shown: boolean) => void;
}

export const reviewKeys = ({ hand, eye, request, keysShown, showKeys }: ReviewKeysGiven): Keys => ({
  ...choiceKeys(hand.shown, hand.chosenId, hand.choose),
  PageUp: eye.up,
  PageDown: eye.down,
  Escape: () => (keysShown ? showKeys(false) : hand.letGo()),
  p: () => hand.take("post"),
  s: () => hand.take("stack"),
  h: () => hand.take("shift"),
  c: () => hand.take("cut"),
  w: () => hand.take("open-wall"),
  t: () => hand.take("turn"),
  Enter: hand.setHeldUnit,
  "Ctrl+z": request.takeBack,
  r: () => document.querySelector<HTMLElement>(".slip textarea")?.focus(),
  "?": () => showKeys(!keysShown),
});
