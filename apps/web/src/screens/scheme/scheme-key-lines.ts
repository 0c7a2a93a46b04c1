import type { KeyLine } from "../../room/KeysSlip.tsx";

export const schemeKeyLines: readonly KeyLine[] = [
  ["S H T C W P", "Stack, Shift, Turn, Cut, Open wall, Post"],
  [". and ,", "choose the next, the former thing"],
  ["Shift . and Shift ,", "take the next, the former thing into the choice"],
  ["Ctrl A", "choose all containers"],
  ["E", "what can be added to the chosen thing"],
  ["arrows", "move the chosen thing 10 mm"],
  ["Shift + arrows", "move it 305 mm, a cross-member bay"],
  ["[ ]", "smaller, larger"],
  ["Page Up, Page Down", "level"],
  ["V, Shift V", "next, former side of the building"],
  ["U", "the chosen container unfolded"],
  ["Enter", "set what is in hand; the working of the chosen thing's governing check"],
  ["Delete", "take the chosen thing away"],
  ["Ctrl C, Ctrl X", "copy the chosen things with what is in and between them; copy them and take them away"],
  [
    "Ctrl V",
    "lay what was copied on this sheet, be it from another scheme; what is cut into a unit, on the chosen unit",
  ],
  ["Ctrl Z, Ctrl Shift Z", "back, forward, by moves"],
];
