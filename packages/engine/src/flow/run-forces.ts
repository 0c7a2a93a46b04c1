import type { PointMm } from "@cornerway/schema";
import type { Analysis } from "../load-path/analysis.ts";
import type { BuiltModel } from "../model/build-model.ts";
import type { AssumptionId } from "../strength/assumption-sets.ts";
import type { SolvedRun } from "../strength/solve-runs.ts";
import type { CombinationLevel } from "../loads/load-combination.ts";
import { rounded, toKn } from "../units.ts";
import { deflectedShape, type DeflectedShape } from "./deflected-shape.ts";
import { memberForces, type MemberForces } from "./member-forces.ts";
import { inSite } from "./site-places.ts";
import { reactionsFrom, solvedPath, type Reaction, type SolvedStretch } from "./solved-path.ts";
import { strandsOf } from "./strands.ts";
import { greatestOffPosts, unitPath, type UnitPath } from "./unit-path.ts";
import type { WallSide } from "./wall-plane.ts";

/** Where every kilonewton goes in one solved run: plain data, N and mm made kN and mm of the site. */
export type RunForces = {
  readonly run: string;
  readonly level: CombinationLevel;
  readonly assumptions: AssumptionId;
  /** Units and posts that had to be held for the run to stand. */
  readonly held: readonly string[];
  readonly path: readonly SolvedStretch[];
  readonly strands: readonly PlacedStrand[];
  /** About what each strand carries, kN. */
  readonly shareKn: number;
  readonly reactions: readonly Reaction[];
  readonly deflected: DeflectedShape;
  readonly members: readonly MemberForces[];
};

/** A strand on its way through one wall. */
export type PlacedStrand = {
  readonly id: string;
  readonly unitId: string;
  readonly wall: WallSide;
  readonly forceKn: number;
  readonly points: readonly PointMm[];
};

/** So many strands at the most leave one place. */
const STRANDS_AT_MOST = 12;
/** Less than this is not told apart from the posts, kN. */
const LEAST_SHARE_KN = 1;

/** All that is drawn and said of one solved run. */
export function runForces(analysis: Analysis, built: BuiltModel, solved: SolvedRun): RunForces {
  const units = built.model.units.map((unit) => unitPath(unit, solved.inside(unit.id)));
  const shareKn = Math.max(LEAST_SHARE_KN, toKn(Math.max(0, ...units.map(greatestOffPosts))) / STRANDS_AT_MOST);
  const { run, set, held } = solved;
  return {
    run: run.id,
    level: run.level,
    assumptions: set.id,
    held,
    path: solvedPath(analysis, built, solved, units),
    strands: units.flatMap((path) => placedStrands(path, shareKn)),
    shareKn: rounded(shareKn),
    reactions: reactionsFrom(analysis, built, solved),
    deflected: deflectedShape(built.model, solved),
    members: memberForces(analysis, built, set.assumptions, [solved]),
  };
}

const N_PER_KN = 1000;

function placedStrands({ unit, flow, ends, bundles }: UnitPath, shareKn: number): PlacedStrand[] {
  const place = inSite(unit);
  return strandsOf(flow, ends, bundles, shareKn * N_PER_KN).flatMap(({ forceN, ways }, n) =>
    ways.map(({ wall, points }, at) => ({
      id: `${unit.id} strand ${n + 1}${at === 0 ? "" : ` round ${at}`}`,
      unitId: unit.id,
      wall,
      forceKn: rounded(toKn(forceN)),
      points: points.map(place),
    })),
  );
}
