import type { Opening, Verdict } from "@cornerway/schema";
import { unitStrength } from "../strength/unit-strength.ts";
import type { ChartAnswer, ChartRequest, OpeningChart } from "./chart.ts";
import { NARROWEST_MM } from "./trace-column.ts";
import { forbids, type Place } from "./chart-side.ts";
import { decidersOf, DecidingVectors, FAR, type Deciders } from "./deciding-vectors.ts";
import { Finder, type Found } from "./finder.ts";
import { addedBy, addedHolds, addedParts, addedReasons, type Finding, type Judged } from "./judged.ts";
import type { TrialGround, TrialSet } from "./trial-ground.ts";
import { bareEdged, triedId, triedOpening } from "./trial-opening.ts";

/**
 * Answers for places and widths on one side: under the vectors that decided where a place was looked at whole, and confirmed
 * under every set and every run that governs. What is confirmed holds from then on.
 */
export class PlaceJudge {
  private readonly ground: TrialGround;
  private readonly isPlain: boolean;
  private readonly others: readonly Opening[];
  private readonly finder: Finder;
  private readonly deciding: DecidingVectors;
  private readonly traced = new Map<string, ChartAnswer>();
  private readonly sure = new Map<string, ChartAnswer>();
  /** What was left out of answers. */
  private readonly partly = new Map<string, Partly>();
  /** Centres about which an opening is asked more while it hangs than its strength. */
  private readonly hangs = new Set<number>();
  private readonly before = new Map<string, Judged>();
  /** The least width about a centre that does not work with bare edges. */
  private readonly bareFails = new Map<number, number>();
  /** The least that does not work framed. */
  private readonly fails = new Map<number, number>();
  private readonly easiestIn = new Map<string, Verdict>();
  private liftedWithout: Judged | undefined;

  /** `traceOn`: whether every vector is looked at for every place. `isPlain`: whether wider is never cheaper. */
  constructor(ground: TrialGround, traceOn: "deciding sets" | "all sets", isPlain = false) {
    this.ground = ground;
    this.isPlain = isPlain;
    this.finder = new Finder(ground);
    this.others = ground.unit.openings.filter(({ id }) => id !== triedId(ground.request));
    // sliding is told under the first set alone
    const first = ground.under === "all loads";
    this.deciding = new DecidingVectors(ground.sets, { first, all: traceOn === "all sets" });
  }

  /** How many places and widths were solved. */
  get solved(): number {
    return this.finder.looked;
  }

  /** How many of them under every vector. */
  get confirmedPlaces(): number {
    return this.sure.size;
  }

  /** The vectors places are traced under by now. */
  get vectors(): readonly TrialSet[] {
    return this.deciding.sets;
  }

  answer(place: Place): ChartAnswer {
    const key = this.keyOf(place);
    const found = this.sure.get(placeKey(place)) ?? this.traced.get(key) ?? this.judge(place);
    this.traced.set(key, found);
    return found;
  }

  /** Under every vector; what decides there is looked at from then on everywhere. */
  confirmed(place: Place): ChartAnswer {
    const found = this.sure.get(placeKey(place)) ?? this.judgeWhole(place);
    this.sure.set(placeKey(place), found);
    return found;
  }

  /** Where it works under some of the deciding vectors and on its bearings: under all of them, and as it hangs. */
  settled(place: Place): ChartAnswer {
    const key = this.keyOf(place);
    const answer = this.answer(place);
    const partly = this.partly.get(key);
    if (partly === undefined) return answer;
    this.partly.delete(key);
    const settled = this.settle(partly, answer, place);
    this.traced.set(key, settled);
    return settled;
  }

  /** Whether the answer needs no solution. */
  forbidden(place: Place): ChartAnswer | undefined {
    return forbids(this.ground.unit, this.ground.request, this.others, place);
  }

  /** The verdict of the unit with no such opening, from its own parts and bearings, and how many reasons stand against it. */
  verdictWithout(): OpeningChart["without"] {
    const { results: standing, holds, leftOut } = this.without(this.ground.sets);
    const results = [...standing, ...this.finder.lifted(this.others)];
    const { unit } = this.ground;
    const withSteel = this.others.some(({ framed }) => framed);
    const found = { unitId: unit.id, results, holds, refused: [], runs: 0, withSteel, given: leftOut };
    const { verdict, reasons } = unitStrength(found);
    return { verdict, reasons: reasons.length };
  }

  /** The best verdict any width has about this centre, where a wider opening is never cheaper. */
  easiest(centreMm: number): Verdict {
    const key = `${centreMm} ${this.deciding.key}`;
    const known = this.easiestIn.get(key) ?? this.easiestAt({ centreMm, widthMm: NARROWEST_MM });
    this.easiestIn.set(key, known);
    return known;
  }

  private easiestAt(place: Place): Verdict {
    const { framed, framedWhereNeeded } = this.ground.request;
    if (!framed) return "works as built";
    return framedWhereNeeded === true && this.bare(place, (tried) => this.lazily(tried, place).answer) !== undefined
      ? "works as built"
      : "works with steel";
  }

  private judge(place: Place): ChartAnswer {
    return this.leastSteel(place, (tried) => {
      const { answer, seen } = this.lazily(tried, place);
      if (answer.why.kind !== "within") {
        if (tried.framed) this.noteFailing(place);
        return answer;
      }
      const isHung = this.hangs.has(place.centreMm);
      const found = isHung ? this.hung(tried, answer) : answer;
      const rest = this.vectors.filter((one) => !seen.includes(one));
      if (found.why.kind === "within") this.partly.set(this.keyOf(place), { tried, rest, isHung });
      return found;
    });
  }

  private noteFailing({ centreMm, widthMm }: Place): void {
    if (this.isPlain) this.fails.set(centreMm, Math.min(widthMm, this.fails.get(centreMm) ?? Infinity));
  }

  /** Under the sets that were left out, and as it hangs. */
  private settle({ tried, rest, isHung }: Partly, answer: ChartAnswer, place: Place): ChartAnswer {
    if (rest.length > 0) {
      const look = this.finder.look(tried.openings, this.vectors);
      if (this.standing(look(rest).judged, rest, tried).why.kind !== "within")
        return this.standing(look(this.vectors).judged, this.vectors, tried);
    }
    const found = isHung ? answer : this.hung(tried, answer);
    // then about this centre it is looked at everywhere
    if (found.why.kind !== "within") this.hangs.add(place.centreMm);
    return found;
  }

  private judgeWhole(place: Place): ChartAnswer {
    const { sets } = this.ground;
    const underAll = (tried: Tried): ChartAnswer => {
      const found = this.finder.look(tried.openings, sets)(sets);
      this.deciding.join(decidersIn(found, this.without(sets)));
      return this.hung(tried, this.standing(found.judged, sets, tried));
    };
    return this.leastSteel(place, underAll, true);
  }

  /**
   * As asked for; where it is to be framed only where it must be, with bare edges if that works. On a wall that is not plain bare
   * edges are tried only where a frame works.
   */
  private leastSteel(place: Place, answer: (tried: Tried) => ChartAnswer, bareFirst = this.isPlain): ChartAnswer {
    const forbidden = this.forbidden(place);
    if (forbidden !== undefined) return forbidden;
    const { request } = this.ground;
    const asked = (): ChartAnswer => answer(this.tried(request, place));
    if (request.framedWhereNeeded !== true) return asked();
    if (bareFirst) return this.bare(place, answer) ?? asked();
    const framed = asked();
    return framed.why.kind === "within" ? (this.bare(place, answer) ?? framed) : framed;
  }

  /** With bare edges, where that works. On a plain wall none wider than one that does not work is looked at. */
  private bare(place: Place, answer: (tried: Tried) => ChartAnswer): ChartAnswer | undefined {
    const { centreMm, widthMm } = place;
    const failing = this.bareFails.get(centreMm) ?? Infinity;
    if (this.isPlain && widthMm >= failing) return undefined;
    const tried = this.tried(bareEdged(this.ground.request), place);
    const [lacking, before] = [this.finder.lacking(tried.openings), this.finder.lacking(this.others)];
    const isLacking = addedReasons({ leftOut: lacking }, { leftOut: before }).length > 0;
    const built = isLacking ? undefined : answer(tried);
    if (built?.why.kind === "within") return built;
    this.bareFails.set(centreMm, Math.min(failing, widthMm));
    return undefined;
  }

  private tried(request: ChartRequest, { centreMm, widthMm }: Place): Tried {
    return { openings: [...this.others, triedOpening(request, centreMm, widthMm)], framed: request.framed };
  }

  /**
   * Under no more of the deciding sets than it takes: what works where parts are worst is not asked for where they are best, and
   * what is far beyond its strength is so under all. Of what is wider than a framed opening that does not work on a plain wall
   * only those where parts are best can tell that it is beyond its strength under all: they are asked first.
   */
  private lazily(
    tried: Tried,
    { centreMm, widthMm }: Place,
  ): { readonly answer: ChartAnswer; readonly seen: readonly TrialSet[] } {
    const { worstSets, bestSets } = this.deciding;
    const bestFirst = tried.framed && bestSets.length > 0 && widthMm > (this.fails.get(centreMm) ?? Infinity);
    const [first, then] = bestFirst ? [bestSets, worstSets] : [worstSets, bestSets];
    const all = [...first, ...then];
    const look = this.finder.look(tried.openings, this.vectors);
    for (let count = 1; ; count++) {
      const seen = all.slice(0, count);
      const answer = this.standing(look(seen).judged, seen, tried);
      if (count === all.length || isSettled(answer)) return { answer, seen };
      const isOver = answer.verdict === "does not work";
      if (count >= first.length && (bestFirst ? isOver : !isOver && !isNear(answer))) return { answer, seen };
    }
  }

  /** What stands, without what is asked of it while it hangs. */
  private standing(found: Judged, sets: readonly TrialSet[], { framed }: Tried): ChartAnswer {
    return addedBy(found, this.without(sets), this.ground.unit.id, framed);
  }

  /** What it asks while it hangs takes a solution of its own: it is looked at where all else is well. */
  private hung({ openings, framed }: Tried, standing: ChartAnswer): ChartAnswer {
    if (standing.why.kind !== "within") return standing;
    this.liftedWithout ??= alone(this.finder.lifted(this.others));
    const hanging = addedBy(alone(this.finder.lifted(openings)), this.liftedWithout, this.ground.unit.id, framed);
    return hanging.why.kind !== "within" || hanging.why.use > standing.why.use ? hanging : standing;
  }

  /** What is found of the unit with no such opening. */
  private without(sets: readonly TrialSet[]): Judged {
    const whole = sets === this.ground.sets;
    const key = whole ? "every vector" : `${this.deciding.key} ${sets.map(({ set }) => set.id).join()}`;
    const found = this.before.get(key) ?? this.finder.look(this.others, whole ? sets : this.vectors)(sets).judged;
    this.before.set(key, found);
    return found;
  }

  /** The answer of a place hangs on what is looked at there. */
  private keyOf(place: Place): string {
    return `${placeKey(place)} ${this.deciding.key} ${this.hangs.has(place.centreMm) ? "hung" : "standing"}`;
  }
}

const placeKey = ({ centreMm, widthMm }: Place): string => `${centreMm} ${widthMm}`;

/** Parts with nothing beside them. */
const alone = (results: readonly Finding[]): Judged => ({ results, holds: [], fallen: [], leftOut: [] });

/** Openings of the unit with the one that is tried, and whether that is framed. */
type Tried = { readonly openings: readonly Opening[]; readonly framed: boolean };

/** A place of which some of the deciding sets, or what is asked while it hangs, were left out. */
type Partly = { readonly tried: Tried; readonly rest: readonly TrialSet[]; readonly isHung: boolean };

/** So near its strength a place is likely told: it is looked at under all. Judged, no published source. */
const NEARLY = 0.95;
const isNear = ({ why }: ChartAnswer): boolean => why.kind === "within" && why.use > NEARLY;

/** What no other set of assumptions would make better: beyond all bounds, or not a matter of strength. */
const isSettled = ({ verdict, why }: ChartAnswer): boolean =>
  verdict === "does not work" && (why.kind !== "part" || (why.least ?? 0) > FAR);

/** The vectors behind what an opening adds. */
function decidersIn({ judged, worsts, fallen }: Found, before: Judged): Deciders {
  const added = new Set(addedParts(judged, before).map(({ id }) => id));
  const worse = worsts.filter(({ part }) => added.has(part.id));
  const { worst, best, runs } = decidersOf(worse.length > 0 ? worse : worsts);
  const holds = addedHolds(judged, before).map(({ run }) => run);
  return {
    worst: [...worst, ...fallen.map(({ set }) => new Set([set]))],
    best,
    runs: [...runs, ...fallen.map(({ run }) => run), ...holds],
  };
}
