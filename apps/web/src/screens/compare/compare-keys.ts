import { useEffect, useState } from "react";
import { singleLetters } from "../../keys/single-letters.ts";
import type { KeyLine } from "../../room/KeysSlip.tsx";

export const compareKeyLines: readonly KeyLine[] = [
  ["B held", "the former revision alone"],
  ["L", "the changes as a table, and back"],
  [". and ,", "choose the next, the former thing"],
  ["Page Up, Page Down", "level"],
  ["V, Shift V", "next, former side of the building"],
];

/** True while B is held down and nobody types in a field. */
export function useBHeld(): boolean {
  const [held, setHeld] = useState(false);
  useEffect(() => {
    const press = ({ key, ctrlKey, metaKey, altKey, target }: KeyboardEvent) => {
      const typing = target instanceof Element && target.closest("input:not([type=range]), textarea, select") !== null;
      if (key.toLowerCase() === "b" && !ctrlKey && !metaKey && !altKey && !typing && singleLetters.on()) setHeld(true);
    };
    const lift = ({ key }: KeyboardEvent) => {
      if (key.toLowerCase() === "b") setHeld(false);
    };
    const away = () => setHeld(false);
    addEventListener("keydown", press);
    addEventListener("keyup", lift);
    addEventListener("blur", away);
    return () => {
      removeEventListener("keydown", press);
      removeEventListener("keyup", lift);
      removeEventListener("blur", away);
    };
  }, []);
  return held;
}
