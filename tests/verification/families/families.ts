import type { VerificationFamily } from "../verification-case.ts";
import { loads } from "./loads.ts";
import { referenceBuildings } from "./reference-buildings.ts";
import { steel } from "./steel.ts";
import { walls } from "./walls.ts";

/** Everything the manual shows, in its order. */
export const families: readonly VerificationFamily[] = [loads, steel, walls, referenceBuildings];
