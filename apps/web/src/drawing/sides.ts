import type { Side } from "./contract.ts";

/** The four sides of a building, in the order in which one walks round it. */
export const sides: readonly Side[] = ["south", "east", "north", "west"];
