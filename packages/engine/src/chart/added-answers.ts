import type { Opening } from "@cornerway/schema";
import type { ChartAnswer } from "./chart.ts";
import type { Place } from "./chart-side.ts";
import { decidersOf, type Deciders, type DecidingVectors } from "./deciding-vectors.ts";
import type { Finder, Found } from "./finder.ts";
import { addedBy, addedHolds, addedParts, type Finding, type Judged } from "./judged.ts";
import { KnownLifts } from "./known-lifts.ts";
import type { TrialGround, TrialSet } from "./trial-ground.ts";

/** Openings of the unit with the one that is tried, and whether that is framed. */
export type Tried = { readonly openings: readonly Opening[]; readonly framed: boolean };

/** What openings of one unit add to it, under some of the vectors or all. */
export class AddedAnswers {
  private readonly ground: TrialGround;
  private readonly others: readonly Opening[];
  private readonly finder: Finder;
  private readonly deciding: DecidingVectors;
  private readonly lifts: KnownLifts;
  private readonly before = new Map<string, Judged>();
  private liftedWithout: Judged | undefined;

  /** `others`: the unit's openings without the one that is tried. */
  constructor(
    ground: TrialGround,
    others: readonly Opening[],
    {
      finder,
      deciding,
      isPlain,
    }: { readonly finder: Finder; readonly deciding: DecidingVectors; readonly isPlain: boolean },
  ) {
    this.ground = ground;
    this.others = others;
    this.finder = finder;
    this.deciding = deciding;
    this.lifts = new KnownLifts(ground.unit.dimensions.face(ground.request.face).u1 / 2, isPlain);
  }

  /**
   * Under no more of the deciding sets than it takes: what works where parts are worst is not asked for where they are best, and
   * what is far beyond its strength is so under all. `worseIsKnown`: where a part is worst it does not work in any case; only the
   * sets where it is best can tell whether it does not work under any, and they are asked first.
   */
  lazily(tried: Tried, worseIsKnown: boolean): { readonly answer: ChartAnswer; readonly rest: readonly TrialSet[] } {
    const { worstSets, bestSets } = this.deciding;
    const bestFirst = worseIsKnown && bestSets.length > 0;
    const [first, then] = bestFirst ? [bestSets, worstSets] : [worstSets, bestSets];
    const all = [...first, ...then];
    const look = this.finder.look(tried.openings, this.deciding.sets, this.besides);
    for (let count = 1; ; count++) {
      const [seen, rest] = [all.slice(0, count), all.slice(count)];
      const answer = this.standing(look(seen).judged, seen, tried);
      if (count === all.length || isSettled(answer, this.deciding.far)) return { answer, rest };
      const isOver = answer.verdict === "does not work";
      if (count >= first.length && (bestFirst ? isOver : !isOver && !isNear(answer))) return { answer, rest };
    }
  }

  /** Under sets left out before; where it does not work under them, under all that decide. */
  underRest(tried: Tried, rest: readonly TrialSet[], known: ChartAnswer): ChartAnswer {
    if (rest.length === 0) return known;
    const { sets } = this.deciding;
    const look = this.finder.look(tried.openings, sets, this.besides);
    if (this.standing(look(rest).judged, rest, tried).why.kind === "within") return known;
    return this.standing(look(sets).judged, sets, tried);
  }

  /** Under every vector; what decides there decides from then on everywhere. */
  underAll(tried: Tried, place: Place): ChartAnswer {
    const { sets } = this.ground;
    const found = this.finder.look(tried.openings, sets, this.ground.neighbours)(sets);
    this.deciding.join(decidersIn(found, this.without(sets)));
    return this.hung(tried, this.standing(found.judged, sets, tried), place);
  }

  /** Units beside it whose insides decide too. */
  private get besides(): readonly string[] {
    return this.ground.neighbours.filter((unitId) => this.deciding.isIn(unitId));
  }

  /** What stands, without what is asked of it while it hangs. */
  private standing(found: Judged, sets: readonly TrialSet[], { framed }: Tried): ChartAnswer {
    return addedBy(found, this.without(sets), this.ground.unit.id, framed);
  }

  /** The same as it hangs, where that may ask more. */
  hungWhereNear(tried: Tried, standing: ChartAnswer, place: Place): ChartAnswer {
    return this.lifts.isFar(tried.framed, place) ? standing : this.hung(tried, standing, place);
  }

  /** What it asks while it hangs takes a solution of its own: it is looked at where all else is well. */
  hung({ openings, framed }: Tried, standing: ChartAnswer, place: Place): ChartAnswer {
    if (standing.why.kind !== "within") return standing;
    this.liftedWithout ??= alone(this.finder.lifted(this.others));
    const hanging = addedBy(alone(this.finder.lifted(openings)), this.liftedWithout, this.ground.unit.id, framed);
    this.lifts.note(framed, place, hanging);
    return hanging.why.kind !== "within" || hanging.why.use > standing.why.use ? hanging : standing;
  }

  /** What is found of the unit with no such opening. */
  without(sets: readonly TrialSet[]): Judged {
    const whole = sets === this.ground.sets;
    const key = whole ? "every vector" : `${this.deciding.key} ${sets.map(({ set }) => set.id).join()}`;
    const looked = whole ? sets : this.deciding.sets;
    const besides = whole ? this.ground.neighbours : this.besides;
    const found = this.before.get(key) ?? this.finder.look(this.others, looked, besides)(sets).judged;
    this.before.set(key, found);
    return found;
  }
}

/** Parts with nothing beside them. */
const alone = (results: readonly Finding[]): Judged => ({ results, holds: [], fallen: [], leftOut: [] });

/** So near its strength a place is likely told: it is looked at under all. Judged, no published source. */
const NEARLY = 0.95;
const isNear = ({ why }: ChartAnswer): boolean => why.kind === "within" && why.use > NEARLY;

/** What no other set of assumptions would make better: beyond all bounds, or not a matter of strength. */
const isSettled = ({ verdict, why }: ChartAnswer, far: number): boolean =>
  verdict === "does not work" && (why.kind !== "part" || (why.least ?? 0) > far);

/** The vectors behind what an opening adds. */
function decidersIn({ judged, worsts, fallen }: Found, before: Judged): Deciders {
  const added = new Set(addedParts(judged, before).map(({ id }) => id));
  const worse = worsts.filter(({ part }) => added.has(part.id));
  const { worst, best, runs, owners, spread } = decidersOf(worse.length > 0 ? worse : worsts);
  const holds = addedHolds(judged, before).map(({ run }) => run);
  return {
    worst: [...worst, ...fallen.map(({ set }) => new Set([set]))],
    ...{ best, owners, spread },
    runs: [...runs, ...fallen.map(({ run }) => run), ...holds],
  };
}
