/** How much of the dead load is there: all of it at its heaviest, the least there can be, or units before fit-out. */
export type DeadState = "most" | "least" | "bare";
