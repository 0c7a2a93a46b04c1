import { createContext } from "react";

/** Ids of all that is chosen, where that is more than one thing. */
export const AlsoChosen = createContext<ReadonlySet<string>>(new Set());
