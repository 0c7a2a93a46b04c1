/**
 * Kinds of action a combination multiplies. `Ev` and `Eh` are the vertical and the horizontal effect of an earthquake,
 * `Emh` the horizontal one with overstrength, `N` notional loads, `T` imposed movements (level error, settlement).
 */
export const loadSymbols = ["D", "L", "Lr", "S", "R", "W", "Ev", "Eh", "Emh", "N", "T"] as const;
export type LoadSymbol = (typeof loadSymbols)[number];
