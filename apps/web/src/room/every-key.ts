import type { KeyLine } from "./KeysSlip.tsx";

/** Every key of every sheet, for the page that explains them; a test holds it against the lists of the sheets. */
export const everyKey: readonly KeyLine[] = [
  ["1–7", "turn to that sheet"],
  ["F6", "next region: title block, tray, drawing, notes, revisions"],
  ["S H T C W P", "Stack, Shift, Turn, Cut, Open wall, Post"],
  ["E", "what can be added to the chosen thing"],
  [". and ,", "choose the next, the former thing"],
  ["Shift . and Shift ,", "take the next, the former thing into the choice"],
  ["Ctrl A", "choose all containers"],
  ["arrows", "move the chosen thing 10 mm"],
  ["Shift + arrows", "move it 305 mm, a cross-member bay"],
  ["[ ]", "smaller, larger"],
  ["Enter", "set what is in hand; the working of the chosen thing's governing check"],
  ["Delete", "take the chosen thing away"],
  ["Ctrl Z, Ctrl Shift Z", "back, forward, by moves"],
  ["Page Up, Page Down", "level"],
  ["V, Shift V", "next, former side of the building"],
  ["U", "the chosen container unfolded"],
  ["N, Shift N", "next, former note"],
  ["A, R", "on sheet 3: take in; write or answer"],
  ["B held", "on sheet 4: the former revision alone"],
  ["L", "on sheet 4: the changes as a table, and back"],
  ["Esc", "let go"],
  ["?", "the keys of the sheet that is open"],
];
