import type { VerificationFamily } from "../verification-case.ts";
import { details } from "./details.ts";
import { loads } from "./loads.ts";
import { referenceBuildings } from "./reference-buildings.ts";
import { secondOrder } from "./second-order.ts";
import { steel } from "./steel.ts";
import { walls } from "./walls.ts";

/** Everything the manual shows, in its order. */
export const families: readonly VerificationFamily[] = [loads, steel, secondOrder, walls, details, referenceBuildings];
