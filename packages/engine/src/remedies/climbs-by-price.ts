import type { Climb, Rung } from "./climb.ts";
import { drawnTrial } from "./drawn-trial.ts";
import type { SearchGround } from "./search-ground.ts";
import type { Ladder, Trial } from "./trial.ts";

/** How many of one kind that pass the load path are kept for strength. */
const MOST_RUNGS = 4;

/** Every ladder with its rungs drawn and held against the load path; the kind whose first rung costs least comes first. */
export function climbsByPrice(ladders: readonly Ladder[], ground: SearchGround): Climb[] {
  const drawn = new Set<string>();
  const climbs = ladders.map((ladder) => screened(onceEach(ladder, drawn), ground));
  return climbs.toSorted((a, b) => price(a) - price(b));
}

const price = ({ rungs: [first] }: Climb): number => first?.drawn.premium.total ?? Infinity;

/** Two ways to the same drawing are one. */
const onceEach = (ladder: readonly Trial[], drawn: Set<string>): Trial[] =>
  ladder.filter(({ operations }) => {
    const key = JSON.stringify(operations);
    if (drawn.has(key)) return false;
    drawn.add(key);
    return true;
  });

/** What fails by the load path alone is kept as the less that fails. */
function screened(ladder: readonly Trial[], ground: SearchGround): Climb {
  const climb: Climb = { rungs: [], failed: [], offered: null, apart: null, looked: ladder.length, proved: 0 };
  const rungs: Rung[] = [];
  let less: Rung["less"] = null;
  for (const trial of ladder) {
    const drawn = drawnTrial(trial, ground);
    if (drawn.ok && rungs.length < MOST_RUNGS) rungs.push({ drawn, less });
    if (!drawn.ok) climb.failed.push({ change: trial.change, also: [], why: drawn.why });
    less = drawn.ok ? null : { change: trial.change, also: [], why: drawn.why };
  }
  return { ...climb, rungs };
}
