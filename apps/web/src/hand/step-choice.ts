import type { Scheme } from "@cornerway/schema";
import type { Keys } from "../keys/use-keys.ts";
import { nextElement } from "./element-order.ts";

/** `.` and `,` step through the elements: the next one is chosen and, where a view shows it, focused and read out. */
export const choiceKeys = (scheme: Scheme, chosenId: string | null, choose: (id: string | null) => void): Keys => ({
  ".": () => step(scheme, chosenId, 1, choose),
  ",": () => step(scheme, chosenId, -1, choose),
});

/** With Shift, `.` and `,` take the next thing into the choice; a keyboard names those keys by what it writes with Shift. */
export const alsoKeys = (scheme: Scheme, chosenId: string | null, also: (id: string) => void): Keys => {
  const [next, former] = [() => step(scheme, chosenId, 1, also), () => step(scheme, chosenId, -1, also)];
  return {
    "Shift+.": next,
    "Shift+>": next,
    "Shift+:": next,
    "Shift+,": former,
    "Shift+<": former,
    "Shift+;": former,
  };
};

function step(scheme: Scheme, chosenId: string | null, by: 1 | -1, choose: (id: string) => void): void {
  const next = nextElement(scheme, chosenId, by);
  if (next === null) return;
  choose(next);
  document.querySelector<SVGGElement>(`[role=treeitem][data-element="${CSS.escape(next)}"]`)?.focus();
}
