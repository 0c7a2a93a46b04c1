import type { Opening } from "@cornerway/schema";
import type { ElementResult } from "../strength/element-result.ts";
import { unitStrength } from "../strength/unit-strength.ts";
import type { ChartAnswer, ChartRequest, OpeningChart } from "./chart.ts";
import { forbids, type Place } from "./chart-side.ts";
import { decidersOf, DecidingVectors, type Deciders } from "./deciding-vectors.ts";
import { Finder, type Found } from "./finder.ts";
import { addedBy, addedHolds, addedParts, addedReasons, type Judged } from "./judged.ts";
import type { TrialGround, TrialSet } from "./trial-ground.ts";
import { bareEdged, triedOpening } from "./trial-opening.ts";

/**
 * Answers for places and widths on one side: under the vectors that decided where a place was looked at whole, and confirmed
 * under every set and every run that governs. What is confirmed holds from then on.
 */
export class PlaceJudge {
  private readonly ground: TrialGround;
  private readonly others: readonly Opening[];
  private readonly finder: Finder;
  private readonly deciding: DecidingVectors;
  private readonly traced = new Map<string, ChartAnswer>();
  private readonly sure = new Map<string, ChartAnswer>();
  private readonly bare = new Map<string, Judged>();
  private bareLifted: readonly ElementResult[] | undefined;

  /** `traceOn`: whether every vector is looked at for every place. */
  constructor(ground: TrialGround, traceOn: "deciding sets" | "all sets") {
    this.ground = ground;
    this.finder = new Finder(ground);
    this.others = ground.unit.openings.filter(({ id }) => id !== triedOpening(ground.request, 0, 1).id);
    this.deciding = new DecidingVectors(ground.sets, traceOn === "all sets");
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
    const key = `${keyOf(place)} ${this.deciding.key}`;
    const found = this.sure.get(keyOf(place)) ?? this.traced.get(key) ?? this.judge(place);
    this.traced.set(key, found);
    return found;
  }

  /** Under every vector, within the whole building; what decides there is looked at from then on everywhere. */
  confirmed(place: Place): ChartAnswer {
    const found = this.sure.get(keyOf(place)) ?? this.judgeWhole(place);
    this.sure.set(keyOf(place), found);
    return found;
  }

  /** Whether the answer needs no solution. */
  forbidden(place: Place): ChartAnswer | undefined {
    return forbids(this.ground.unit, this.ground.request, this.others, place);
  }

  /** The verdict of the unit with no such opening, from its own parts and bearings, and how many reasons stand against it. */
  verdictWithout(): OpeningChart["without"] {
    const { results, holds, leftOut } = hung(this.without(this.ground.sets), this.liftedWithout());
    const { unit } = this.ground;
    const withSteel = this.others.some(({ framed }) => framed);
    const found = { unitId: unit.id, results, holds, refused: [], runs: 0, withSteel, given: leftOut };
    const { verdict, reasons } = unitStrength(found);
    return { verdict, reasons: reasons.length };
  }

  private judge(place: Place): ChartAnswer {
    return this.leastSteel(place, (openings, framed) => {
      const found = this.finder.found(openings, this.vectors);
      return this.answerOf(openings, found.judged, this.without(this.vectors), framed);
    });
  }

  private judgeWhole(place: Place): ChartAnswer {
    return this.leastSteel(place, (openings, framed) => {
      const { sets } = this.ground;
      const before = this.without(sets);
      const found = this.finder.found(openings, sets, true);
      this.deciding.join(decidersIn(found, before));
      return this.answerOf(openings, found.judged, before, framed);
    });
  }

  /** As asked for; where that works, and it is to be framed only where it must be, with bare edges if that works too. */
  private leastSteel(
    { centreMm, widthMm }: Place,
    answer: (openings: readonly Opening[], framed: boolean) => ChartAnswer,
  ): ChartAnswer {
    const forbidden = this.forbidden({ centreMm, widthMm });
    if (forbidden !== undefined) return forbidden;
    const { request } = this.ground;
    const withIt = (asked: ChartRequest): Opening[] => [...this.others, triedOpening(asked, centreMm, widthMm)];
    const asked = answer(withIt(request), request.framed);
    if (request.framedWhereNeeded !== true || asked.why.kind !== "within") return asked;
    const bare = withIt(bareEdged(request));
    const lacks = addedReasons({ leftOut: this.finder.lacking(bare) }, { leftOut: this.finder.lacking(this.others) });
    if (lacks.length > 0) return asked;
    const built = answer(bare, false);
    return built.why.kind === "within" ? built : asked;
  }

  /** What it asks while it hangs takes a solution of its own: it is looked at where all else is well. */
  private answerOf(openings: readonly Opening[], found: Judged, before: Judged, framed: boolean): ChartAnswer {
    const { id } = this.ground.unit;
    const standing = addedBy(found, before, id, framed);
    if (standing.why.kind !== "within") return standing;
    return addedBy(hung(found, this.finder.lifted(openings)), hung(before, this.liftedWithout()), id, framed);
  }

  /** What is found of the unit with no such opening. */
  private without(sets: readonly TrialSet[]): Judged {
    const key = sets === this.ground.sets ? "every vector" : this.deciding.key;
    const found = this.bare.get(key) ?? this.finder.found(this.others, sets).judged;
    this.bare.set(key, found);
    return found;
  }

  private liftedWithout(): readonly ElementResult[] {
    return (this.bareLifted ??= this.finder.lifted(this.others));
  }
}

const keyOf = ({ centreMm, widthMm }: Place): string => `${centreMm} ${widthMm}`;

const hung = (judged: Judged, lifted: readonly ElementResult[]): Judged => ({
  ...judged,
  results: [...judged.results, ...lifted],
});

/** The vectors behind what an opening adds. */
function decidersIn({ judged, worsts, fallen }: Found, before: Judged): Deciders {
  const added = new Set(addedParts(judged, before).map(({ id }) => id));
  const worse = worsts.filter(({ part }) => added.has(part.id));
  const { sets, runs } = decidersOf(worse.length > 0 ? worse : worsts);
  return {
    sets: [...sets, ...fallen.map(({ set }) => new Set([set]))],
    runs: [...runs, ...fallen.map(({ run }) => run), ...addedHolds(judged, before).map(({ run }) => run)],
  };
}
