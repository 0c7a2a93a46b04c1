import { useEffect, useRef } from "react";
import { singleLetters } from "./single-letters.ts";

/** What each key does on this sheet; "Ctrl+z" and "Shift+N" name their modifiers. */
export type Keys = Readonly<Record<string, () => void>>;

/** Keys of a sheet. They keep still while someone types in a field. */
export function useKeys(keys: Keys): void {
  const latest = useRef(keys);
  useEffect(() => {
    latest.current = keys;
  });
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (event.altKey || leavesField(event) || pressesControl(event)) return;
      const act = latest.current[nameOf(event)];
      if (act === undefined || isSilenced(event)) return;
      event.preventDefault();
      act();
    };
    addEventListener("keydown", press);
    return () => removeEventListener("keydown", press);
  }, []);
}

function nameOf(event: KeyboardEvent): string {
  const letter = event.key.length === 1 ? event.key.toLowerCase() : event.key;
  const held = [(event.ctrlKey || event.metaKey) && "Ctrl", event.shiftKey && letter !== "?" && "Shift"];
  return [...held.filter(Boolean), letter].join("+");
}

/** Single letters and figures are silent where they were switched off; `?` still opens the list that switches them on. */
const isSilenced = ({ key, ctrlKey, metaKey }: KeyboardEvent): boolean =>
  key.length === 1 && key !== "?" && !ctrlKey && !metaKey && !singleLetters.on();

/** True while someone types in a field; Escape lets the field go first, and F6 leaves it for the next region. */
function leavesField({ target, key }: KeyboardEvent): boolean {
  if (key === "F6") return false;
  if (!(target instanceof HTMLElement) || target.closest(fields) === null) return false;
  if (key === "Escape") target.blur();
  return true;
}

/** Enter and space on a button or a link are its own. */
const pressesControl = ({ target, key }: KeyboardEvent): boolean =>
  (key === "Enter" || key === " ") && target instanceof Element && target.closest(controls) !== null;

const controls = "button, a[href], summary, [role=button]";
const fields = "input, textarea, select, [contenteditable]";
