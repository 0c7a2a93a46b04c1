const kept = "cornerway.single-letters";

/** Whether single letters act as keys; switched off, only keys with a name or a modifier do (WCAG 2.1.4). */
export const singleLetters = {
  on: (): boolean => localStorage.getItem(kept) !== "off",
  turn: (on: boolean): void => (on ? localStorage.removeItem(kept) : localStorage.setItem(kept, "off")),
};
