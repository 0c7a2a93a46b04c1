import type { Scheme } from "@cornerway/schema";
import type { Working } from "../working/working.ts";
import { LastMade } from "../numerics/last-made.ts";
import { RecentlyMade } from "../numerics/recently-made.ts";
import type { ActionCase } from "./action-case.ts";
import { boxFactors, type BoxFactors } from "./box-factors.ts";
import { buildingForm, windShapeOf } from "./building-form.ts";
import { buildingFrame, type BuildingFrame } from "./building-frame.ts";
import { deadCase } from "./dead-cases.ts";
import type { DeadState } from "./dead-state.ts";
import { deadWorking } from "./dead-working.ts";
import type { DesignBasis } from "./design-basis.ts";
import { enteredSnow, enteredWind } from "./entered-actions.ts";
import { envelopes } from "./envelopes.ts";
import type { HazardRefusal } from "./hazard-refusal.ts";
import { imposedCases, type BearingLines } from "./imposed-cases.ts";
import { imposedWorking } from "./imposed-working.ts";
import { movementCases, type Support } from "./movement-cases.ts";
import { roofLive, type RoofLiveLoading } from "./roof-live-cases.ts";
import { seismicCases, type LinesOf, type SeismicLoading } from "./seismic-cases.ts";
import type { ShapeLimit } from "./shape-limit.ts";
import type { SiteHazards } from "./site-hazards.ts";
import { snowCases, type SnowLoading } from "./snow-cases.ts";
import { windCases } from "./wind-cases.ts";
import type { Envelope } from "./wind-shape.ts";
import type { MainSystemWind } from "./wind-pressures.ts";

/** What a place asks of a scheme, by kind, or why it cannot be said. */
export type SiteActions =
  | { readonly accepted: false; readonly refusals: readonly HazardRefusal[] }
  | {
      readonly accepted: true;
      readonly building: BuildingFrame;
      readonly dead: Readonly<Record<DeadState, ActionCase>>;
      /** Dead and imposed load of every unit, each with its formula; the others carry theirs. */
      readonly workings: { readonly dead: readonly Working[]; readonly imposed: readonly Working[] };
      readonly imposed: readonly ActionCase[];
      readonly roofLive: RoofLiveLoading;
      readonly movements: readonly ActionCase[];
      /** Absent where the project has no hazards yet: gravity alone. */
      readonly site?: SiteLoading;
    };

/** What wind, snow and earthquakes of the place ask. */
export type SiteLoading = {
  readonly snow: SnowLoading;
  readonly wind: WindLoading;
  readonly seismic: SeismicLoading;
};

export type WindLoading = {
  readonly cases: readonly ActionCase[];
  readonly pressures: MainSystemWind;
  /**
   * Every limit of the procedure, tried. One that fails makes wind the engineer's, with the enclosing box as a stated
   * substitute.
   */
  readonly limits: readonly ShapeLimit[];
  readonly boxFactors: BoxFactors;
};

export type ActionRequest = {
  readonly scheme: Scheme;
  readonly bearings: BearingLines;
  readonly supports: readonly Support[];
  readonly linesOf: LinesOf;
};

/** All actions on a scheme at its site under one design basis. Throws a RangeError for a scheme without containers. */
export function siteActions({ scheme, bearings, supports, linesOf }: ActionRequest, basis: DesignBasis): SiteActions {
  const { hazards } = scheme.basis;
  const refusals = hazards === null ? [] : basis.refuse(hazards);
  if (refusals.length > 0) return { accepted: false, refusals };
  const building = buildingFrame(scheme);
  if (building === undefined) throw new RangeError("a scheme without containers has no actions");
  // asked for by a report alone
  let workings: ReturnType<typeof gravityWorkings> | undefined;
  return {
    accepted: true,
    building,
    dead: {
      most: deadCase(scheme, "most"),
      least: deadCase(scheme, "least"),
      bare: deadCase(scheme, "bare"),
    },
    get workings() {
      return (workings ??= gravityWorkings(scheme, basis));
    },
    imposed: imposedCases(scheme, basis, bearings),
    roofLive: roofLive(scheme, building, basis),
    movements: movementCases(supports, scheme.basis),
    ...(hazards !== null && {
      site: {
        snow: enteredSnow(snowCases(building, hazards, basis), scheme),
        wind: enteredWind(windLoading(scheme, building, hazards, basis), scheme),
        seismic: seismicCases(scheme, building, basis, hazards, linesOf),
      },
    }),
  };
}

const gravityWorkings = (scheme: Scheme, basis: DesignBasis) => ({
  dead: scheme.containers.flatMap((container) => [
    deadWorking(scheme, container, "most"),
    deadWorking(scheme, container, "least"),
  ]),
  imposed: scheme.containers.map((container) => imposedWorking(scheme, basis, container)),
});

/**
 * The compartment with the highest pressure inside sets it for the whole. Worked out once for what is alike to the wind. `on`:
 * the units whose loads are told, of wind on the whole; absent: all.
 */
export function windLoading(
  scheme: Scheme,
  building: BuildingFrame,
  hazards: SiteHazards,
  basis: DesignBasis,
  on?: readonly string[],
): WindLoading {
  const known = blown.get(basis) ?? new RecentlyMade<WindLoading>(LOADINGS_KEPT);
  blown.set(basis, known);
  const enclosed = envelopes(building, scheme);
  const key = [textOf(building), ...[hazards, enclosed, on].map((one) => JSON.stringify(one))].join("; ");
  return known.take(key, () => windOn(building, enclosed, hazards, basis, on));
}

const textOf = (building: BuildingFrame): string => texts.take(building, [], () => JSON.stringify(building));
const texts = new LastMade<string>();

const blown = new WeakMap<DesignBasis, RecentlyMade<WindLoading>>();
/** Of a building of a dozen containers and of each of its stages while it is set up. */
const LOADINGS_KEPT = 16;

function windOn(
  building: BuildingFrame,
  enclosed: readonly Envelope[],
  hazards: SiteHazards,
  basis: DesignBasis,
  on?: readonly string[],
): WindLoading {
  const limits = basis.wind.shapeLimits(buildingForm(building));
  const shape = windShapeOf(building);
  // compartments that are alike, as plain containers are, are asked about once
  const different = new Map(enclosed.map((envelope) => [JSON.stringify(envelope), envelope]));
  const [first, ...others] = [...different.values()].map((envelope) => basis.wind.mainSystem(hazards, shape, envelope));
  if (first === undefined) throw new RangeError("a building has at least one compartment");
  const pressures = others.reduce((worst, one) => (one.internalPa > worst.internalPa ? one : worst), first);
  const factors = boxFactors(building, limits);
  return {
    cases: windCases(building, pressures, basis.wind.loadCases(), factors, on),
    pressures,
    limits,
    boxFactors: factors,
  };
}
