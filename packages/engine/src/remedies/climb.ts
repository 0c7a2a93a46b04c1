import type { Remedy, RemedyFailed } from "@cornerway/schema";
import type { Drawn } from "./drawn-trial.ts";
import { madeGood, told } from "./made-good.ts";
import type { Proof } from "./proof.ts";
import { remedyOf } from "./remedy-of.ts";
import type { RemedyWork } from "./remedy-work.ts";
import type { SearchGround } from "./search-ground.ts";

/** One rung that passed the load path, and the one before it where that did not. */
export type Rung = { readonly drawn: Drawn; readonly less: RemedyFailed | null };

/** One kind of way: what is left of its ladder, and what was found on it. */
export type Climb = {
  rungs: Rung[];
  readonly failed: RemedyFailed[];
  offered: Remedy | null;
  apart: Remedy | null;
  looked: number;
  proved: number;
  /** The last rung that a look refused, and how far its worst part is beyond its strength. */
  refused?: { readonly drawn: Drawn; readonly use: number };
};

type Progress = { readonly done: number; readonly of: number };

/**
 * Climbs one ladder to the first rung that works. A rung is looked at and made good first; what passes is run whole. The first
 * that ends with the engineer is kept where none works. `after`: what is climbed next.
 */
export function* climb(
  one: Climb,
  after: readonly Climb[],
  ground: SearchGround,
  progress: Progress,
): RemedyWork<void> {
  let failed: RemedyFailed | null = null;
  for (let rung = one.rungs.shift(); rung !== undefined; rung = one.rungs.shift()) {
    yield { kind: "proving", change: rung.drawn.trial.change, ...progress };
    const coming = [one, ...after].flatMap(({ rungs }) => rungs.map(({ drawn }) => drawn));
    const good = yield* madeGood(rung.drawn, coming, ground);
    const { drawn, proof } = good;
    one.looked += good.looked;
    one.proved += good.proved;
    const less: RemedyFailed | null = good.before ?? failed ?? rung.less;
    if (proof?.ok !== true) {
      failed = { ...told(drawn), why: proof?.why ?? good.lacks };
      one.failed.push(failed);
      if (proof === undefined) one.refused = { drawn, use: good.use };
      continue;
    }
    const remedy = remedyOf(drawn, proof, less, ground);
    if (proof.why !== undefined) {
      failed = { ...told(drawn), why: { kind: "strength", why: proof.why } };
      if (one.apart === null) yield { kind: "found", remedy, ...progress };
      one.apart ??= remedy;
      if (isOfNoSize(proof)) one.rungs = [];
      continue;
    }
    one.offered = remedy;
    one.rungs = [];
    yield { kind: "found", remedy, ...progress, done: progress.done + 1 };
  }
}

/** More of the same does not help where no strength can be stated. */
const isOfNoSize = ({ why }: Extract<Proof, { ok: true }>): boolean =>
  why?.kind === "left out of the model" ||
  (why?.kind === "part" && (why.because === "refused" || why.because === "not covered"));
