import type { Opening } from "@cornerway/schema";
import { assumptionSets } from "../strength/assumption-sets.ts";
import type { ChartAnswer } from "./chart.ts";
import type { Place } from "./chart-side.ts";
import { decidersOf, type Deciders, type DecidingVectors } from "./deciding-vectors.ts";
import type { Finder, Found, Look } from "./finder.ts";
import { addedBy, addedHolds, addedParts, WORSE, type Finding, type Judged } from "./judged.ts";
import { KnownLifts } from "./known-lifts.ts";
import { SeenPlaces } from "./seen-places.ts";
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
  private before: Judged | undefined;
  private readonly seen = new SeenPlaces();
  private liftedWithout: Judged | undefined;
  /** Places that are likely looked at under more sets next, with what was solved for them. */
  private recent: readonly { readonly at: string; readonly look: Look }[] = [];
  private beforeById: ReadonlyMap<string, Finding> | undefined;

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
   * Under as few of the deciding sets as likely tell it: those that decided at the nearest place looked at under all. Where
   * something is better under one set than another asks, it needs the engineer in any case.
   */
  likely(tried: Tried, place: Place, worseIsKnown: boolean): Likely {
    const at = { framed: tried.framed, place };
    const besides = this.seen.isDecidedIn(at, this.ground.neighbours) ? this.besides : [];
    const look = this.finder.look(tried.openings, this.deciding.sets, { besides, leans: "as in its first place" });
    const startsBest = worseIsKnown || this.seen.isLikelyOver(at);
    const found = this.inTurn(tried, at, look, startsBest, (one) => this.isLikely(at, one));
    this.seen.note(at, found.answer);
    const isWhole = besides.length === this.besides.length;
    if (isWhole && found.unseen.length > 0) this.recent = [...this.recent, { at: this.keyOf(at), look }].slice(-RECENT);
    return { answer: found.answer, isSure: isWhole && (found.unseen.length === 0 || this.isSure(at, found)) };
  }

  /** Under all the deciding sets but those under which what is beyond its strength is clearly so. */
  surely(tried: Tried, place: Place): ChartAnswer {
    const at = { framed: tried.framed, place };
    const look =
      this.recent.findLast((one) => one.at === this.keyOf(at))?.look ??
      this.finder.look(tried.openings, this.deciding.sets, { besides: this.besides, leans: "as in its first place" });
    const found = this.inTurn(tried, at, look, this.seen.isLikelyOver(at), (one) => this.isSure(at, one));
    if (found.unseen.length === 0) this.seen.noteWhole(at, found.answer, found.results);
    return found.answer;
  }

  private keyOf({ framed, place: { centreMm, widthMm } }: At): string {
    return `${framed} ${centreMm} ${widthMm} ${this.deciding.key}`;
  }

  /** One deciding set after another until it is enough. */
  private inTurn(tried: Tried, at: At, look: Look, startsBest: boolean, isEnough: (found: InTurn) => boolean): InTurn {
    const { sets, far } = this.deciding;
    const seen: TrialSet[] = [];
    let next = this.nextOf(at, sets, startsBest);
    for (;;) {
      seen.push(next);
      const { judged } = look(seen);
      const answer = this.standing(judged, tried);
      const unseen = sets.filter((set) => !seen.includes(set));
      const open = answer.verdict === "does not work" ? [] : this.openOf(judged, unseen);
      const found = { answer, seen, unseen, open, results: judged.results };
      if (unseen.length === 0 || isSettled(answer, far) || isEnough(found)) return found;
      next = open[0] ?? this.nextOf(at, unseen, answer.verdict === "does not work");
    }
  }

  /** Of those not seen the one where parts are likely best, or worst. */
  private nextOf(at: At, unseen: readonly TrialSet[], isBest: boolean): TrialSet {
    const { bestSets, worstSets } = this.deciding;
    const known = isBest ? this.seen.bestOf(at, unseen) : this.seen.worstOf(at, unseen);
    const usual = isBest ? bestSets : worstSets;
    const next = known ?? usual.find((set) => unseen.includes(set)) ?? unseen[0];
    if (next === undefined) throw new RangeError("every deciding set was looked at");
    return next;
  }

  /**
   * Those not seen under which a part may be worse by what counts, that is beyond its strength under all that were seen and was so
   * without the opening. The one under which it was worst first.
   */
  private openOf(judged: Judged, unseen: readonly TrialSet[]): TrialSet[] {
    const before = this.without();
    this.beforeById ??= new Map(before.results.map((part) => [part.id, part]));
    const added = new Set(addedParts(judged, before));
    for (const part of judged.results) {
      const known = added.has(part) ? undefined : this.beforeById.get(part.id);
      if (known === undefined || !isOverUnderAll(part)) continue;
      const useBefore = ({ set }: TrialSet): number => known.envelope[set.id] ?? 0;
      const worse = mayBe(part, known);
      const open = unseen.filter((set) => worse(useBefore(set))).toSorted((a, b) => useBefore(b) - useBefore(a));
      if (open.length > 0) return open;
    }
    return [];
  }

  private isLikely(at: At, { answer: { verdict, why }, seen, open }: InTurn): boolean {
    const { sets, bestSets, worstSets } = this.deciding;
    const isAsked = (likely: TrialSet | undefined, usual: readonly TrialSet[]): boolean =>
      likely === undefined ? usual.every((set) => seen.includes(set)) : seen.includes(likely);
    if (verdict === "does not work") return isAsked(this.seen.bestOf(at, sets), bestSets.length > 0 ? bestSets : sets);
    return open.length === 0 && (why.kind !== "within" || isAsked(this.seen.worstOf(at, sets), worstSets));
  }

  private isSure(at: At, { answer: { verdict, why }, seen, unseen, open, results }: InTurn): boolean {
    if (verdict !== "does not work") return why.kind !== "within" && open.length === 0;
    if (why.kind !== "part") return true;
    const part = results.find(({ id }) => id === why.partId);
    return part !== undefined && this.seen.isClearlyOver(at, part, seen, unseen);
  }

  /**
   * Under every vector; what decides there decides from then on everywhere. `isFirstTry`: where it does not work under one set, it
   * does not under all, and the others are not looked at.
   */
  underAll(tried: Tried, place: Place, isFirstTry: boolean): ChartAnswer {
    const { sets, neighbours } = this.ground;
    const at = { framed: tried.framed, place };
    const look = this.finder.look(tried.openings, sets, { besides: neighbours, leans: "looked at" });
    const likely = isFirstTry ? (this.seen.worstOf(at, sets) ?? sets[0]) : undefined;
    const tries = likely && this.standing(look([likely]).judged, tried);
    if (tries !== undefined && tries.why.kind !== "within") return tries;
    const found = look(sets);
    this.deciding.join(decidersIn(found, this.without()));
    const standing = this.standing(found.judged, tried);
    this.seen.noteWhole(at, standing, found.judged.results);
    return this.hung(tried, standing, place);
  }

  /** Units beside it whose insides decide too. */
  private get besides(): readonly string[] {
    return this.ground.neighbours.filter((unitId) => this.deciding.isIn(unitId));
  }

  /** What stands, without what is asked of it while it hangs. */
  private standing(found: Judged, { framed }: Tried): ChartAnswer {
    return addedBy(found, this.without(), this.ground.unit.id, framed);
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

  /** What is found of the unit with no such opening, under every vector. */
  without(): Judged {
    const { sets, neighbours } = this.ground;
    this.before ??= this.finder.look(this.others, sets, { besides: neighbours, leans: "looked at" })(sets).judged;
    return this.before;
  }
}

/** `isSure`: under all that decide it is the same. */
export type Likely = { readonly answer: ChartAnswer; readonly isSure: boolean };

type At = { readonly framed: boolean; readonly place: Place };

/** What was found under the sets seen. */
type InTurn = {
  readonly answer: ChartAnswer;
  readonly seen: readonly TrialSet[];
  readonly unseen: readonly TrialSet[];
  /** Of those not seen: where parts may be worse than without the opening. */
  readonly open: readonly TrialSet[];
  readonly results: readonly Finding[];
};

/** So many are kept: about a boundary few are asked. */
const RECENT = 6;

/** Parts with nothing beside them. */
const alone = (results: readonly Finding[]): Judged => ({ results, holds: [], fallen: [], leftOut: [] });

const isOverUnderAll = ({ envelope }: Finding): boolean =>
  Object.values(envelope).every((use) => (use ?? Infinity) > 1);

/** Under another set a part may be worse than without the opening by so much more. Judged, no published source. */
const MORE = 1.01;

/** Whether a part may be worse by what counts under a set in which it had a use before, by what it is in those seen. */
function mayBe(part: Finding, before: Finding): (useBefore: number) => boolean {
  const uses = (one: Finding): number[] => Object.values(one.envelope).map((use) => use ?? Infinity);
  const times = assumptionSets.map(({ id }) => (part.envelope[id] ?? 0) / (before.envelope[id] ?? Infinity));
  const most = Math.max(...uses(before));
  return (useBefore) => MORE * Math.max(...times) * useBefore > WORSE * most;
}

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
