import type { Climb } from "./climb.ts";
import { provedWhole } from "./made-good.ts";
import { remedyOf } from "./remedy-of.ts";
import type { RemedyWork } from "./remedy-work.ts";
import type { SearchGround } from "./search-ground.ts";

/** So many are run whole where nothing works. */
const MOST = 3;

/**
 * Where no way works: those that come nearest are run whole all the same. What leaves them to the engineer is what he would have
 * to settle.
 */
export function* nearestApart(climbs: readonly Climb[], ground: SearchGround): RemedyWork<void> {
  if (climbs.some(({ offered, apart }) => offered !== null || apart !== null)) return;
  const refused = climbs.filter((one) => one.refused !== undefined);
  const nearest = refused.toSorted((a, b) => useOf(a) - useOf(b)).slice(0, MOST);
  for (const [done, one] of nearest.entries()) {
    if (one.refused === undefined) continue;
    const { drawn } = one.refused;
    const progress = { done, of: nearest.length };
    yield { kind: "proving", change: drawn.trial.change, ...progress };
    const { proof } = yield* provedWhole(drawn, ground);
    one.proved += 1;
    if (!proof.ok) continue;
    one.failed.pop(); // what the look said of this very change
    one.apart = remedyOf(drawn, proof, one.failed.at(-1) ?? null, ground);
    yield { kind: "found", remedy: one.apart, ...progress, done: done + 1 };
  }
}

const useOf = ({ refused }: Climb): number => refused?.use ?? Infinity;
