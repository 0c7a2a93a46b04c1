import { BoundedStore } from "../analysis/bounded-store.ts";
import { condensationCache } from "../building.ts";
import type { InnerInfluence } from "./inner-forces.ts";
import { KeptForces } from "./kept-forces.ts";
import type { StrengthMemory } from "./solve-runs.ts";

/** Room for what repeats: containers with the same lines are condensed once, and their insides worked out once. */
export const strengthMemory = (): StrengthMemory => ({
  cache: condensationCache(CACHE_BYTES),
  influences: new BoundedStore<InnerInfluence>(
    CACHE_BYTES,
    ({ byMovement, layout }) => (byMovement.length + ROWS * layout.length) * BYTES_PER_NUMBER,
  ),
  held: new BoundedStore<Float64Array>(HELD_BYTES, ({ byteLength }) => byteLength),
  forces: new KeptForces(BLOCKS_BYTES),
});

const CACHE_BYTES = 500_000_000;
const HELD_BYTES = 200_000_000;
const BLOCKS_BYTES = 100_000_000;
const BYTES_PER_NUMBER = 8;
/** Numbers kept beside the movements for each force: twelve of its rows, three under unit loads. */
const ROWS = 15;
