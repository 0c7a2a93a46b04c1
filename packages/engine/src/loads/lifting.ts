import type { Container, Opening, PointMm, Scheme } from "@cornerway/schema";
import { gravity } from "../catalog/gravity.ts";
import { placeContainer, type PlacedContainer, type PlacedFitting } from "../geometry/place.ts";
import { tan } from "../numerics/elementary.ts";
import { toDegrees } from "../units.ts";
import { openWorking } from "../working/open-working.ts";
import type { Clause, Working } from "../working/working.ts";
import type { ActionCase } from "./action-case.ts";
import { addedSteel, type AddedSteel } from "./added-steel.ts";
import { sheetMassKg } from "./sheet-mass.ts";
import { tareOf } from "./tare.ts";

export type Rigging = {
  /** Slope of the legs from the horizontal, degrees; 90 under a spreader. */
  readonly legDegrees: number;
  /** True only for rigging that shares the load among four legs whatever their lengths. */
  readonly equalised: boolean;
};

/**
 * A unit as it hangs: its weight with cuts and steel, and what the fittings take, once per diagonal (or once for all
 * four).
 */
export type Lifting = {
  readonly weight: Working;
  readonly fittingForces: readonly Working[];
  readonly cases: readonly ActionCase[];
};

/** Lifting at the top fittings in the state of the pick. The dynamic factor stays on the whole weight. */
export function lifting(scheme: Scheme, container: Container): Lifting {
  const placed = placeContainer(container);
  const { factor, legMdeg, equalised } = scheme.basis.lifting;
  const rigging: Rigging = { legDegrees: toDegrees(legMdeg), equalised };
  // what is cut on site is still whole at the pick, and its frame is not in yet
  const openings = scheme.openings.filter(({ containerId, cut }) => containerId === container.id && cut === undefined);
  const steel = addedSteel({ ...scheme, openings }).filter(({ containerId }) => containerId === container.id);
  const weight = pickWeight(placed, openings, steel, factor);
  const picks = rigging.equalised ? [{ name: "all four", fittings: corners(placed) }] : diagonals(placed);
  const forces = picks.map(({ name, fittings }) => ({
    name,
    fittings,
    force: fittingForce(weight, name, fittings.length, rigging),
  }));
  return {
    weight,
    fittingForces: forces.map(({ force }) => force),
    cases: forces.map(({ name, fittings, force }) => ({
      id: `lift ${container.id} ${name}`,
      symbol: "D",
      loads: [
        { kind: "own weight", containerId: container.id, weightN: weight.result.value },
        ...fittings.map(({ at }) =>
          legPull(container.id, placed, at, weight.result.value / fittings.length, force, rigging),
        ),
      ],
    })),
  };
}

const practice: Clause = {
  document: "Lifting",
  edition: "",
  place: "common practice, no published source",
  certainty: "common practice",
};

function pickWeight(
  placed: PlacedContainer,
  openings: readonly Opening[],
  steel: readonly AddedSteel[],
  factor: number,
): Working {
  const tare = tareOf(placed.container, "most");
  const cutN = openings.reduce((sum, opening) => sum + sheetMassKg(placed.dimensions, opening), 0) * gravity.value;
  const w = openWorking(`Weight of ${placed.id} at the pick`, practice);
  w.let("T", tare.value * gravity.value, "N", "tare", tare.certainty, tare.source);
  w.let("C", cutN, "N", "sheets cut out", "derived");
  w.let(
    "S",
    steel.reduce((sum, { weightN }) => sum + weightN, 0),
    "N",
    "steel added before the pick",
    "derived",
  );
  w.let("f", factor, "1", "dynamic factor", "common practice");
  w.compute("W", "f * (T - C + S)", "N");
  return w.giving("W");
}

function fittingForce(weight: Working, name: string, count: number, { legDegrees }: Rigging): Working {
  const w = openWorking(`Force at a fitting, ${name}`, practice);
  w.take("W", weight);
  w.let(
    "n",
    count,
    "1",
    "fittings that carry",
    "common practice",
    "two diagonal ones carry all unless rigging equalises",
  );
  w.let("α", legDegrees, "degree", "slope of the legs", "common practice");
  w.compute("V", "W / n", "N");
  w.compute("P", "V / sin(α * π / 180)", "N");
  return w.giving("P");
}

const corners = (placed: PlacedContainer): PlacedFitting[] =>
  placed.topFittings.filter(({ name }) => !name.endsWith("inner"));

function diagonals(placed: PlacedContainer) {
  const pick = (...names: readonly PlacedFitting["name"][]) =>
    corners(placed).filter(({ name }) => names.includes(name));
  return [
    { name: "front-right and door-left", fittings: pick("front-right", "door-left") },
    { name: "front-left and door-right", fittings: pick("front-left", "door-right") },
  ];
}

/** Up, and towards the hook above the middle where legs slope. */
function legPull(
  containerId: string,
  placed: PlacedContainer,
  at: PointMm,
  upN: number,
  force: Working,
  { legDegrees }: Rigging,
) {
  const dx = placed.frame.xMm - at.xMm;
  const dy = placed.frame.yMm - at.yMm;
  const run = Math.sqrt(dx * dx + dy * dy);
  const inwardN = legDegrees === 90 ? 0 : upN / tan((legDegrees * Math.PI) / 180);
  if (force.result.value < upN - 1e-6 * upN) throw new RangeError("a leg carries at least its upright part");
  return {
    kind: "point" as const,
    elementId: containerId,
    at,
    xN: (inwardN * dx) / run,
    yN: (inwardN * dy) / run,
    zN: upN,
  };
}
