/** What the hand does on the paper, with the tools it takes: fetched beside the first drawing, which does without. */
export { carried, heldOperations } from "./carried.ts";
export { firstUnit, labelled } from "./first-unit.ts";
export { press } from "./press.ts";
export { stepElements } from "./step-element.ts";
export { resized, turned } from "./turn-or-size.ts";
export { withinBand } from "./within-band.ts";
export { placeUnit } from "../tools/place-unit.ts";
export { askedAbout, removeElements } from "../tools/remove-elements.ts";
