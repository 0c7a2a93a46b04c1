import type { ActionGap } from "./action-gap.ts";
import type { CodeSet } from "./code-set.ts";
import type { HazardRefusal } from "./hazard-refusal.ts";
import type { Irregularity } from "./irregularity.ts";
import type { CombinationLevel, LoadCombination } from "./load-combination.ts";
import type { LoadSymbol } from "./load-symbol.ts";
import type { Occupancy, OccupancyLoad } from "./occupancy.ts";
import type { Redundancy } from "./redundancy.ts";
import type { PeriodKind, SeismicForces, StoreyMass } from "./seismic-force.ts";
import type { SeismicCategory, SeismicDesign } from "./seismic-site.ts";
import type { SeismicStorey } from "./seismic-storey.ts";
import type { SeismicSystem, SystemPermit } from "./seismic-system.ts";
import type { BuildingForm, ShapeLimit } from "./shape-limit.ts";
import type { SiteHazards } from "./site-hazards.ts";
import type { RoofSnow, RoofStep, SnowDrift } from "./snow-drift.ts";
import type { PresumptiveSoil, SoilClass } from "./soil-class.ts";
import type {
  CladdingPart,
  CladdingPressure,
  CladdingZoneWidths,
  MainSystemWind,
  WindLoadCase,
} from "./wind-pressures.ts";
import type { Envelope, WindShape } from "./wind-shape.ts";
import type { Axis } from "./wind-shape.ts";
import type { Clause, Working } from "../working/working.ts";

/**
 * Everything the rest of the engine asks of the codes in force. Which codes these are only the code folders know;
 * whoever needs a rule takes a basis as an argument. Hazards must have been accepted (`refuse` gives none) before the
 * other functions see them.
 */
export type DesignBasis = {
  readonly codes: CodeSet;
  readonly refuse: (hazards: SiteHazards) => readonly HazardRefusal[];
  /** Actions the codes know and that are not worked out here. */
  readonly gaps: (hazards: SiteHazards) => readonly ActionGap[];
  readonly combinations: (request: CombinationRequest) => readonly LoadCombination[];
  readonly gravity: GravityRules;
  readonly snow: SnowRules;
  readonly wind: WindRules;
  readonly seismic: SeismicRules;
  readonly notional: NotionalRule;
  readonly soil: (soil: SoilClass) => PresumptiveSoil;
};

/**
 * Horizontal loads that stand for out-of-plumb: a share of each level's gravity load, raised where analysis runs at
 * allowable level.
 */
export type NotionalRule = { readonly share: number; readonly allowableFactor: number; readonly clause: Clause };

export type CombinationRequest = {
  readonly level: CombinationLevel;
  /** Actions the building has; D is always there. */
  readonly present: ReadonlySet<LoadSymbol>;
  /** The companion live load halved, where every occupancy allows it. */
  readonly halfCompanionLive: boolean;
  /** Earthquake rows with overstrength (Emh) in the place of Eh. */
  readonly overstrength: boolean;
};

export type GravityRules = {
  /** `servedPa`: of the room a balcony or deck belongs to. */
  readonly occupancy: (occupancy: Occupancy, servedPa?: number) => OccupancyLoad;
  readonly reducedFloor: (request: FloorReduction) => Working;
  readonly roofLive: (areaM2: number) => Working;
};

export type FloorReduction = {
  readonly pressurePa: number;
  readonly areaM2: number;
  readonly elementFactor: 1 | 2 | 3 | 4;
  readonly floors: number;
};

export type SnowRules = {
  readonly flatRoof: (hazards: SiteHazards) => RoofSnow;
  readonly drift: (hazards: SiteHazards, balanced: Working, step: RoofStep) => SnowDrift | undefined;
  /** Part of the roof snow that counts as seismic weight: 0 where little lies. */
  readonly seismicShare: (balancedPa: number) => number;
};

export type WindRules = {
  readonly shapeLimits: (form: BuildingForm) => readonly ShapeLimit[];
  readonly mainSystem: (hazards: SiteHazards, shape: WindShape, envelope: Envelope) => MainSystemWind;
  readonly loadCases: () => readonly WindLoadCase[];
  readonly claddingZones: (heightMm: number, leastPlanMm: number) => CladdingZoneWidths;
  readonly cladding: (
    hazards: SiteHazards,
    heightMm: number,
    internalCoefficient: number,
    part: CladdingPart,
  ) => CladdingPressure;
};

export type SeismicRules = {
  readonly design: (hazards: SiteHazards) => SeismicDesign;
  readonly permit: (system: SeismicSystem, category: SeismicCategory, heightMm: number) => SystemPermit;
  readonly forces: (design: SeismicDesign, request: SeismicRequest) => SeismicForces;
  readonly irregularities: (category: SeismicCategory, storeys: readonly SeismicStorey[]) => readonly Irregularity[];
  readonly redundancy: (
    category: SeismicCategory,
    storeys: readonly SeismicStorey[],
    irregularities: readonly Irregularity[],
  ) => Redundancy;
  /** Part of the dead load that the vertical shaking adds or takes away. */
  readonly verticalShare: (design: SeismicDesign) => number;
  /** Part of the other axis' forces that acts at once; 0 where each axis may be taken alone. */
  readonly orthogonalShare: (category: SeismicCategory) => number;
  /** A storey's drift against what is allowed, and its stability coefficient against its limit. */
  readonly drift: (hazards: SiteHazards, storey: StoreyMovement) => Working;
  readonly stability: (hazards: SiteHazards, storey: StoreyMovement & StoreyForces) => Working;
  /** Eccentricity of the mass in parts of the width, amplified where the floor turns. */
  readonly accidentalEccentricity: (category: SeismicCategory, storey: SeismicStorey, axis: Axis) => number;
};

/** Elastic movement at strength level, the storey's height, mm, and the deflection amplification of its system. */
export type StoreyMovement = { readonly elasticMm: number; readonly storeyMm: number; readonly cd: number };
export type StoreyForces = { readonly verticalN: number; readonly shearN: number };

export type SeismicRequest = {
  readonly r: number;
  readonly kind: PeriodKind;
  readonly heightMm: number;
  readonly computedPeriodS?: number;
  /** Lowest first; heights above the base, never 0. */
  readonly storeys: readonly StoreyMass[];
};
