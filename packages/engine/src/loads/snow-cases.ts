import { LastMade } from "../numerics/last-made.ts";
import type { Working } from "../working/working.ts";
import type { ActionCase, ActionLoad } from "./action-case.ts";
import type { BuildingFrame } from "./building-frame.ts";
import type { DesignBasis } from "./design-basis.ts";
import { exposedFaces, type ExposedFace } from "./exposed-faces.ts";
import { even, roofPatch, type PlanePressure } from "./face-patch.ts";
import { roofSteps, type FoundStep } from "./roof-steps.ts";
import type { SiteHazards } from "./site-hazards.ts";
import type { RoofSnow, SnowDrift } from "./snow-drift.ts";
import { cutAlong, type Rect } from "./uncovered.ts";

/**
 * Snow as it can lie: the same everywhere, and balanced with a drift at every step. Sliding is none: the roofs are
 * flat.
 */
export type SnowLoading = {
  readonly cases: readonly ActionCase[];
  readonly roof: RoofSnow;
  readonly drifts: readonly PlacedDrift[];
  readonly workings: readonly Working[];
};

/**
 * A drift in its place: `rect` in the building's axes (u along x, v along y), with its load falling away from the wall.
 */
export type PlacedDrift = {
  readonly step: FoundStep;
  readonly drift: SnowDrift;
  readonly rect: Rect;
  readonly pressure: PlanePressure;
};

/** No cases where no snow falls. Where drifts meet, the heavier one counts on each piece of roof. */
export const snowCases = (building: BuildingFrame, hazards: SiteHazards, basis: DesignBasis): SnowLoading =>
  last.take(building, [hazards, basis], () => loadingOf(building, hazards, basis));

const last = new LastMade<SnowLoading>();

function loadingOf(building: BuildingFrame, hazards: SiteHazards, basis: DesignBasis): SnowLoading {
  const roof = basis.snow.flatRoof(hazards);
  const roofs = exposedFaces(building).filter(({ side }) => side === "up");
  const drifts = roofSteps(building).flatMap((step) =>
    placeDrift(step, basis.snow.drift(hazards, roof.balanced, step)),
  );
  const workings = [roof.balanced, roof.uniform, ...drifts.flatMap(({ drift }) => drift.workings)];
  if (roof.uniform.result.value === 0) return { cases: [], roof, drifts: [], workings };
  const uniform: ActionCase = {
    id: "S uniform",
    symbol: "S",
    loads: roofs.map((part) => snowOn(building, part, part.rect, even(roof.uniform.result.value))),
  };
  if (drifts.length === 0) return { cases: [uniform], roof, drifts, workings };
  const drifted: ActionCase = {
    id: "S drift",
    symbol: "S",
    loads: roofs.flatMap((part) => driftedRoof(building, part, drifts, roof.balanced.result.value)),
  };
  return { cases: [uniform, drifted], roof, drifts, workings };
}

const snowOn = (building: BuildingFrame, part: ExposedFace, rect: Rect, pressure: PlanePressure): ActionLoad => ({
  kind: "on",
  containerId: part.unit.id,
  surface: "roof",
  patch: roofPatch(building.axes, part, rect, pressure),
});

function driftedRoof(
  building: BuildingFrame,
  part: ExposedFace,
  all: readonly PlacedDrift[],
  balancedPa: number,
): ActionLoad[] {
  const drifts = all.filter(({ step }) => Math.abs(step.lower.z1 - part.atMm) <= sameRoofMm);
  const us = drifts.flatMap(({ rect }) => [rect.u0, rect.u1]);
  const vs = drifts.flatMap(({ rect }) => [rect.v0, rect.v1]);
  return cutAlong(part.rect, us, vs).map((rect) => {
    const [heaviest] = drifts
      .filter((drift) => inside(rect, drift.rect))
      .map((drift) => at(rect, drift))
      .toSorted((a, b) => middle(rect, b) - middle(rect, a));
    return snowOn(
      building,
      part,
      rect,
      heaviest === undefined ? even(balancedPa) : { ...heaviest, pressurePa: heaviest.pressurePa + balancedPa },
    );
  });
}

const sameRoofMm = 300;

const inside = (rect: Rect, whole: Rect): boolean => {
  const u = (rect.u0 + rect.u1) / 2;
  const v = (rect.v0 + rect.v1) / 2;
  return u > whole.u0 && u < whole.u1 && v > whole.v0 && v < whole.v1;
};

const at = (rect: Rect, { rect: whole, pressure }: PlacedDrift): PlanePressure => ({
  ...pressure,
  pressurePa:
    pressure.pressurePa + pressure.alongUPaPerMm * (rect.u0 - whole.u0) + pressure.alongVPaPerMm * (rect.v0 - whole.v0),
});

const middle = (rect: Rect, { pressurePa, alongUPaPerMm, alongVPaPerMm }: PlanePressure): number =>
  pressurePa + (alongUPaPerMm * (rect.u1 - rect.u0)) / 2 + (alongVPaPerMm * (rect.v1 - rect.v0)) / 2;

function placeDrift(step: FoundStep, drift: SnowDrift | undefined): PlacedDrift[] {
  if (drift === undefined) return [];
  const { widthMm, peakPa } = drift;
  const slope = peakPa / widthMm;
  const { atMm, fromMm, toMm } = step;
  switch (step.towards) {
    case "+x":
      return [
        {
          step,
          drift,
          rect: { u0: atMm - widthMm, u1: atMm, v0: fromMm, v1: toMm },
          pressure: { ...even(0), alongUPaPerMm: slope },
        },
      ];
    case "-x":
      return [
        {
          step,
          drift,
          rect: { u0: atMm, u1: atMm + widthMm, v0: fromMm, v1: toMm },
          pressure: { ...even(peakPa), alongUPaPerMm: -slope },
        },
      ];
    case "+y":
      return [
        {
          step,
          drift,
          rect: { u0: fromMm, u1: toMm, v0: atMm - widthMm, v1: atMm },
          pressure: { ...even(0), alongVPaPerMm: slope },
        },
      ];
    case "-y":
      return [
        {
          step,
          drift,
          rect: { u0: fromMm, u1: toMm, v0: atMm, v1: atMm + widthMm },
          pressure: { ...even(peakPa), alongVPaPerMm: -slope },
        },
      ];
  }
}
