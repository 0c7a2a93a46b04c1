import type { Scheme } from "@cornerway/schema";
import type { GroundValue } from "../checks/soil-bearing.ts";
import type { Unit } from "../geometry/building.ts";
import { buildingFrame } from "../loads/building-frame.ts";
import type { Analysis } from "../load-path/analysis.ts";
import type { BuiltModel } from "../model/build-model.ts";
import { usualAssumptions } from "../model/model-assumptions.ts";
import { unitLinesOf } from "../model/unit-lines-of.ts";
import { anchorParts } from "./anchor-parts.ts";
import { beamBearingParts } from "./beam-bearing-parts.ts";
import { beamParts } from "./beam-parts.ts";
import { bearingParts, SEAT_MM } from "./bearing-parts.ts";
import { boltParts, isBolted } from "./bolt-parts.ts";
import { connectionParts } from "./connection-parts.ts";
import { driftBasis, driftParts } from "./drift-parts.ts";
import { freePostParts } from "./free-post-parts.ts";
import { gapParts } from "./gap-parts.ts";
import { wallParts, wallsByUnit } from "./lateral/wall-parts.ts";
import { modelledBearings, type ModelledBearing } from "./modelled-bearings.ts";
import { postPlates } from "./post-plates.ts";
import { PartsMade } from "./parts-made.ts";
import { padParts } from "./pad-parts.ts";
import type { StrengthPart } from "./strength-part.ts";
import type { StrengthBasis } from "./strength-basis.ts";
import { seatAt } from "./drawn-seat.ts";
import type { SeatLength } from "./rail-twist-parts.ts";
import { seatParts } from "./seat-parts.ts";
import { tieParts } from "./tie-parts.ts";
import { unitParts } from "./unit-parts.ts";

/**
 * Everything that is checked in a building, with its strengths: units, posts and beams by themselves, bearings, ties, pads.
 * `made` has what is checked inside containers that were there before.
 */
export function checkedParts(
  analysis: Analysis,
  built: BuiltModel,
  scheme: Scheme,
  basis: StrengthBasis,
  made: PartsMade = new PartsMade(),
): StrengthPart[] {
  const { building } = analysis.structure;
  const bearings = modelledBearings(built, building);
  const { soil, concreteMpa } = scheme.basis;
  return [
    ...partsInside(building.units, analysis, built, scheme, basis, made),
    ...driftPartsOf(scheme, built, bearings, basis),
    ...freePostParts(building, built, basis.factored),
    ...beamParts(building, built, basis.factored),
    ...beamBearingParts(bearings, building, basis.factored),
    ...boltParts(bearings, building, basis.factored),
    ...postPlates(bearings, building, built.plan, concreteMpa, basis.factored),
    ...bearingParts(bearings, building, basis.factored, built.plan.inWalls),
    ...seatParts(bearings, scheme.seats, building, basis.factored),
    ...connectionParts(
      bearings.filter((bearing) => !isBolted(bearing)),
      scheme,
      basis,
    ),
    ...tieParts(built.plan.ties, built.model.springs, basis.factored),
    ...anchorParts(building, bearings, built.plan, concreteMpa),
    ...padParts(building.pads, bearings, groundOf(soil, basis), concreteMpa, basis),
  ];
}

/** What is checked inside these containers and in their walls. Throws a RangeError for one that is not in the model. */
export function partsInside(
  units: readonly Unit[],
  analysis: Analysis,
  built: BuiltModel,
  { basis: { sheetWalls } }: Pick<Scheme, "basis">,
  basis: StrengthBasis,
  made: PartsMade = new PartsMade(),
): StrengthPart[] {
  const { structure } = analysis;
  const bearings = modelledBearings(built, structure.building);
  const wallsOf = wallsByUnit(structure, sheetWalls, basis.allowable);
  const placed = new Map(built.model.units.map((unit) => [unit.id, unit]));
  return units.flatMap((unit) => {
    const model = placed.get(unit.id);
    if (model === undefined) throw new RangeError(`container ${unit.id} is not in the model`);
    // lengths and openings are the same in every set of assumptions
    const lines = unitLinesOf(structure, built.plan, unit, usualAssumptions);
    const own = bearings.filter(({ ownerId }) => ownerId === unit.id);
    const { fragment } = model;
    const walls = wallsOf(unit.id);
    const ofWalls = [unit.frame, walls, own, sheetWalls];
    return [
      ...made.take(
        basis,
        [unit.id, fragment.key, postsInWalls(analysis, built, unit.id), seatLengths(own, structure)],
        () =>
          unitParts(
            unit,
            model,
            lines,
            postSections(analysis, built, unit.id),
            basis,
            made,
            lengthAt(seatLengths(own, structure)),
          ),
      ),
      ...made.take(basis, [unit.id, fragment.key, ofWalls], () =>
        wallParts(unit, walls, { fragment, lines }, own, sheetWalls, basis.allowable),
      ),
    ];
  });
}

/** None before the place says what wind and earthquakes it has. */
function driftPartsOf(
  scheme: Scheme,
  { model }: BuiltModel,
  bearings: readonly ModelledBearing[],
  { loads }: StrengthBasis,
): StrengthPart[] {
  const building = buildingFrame(scheme);
  const drift = building && driftBasis(scheme, building, loads);
  if (building === undefined || drift === undefined) return [];
  const own = (unitId: string) => bearings.filter(({ ownerId }) => ownerId === unitId);
  return [
    ...model.units.flatMap((unit) => driftParts(unit, own(unit.id), drift)),
    ...gapParts(building, model.units, drift),
  ];
}

export const groundOf = ({ class: soil, report }: Scheme["basis"]["soil"], { loads }: StrengthBasis): GroundValue =>
  report === undefined
    ? { kind: "presumed", soil: loads.soil(soil) }
    : { kind: "report", bearingKpa: report.bearingPa / 1000, source: report.source };

/** All that the parts of a container hang on beside its lines. */
const postsInWalls = ({ structure }: Analysis, { plan }: BuiltModel, unitId: string): string[] =>
  (plan.inWalls.get(unitId) ?? []).map(
    ({ side, u, postId }) => `${side} ${u} ${structure.building.postById.get(postId)?.post.section ?? ""}`,
  );

type SeatLengthAt = { readonly side: string; readonly u: number; readonly mm: number };

/** What stands under a unit's bottom rails, as long along them as a plate that is welded to them; where nothing is drawn as bearings take it. */
const seatLengths = (own: readonly ModelledBearing[], { building }: Analysis["structure"]): SeatLengthAt[] =>
  own.flatMap((bearing): SeatLengthAt[] => {
    const { above, below, heldById } = bearing.planned;
    if (!("seat" in above)) return [];
    const { side, u } = above.seat;
    const mm = seatAt(bearing, above, building).seatMm ?? SEAT_MM;
    // what only presses is no stiff plate: a force spread evenly over c bends a span by c/8 less, as does a plate of half that length
    return [{ side, u, mm: heldById === undefined && !("ground" in below) ? mm / 2 : mm }];
  });

const lengthAt =
  (lengths: readonly SeatLengthAt[]): SeatLength =>
  (side, uMm) =>
    lengths.find((one) => one.side === side && Math.abs(one.u - uMm) < 1)?.mm ?? 0;

function postSections({ structure }: Analysis, { plan }: BuiltModel, unitId: string) {
  return (side: "left" | "right", uMm: number): string => {
    const post = plan.inWalls.get(unitId)?.find((one) => one.side === side && Math.abs(one.u - uMm) < 1);
    return post === undefined ? "" : (structure.building.postById.get(post.postId)?.post.section ?? "");
  };
}
