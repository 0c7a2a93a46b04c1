import { unitStrength } from "../strength/unit-strength.ts";
import type { ElementResult } from "../strength/element-result.ts";
import { holdsNeeded } from "../strength/holds-needed.ts";
import { liftOf } from "../strength/lift-results.ts";
import type { Opening } from "@cornerway/schema";
import type { ChartAnswer, OpeningChart } from "./chart.ts";
import { forbids, type Place } from "./chart-side.ts";
import { addedBy, findingOf, type Judged } from "./judged.ts";
import { trial } from "./trial.ts";
import type { TrialGround, TrialSet } from "./trial-ground.ts";
import { triedOpening } from "./trial-opening.ts";
import { TriedWalls } from "./tried-walls.ts";

/** Answers for places and widths on one side, each solved once for each choice of sets. */
export class PlaceJudge {
  private readonly ground: TrialGround;
  private readonly others: readonly Opening[];
  private readonly known = new Map<string, ChartAnswer>();
  private readonly bare = new Map<string, Judged>();
  private readonly walls: TriedWalls;
  /** How many places and widths were solved. */
  solved = 0;

  constructor(ground: TrialGround) {
    this.ground = ground;
    this.walls = new TriedWalls(ground);
    this.others = ground.unit.openings.filter(({ id }) => id !== triedOpening(ground.request, 0, 1).id);
  }

  answer(place: Place, sets: readonly TrialSet[]): ChartAnswer {
    const key = `${place.centreMm} ${place.widthMm} ${setsKey(sets)}`;
    const found = this.known.get(key) ?? this.judge(place, sets);
    this.known.set(key, found);
    return found;
  }

  /** Whether the answer needs no solution. */
  forbidden(place: Place): ChartAnswer | undefined {
    return forbids(this.ground.unit, this.ground.request, this.others, place);
  }

  /** What is found of the unit with no such opening. */
  without(sets: readonly TrialSet[]): Judged {
    const found = this.bare.get(setsKey(sets)) ?? this.judged(this.others, sets);
    this.bare.set(setsKey(sets), found);
    return found;
  }

  /** The verdict of the unit with no such opening, from its own parts and bearings, and how many reasons stand against it. */
  verdictWithout(sets: readonly TrialSet[]): OpeningChart["without"] {
    const { results, holds, leftOut } = this.without(sets);
    const { unit } = this.ground;
    const withSteel = this.others.some(({ framed }) => framed);
    const found = { unitId: unit.id, results, holds, refused: [], runs: 0, withSteel, given: leftOut };
    const { verdict, reasons } = unitStrength(found);
    return { verdict, reasons: reasons.length };
  }

  private judge(place: Place, sets: readonly TrialSet[]): ChartAnswer {
    const forbidden = this.forbidden(place);
    if (forbidden !== undefined) return forbidden;
    const { request, unit } = this.ground;
    const tried = triedOpening(request, place.centreMm, place.widthMm);
    return addedBy(this.judged([...this.others, tried], sets), this.without(sets), unit.id, request.framed);
  }

  private judged(openings: readonly Opening[], sets: readonly TrialSet[]): Judged {
    const { scheme, ownBearings } = this.ground;
    this.solved++;
    const { worsts, leans, solved } = trial(this.ground, openings, sets);
    const runs = solved.flatMap((one) => one.solved);
    return {
      results: [...worsts.map(findingOf), ...leans, ...this.lifted(openings)],
      holds: holdsNeeded(ownBearings, runs, scheme.basis.friction),
      fallen: solved.flatMap(({ fallen }) => fallen.map(({ id }) => id)),
      leftOut: this.walls.reasons(openings),
    };
  }

  /** The unit as it hangs, with what is cut in it before the pick. */
  private lifted(openings: readonly Opening[]): ElementResult[] {
    const { unit, scheme, otherOpenings, basis, memory } = this.ground;
    const hanging = { ...scheme, openings: [...otherOpenings, ...openings] };
    return scheme.containers.filter(({ id }) => id === unit.id).flatMap((one) => liftOf(hanging, one, basis, memory));
  }
}

const setsKey = (sets: readonly TrialSet[]): string => sets.map(({ set }) => set.id).join(";");
