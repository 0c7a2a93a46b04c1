import type { CombinedLoads } from "./combined-loads.ts";
import type { ContactOutcome } from "./contact.ts";
import type { Friction, Slips } from "./friction.ts";
import type { Prepared } from "./prepared.ts";
import { solveMovements, type Movement } from "./solve-movement.ts";

type Asked = {
  readonly friction: Friction;
  readonly closed: Prepared;
  /** The load vectors, their movements with all bearings closed, and how they settle with every plain bearing stuck. */
  readonly given: readonly CombinedLoads[];
  readonly bases: readonly Movement[];
  readonly first: readonly ContactOutcome[];
  readonly held: ReadonlySet<string>;
  readonly settle: (loads: readonly CombinedLoads[], bases: readonly Movement[]) => readonly ContactOutcome[];
};

type Now = {
  readonly s: number;
  readonly load: CombinedLoads;
  readonly outcome: ContactOutcome;
  readonly slips: Slips;
};

/**
 * Contact with plain bearings that slip: slips and what presses on the bearings are found in turn until no plain bearing holds more
 * than friction. What friction does not hold, or where this does not end, stays as it settled at first: as if locks were drawn.
 */
export function settledWithFriction({ friction, closed, given, bases, first, held, settle }: Asked): {
  readonly outcomes: readonly ContactOutcome[];
  readonly loads: readonly CombinedLoads[];
} {
  const [outcomes, loads] = [first.slice(), given.slice()];
  let waiting = first.map((outcome, s): Now => ({
    s,
    load: loads[s] ?? missing(),
    outcome,
    slips: friction.noSlips(),
  }));
  // what does not stand with all of them stuck does not stand with some slipping
  waiting = waiting.filter(({ outcome }) => outcome.settled);
  for (let round = 0; waiting.length > 0; round++) {
    const next: { s: number; load: CombinedLoads; slips: Slips }[] = [];
    for (const { s, load, outcome, slips } of waiting) {
      const found = outcome.settled && round < MOST_ROUNDS ? friction.slipsFrom(outcome, load, slips, held) : null;
      if (found === null) continue;
      if (found === slips) [outcomes[s], loads[s]] = [outcome, load];
      else next.push({ s, load: friction.slipped(given[s] ?? missing(), found), slips: found });
    }
    if (next.length === 0) break;
    const moved = solveMovements(
      closed,
      next.map(({ load }) => load),
      next.map(({ s }) => bases[s]?.movement ?? null),
    );
    const settled = settle(
      next.map(({ load }) => load),
      moved,
    );
    waiting = next.map((one, n): Now => ({ ...one, outcome: settled[n] ?? missing() }));
  }
  return { outcomes, loads };
}

/** Of slips and contact in turn; chosen. */
const MOST_ROUNDS = 12;

function missing(): never {
  throw new Error("each load vector has its outcome");
}
