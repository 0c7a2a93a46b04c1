import type { RemedyFailed, RemedyRefusal } from "@cornerway/schema";
import type { SharedWork } from "../strength/shared-work.ts";
import { rounded } from "../units.ts";
import { drawnTrial, type Drawn } from "./drawn-trial.ts";
import { lackingAtALook, lackingOf } from "./lacking-of.ts";
import { proof, type Proof } from "./proof.ts";
import { repaired } from "./repairs/repaired.ts";
import type { Lacking } from "./repairs/repair.ts";
import type { SearchGround } from "./search-ground.ts";

/** A trial as far as it could be made good. */
export type MadeGood = {
  readonly drawn: Drawn;
  /** What the whole run says of it; absent where a look was enough to refuse it. */
  readonly proof?: Proof;
  /** What it lacks most where it has no proof. */
  readonly lacks: RemedyRefusal;
  /** What it was before it was last made good, and why that fails; null where nothing was done to it. */
  readonly before: RemedyFailed | null;
  /** Of its strength, the part that is most beyond it. */
  readonly use: number;
  readonly looked: number;
  readonly proved: number;
};

/** Looks, repairs and proofs in turn: at most so many. */
const MOST_ROUNDS = 6;

/**
 * Looks at a trial, mends what it lacks where that is known how, and runs whole what a look has nothing against. `coming`: those
 * after it.
 */
export function* madeGood(given: Drawn, coming: readonly Drawn[], ground: SearchGround): SharedWork<MadeGood> {
  let drawn = given;
  let before: RemedyFailed | null = null;
  let proved = 0;
  for (let round = 1; ; round++) {
    const seen = yield* seenOrProved(drawn, coming, ground);
    if (seen.proof !== undefined) proved += 1;
    const next = seen.works || round === MOST_ROUNDS ? undefined : mended(drawn, seen.lacking, ground);
    const lacks = seen.proof === undefined ? atALook(seen.lacking) : whyOf(seen.proof);
    if (next === undefined) {
      const use = Math.max(0, ...seen.lacking.parts.map((part) => part.use));
      return { drawn, ...(seen.proof && { proof: seen.proof }), lacks, before, use, looked: round, proved };
    }
    before = { ...told(drawn), why: lacks };
    drawn = next;
  }
}

export const told = ({ trial: { change, also = [] } }: Drawn): Pick<RemedyFailed, "change" | "also"> => ({
  change,
  also,
});

type Seen = { readonly lacking: Lacking; readonly proof?: Proof; readonly works: boolean };

/** The whole run is made where a look finds nothing against it. */
function* seenOrProved(drawn: Drawn, coming: readonly Drawn[], ground: SearchGround): SharedWork<Seen> {
  const atOnce = yield* lackingAtALook(drawn, coming, ground);
  if (atOnce.parts.length > 0) return { lacking: atOnce, works: false };
  const whole = yield* provedWhole(drawn, ground);
  return { ...whole, works: whole.proof.ok && whole.proof.why === undefined };
}

type Proved = { readonly lacking: Lacking; readonly proof: Proof };

export function* provedWhole(drawn: Drawn, ground: SearchGround): SharedWork<Proved> {
  const after = yield* ground.judge(drawn.scheme);
  const lacking = yield* lackingOf(drawn, after, ground);
  return { lacking, proof: proof(drawn, after, lacking, ground) };
}

function mended(drawn: Drawn, lacking: Lacking, ground: SearchGround): Drawn | undefined {
  const trial = repaired(drawn.trial, lacking);
  const next = trial && drawnTrial(trial, ground);
  return next?.ok === true ? next : undefined;
}

const whyOf = (proven: Proof): RemedyRefusal =>
  proven.ok ? { kind: "strength", why: proven.why ?? { kind: "left out of the model", what: "the rest" } } : proven.why;

/** The part that is most beyond its strength. */
function atALook({ parts }: Lacking): RemedyRefusal {
  const [first, ...others] = parts;
  if (first === undefined) throw new Error("a trial that lacks nothing at a look is proved");
  const most = others.reduce((worst, next) => (next.use > worst.use ? next : worst), first);
  // what is at hand from other runs moves the last digits of a look
  return { kind: "at a look", partId: most.id, use: Number.isFinite(most.use) ? rounded(most.use) : null };
}
