import type { Opening, Verdict } from "@cornerway/schema";
import { unitStrength } from "../strength/unit-strength.ts";
import { AddedAnswers, type Tried } from "./added-answers.ts";
import type { ChartAnswer, ChartRequest, OpeningChart } from "./chart.ts";
import { NARROWEST_MM } from "./trace-column.ts";
import { forbids, type Place } from "./chart-side.ts";
import { DecidingVectors } from "./deciding-vectors.ts";
import { Finder } from "./finder.ts";
import { addedReasons } from "./judged.ts";
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
  private readonly added: AddedAnswers;
  private readonly traced = new Map<string, ChartAnswer>();
  private readonly sure = new Map<string, ChartAnswer>();
  private readonly settledAt = new Map<string, ChartAnswer>();
  /** Answers that are the same under all that decide. */
  private readonly known = new Set<ChartAnswer>();
  /** Centres about which an opening is asked more while it hangs than its strength. */
  private readonly hangs = new Set<number>();
  /** The least width about a centre that does not work with bare edges. */
  private readonly bareFails = new Map<number, number>();
  /** The least that does not work framed. */
  private readonly fails = new Map<number, number>();
  private readonly easiestIn = new Map<string, Verdict>();

  /** `traceOn`: whether every vector is looked at for every place. `isPlain`: whether wider is never cheaper. */
  constructor(ground: TrialGround, traceOn: "deciding sets" | "all sets", isPlain = false) {
    this.ground = ground;
    this.isPlain = isPlain;
    this.finder = new Finder(ground);
    this.others = ground.unit.openings.filter(({ id }) => id !== triedId(ground.request));
    // sliding is told under the first set alone
    const first = ground.under === "all loads";
    this.deciding = new DecidingVectors(ground.sets, { first, all: traceOn === "all sets" });
    this.added = new AddedAnswers(ground, this.others, { finder: this.finder, deciding: this.deciding, isPlain });
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
    const found = this.answered(place) ?? this.judge(place);
    this.traced.set(key, found);
    return found;
  }

  /** What was answered before. */
  answered(place: Place): ChartAnswer | undefined {
    return this.sure.get(placeKey(place)) ?? this.traced.get(this.keyOf(place));
  }

  /** Under every vector; what decides there is looked at from then on everywhere. */
  confirmed(place: Place): ChartAnswer {
    const found = this.sure.get(placeKey(place)) ?? this.judgeWhole(place);
    this.sure.set(placeKey(place), found);
    return found;
  }

  /** Where some of the deciding sets, or what is asked while it hangs, were left out: with them. */
  settled(place: Place): ChartAnswer {
    const key = this.keyOf(place);
    const sure = this.sure.get(placeKey(place));
    if (sure !== undefined) return sure;
    const found = this.settledAt.get(key) ?? this.settle(place);
    this.settledAt.set(key, found);
    this.traced.set(key, found);
    return found;
  }

  /** Whether the answer needs no solution. */
  forbidden(place: Place): ChartAnswer | undefined {
    return forbids(this.ground.unit, this.ground.request, this.others, place);
  }

  /** The verdict of the unit with no such opening, from its own parts and bearings, and how many reasons stand against it. */
  verdictWithout(): OpeningChart["without"] {
    const { results: standing, holds, leftOut } = this.added.without();
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
    const forbidden = this.forbidden(place);
    if (forbidden !== undefined) return forbidden.verdict; // what is wider meets the same
    const { framed, framedWhereNeeded } = this.ground.request;
    if (!framed) return "works as built";
    return framedWhereNeeded === true && this.bare(place, (tried) => this.likely(tried, place)) !== undefined
      ? "works as built"
      : "works with steel";
  }

  private judge(place: Place): ChartAnswer {
    return this.leastSteel(place, (tried) => {
      const answer = this.likely(tried, place);
      const isHung = this.hangs.has(place.centreMm) && answer.why.kind === "within";
      return isHung ? this.added.hung(tried, answer, place) : answer;
    });
  }

  /** On a plain wall what is wider than a framed opening that does not work does not either. */
  private likely(tried: Tried, place: Place): ChartAnswer {
    const { centreMm, widthMm } = place;
    const failing = this.fails.get(centreMm) ?? Infinity;
    const { answer: found, isSure } = this.added.likely(tried, place, tried.framed && widthMm > failing);
    if (isSure) this.known.add(found);
    if (this.isPlain && tried.framed && found.why.kind !== "within")
      this.fails.set(centreMm, Math.min(widthMm, failing));
    return found;
  }

  /** Under the sets that were left out, and as it hangs. */
  private settle(place: Place): ChartAnswer {
    const likely = this.answer(place);
    const isKnown = this.known.has(likely);
    const surely = (tried: Tried): ChartAnswer => this.hungWhereNear(tried, this.added.surely(tried, place), place);
    if (likely.why.kind !== "within") return isKnown ? likely : this.leastSteel(place, surely);
    // what does not work with bare edges under some sets does not under all
    const { request } = this.ground;
    const isBare = likely.verdict === "works as built" && request.framed;
    const tried = this.tried(isBare ? bareEdged(request) : request, place);
    const settled = isKnown ? this.hungWhereNear(tried, likely, place) : surely(tried);
    return isBare && settled.why.kind !== "within" ? this.leastSteel(place, surely) : settled;
  }

  private hungWhereNear(tried: Tried, standing: ChartAnswer, place: Place): ChartAnswer {
    if (standing.why.kind !== "within") return standing;
    const isHung = this.hangs.has(place.centreMm);
    const found = isHung ? this.added.hung(tried, standing, place) : this.added.hungWhereNear(tried, standing, place);
    // then about this centre it is looked at everywhere
    if (found.why.kind !== "within") this.hangs.add(place.centreMm);
    return found;
  }

  private judgeWhole(place: Place): ChartAnswer {
    const { framed } = this.ground.request;
    return this.leastSteel(place, (tried) => this.added.underAll(tried, place, tried.framed !== framed), true);
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

  /** The answer of a place hangs on what is looked at there. */
  private keyOf(place: Place): string {
    return `${placeKey(place)} ${this.deciding.key} ${this.hangs.has(place.centreMm) ? "hung" : "standing"}`;
  }
}

const placeKey = ({ centreMm, widthMm }: Place): string => `${centreMm} ${widthMm}`;
