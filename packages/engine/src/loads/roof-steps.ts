import type { BuildingFrame, UnitBox } from "./building-frame.ts";
import { exposedFaces, type ExposedFace } from "./exposed-faces.ts";
import type { WindDirection } from "./wind-shape.ts";
import { windwardSideOf } from "./windward-side.ts";

/**
 * A wall that rises beside a lower roof. `towards` is the way from the lower roof to the wall, `atMm` where the wall
 * stands on that axis, `from` and `to` its extent across, all in the building's axes.
 */
export type FoundStep = {
  readonly lower: UnitBox;
  readonly upper: UnitBox;
  readonly towards: WindDirection;
  readonly atMm: number;
  readonly fromMm: number;
  readonly toMm: number;
  readonly stepMm: number;
  /** Unbroken roof behind the wall, and in front of it, mm. */
  readonly upperLengthMm: number;
  readonly lowerLengthMm: number;
};

/**
 * Every step of a roof against the exposed wall of a higher unit that stands beside it or on it, for each unit whose
 * roof it is.
 */
export function roofSteps(building: BuildingFrame): FoundStep[] {
  const { boxes } = building;
  const walls = exposedFaces(building);
  return boxes.flatMap((lower) =>
    walls
      .filter(({ unit, rect }) => unit.z1 - lower.z1 > sameRoofMm && rect.v1 > lower.z1 + sameRoofMm)
      .flatMap((wall) => stepsAt(lower, wall, boxes)),
  );
}

/** Roofs closer in height are one roof; walls closer to a roof's edge stand at it: common practice. */
const sameRoofMm = 300;

type Way = { readonly towards: WindDirection; readonly along: "x" | "y"; readonly sign: 1 | -1 };
const ways: readonly Way[] = [
  { towards: "+x", along: "x", sign: 1 },
  { towards: "-x", along: "x", sign: -1 },
  { towards: "+y", along: "y", sign: 1 },
  { towards: "-y", along: "y", sign: -1 },
];

function stepsAt(
  lower: UnitBox,
  { unit: upper, side, rect, atMm }: ExposedFace,
  boxes: readonly UnitBox[],
): FoundStep[] {
  const way = ways.find(({ towards }) => windwardSideOf[towards] === side);
  if (way === undefined) return [];
  const { towards, along, sign } = way;
  const across = along === "x" ? "y" : "x";
  const [start, end] = [near(lower, along, sign), far(lower, along, sign)];
  const fromMm = Math.max(low(lower, across), rect.u0);
  const toMm = Math.min(high(lower, across), rect.u1);
  const onRoof = sign * (atMm - start) > 0 && sign * (atMm - end) <= sameRoofMm;
  if (!onRoof || toMm - fromMm <= 1) return [];
  return [
    {
      lower,
      upper,
      towards,
      atMm,
      fromMm,
      toMm,
      stepMm: upper.z1 - lower.z1,
      upperLengthMm: run(upper, boxes, along, sign),
      lowerLengthMm: run(lower, boxes, along, sign === 1 ? -1 : 1) - sign * (end - atMm),
    },
  ];
}

const low = (box: UnitBox, axis: "x" | "y"): number => (axis === "x" ? box.x0 : box.y0);
const high = (box: UnitBox, axis: "x" | "y"): number => (axis === "x" ? box.x1 : box.y1);
/** The side met first, and the one met last, going along an axis in a sense. */
const near = (box: UnitBox, axis: "x" | "y", sign: 1 | -1): number => (sign === 1 ? low(box, axis) : high(box, axis));
const far = (box: UnitBox, axis: "x" | "y", sign: 1 | -1): number => (sign === 1 ? high(box, axis) : low(box, axis));
/**
 * Unbroken length of roofs of one height, from the near side of a box onward in a sense, over boxes that overlap it
 * across.
 */
function run(box: UnitBox, boxes: readonly UnitBox[], axis: "x" | "y", sign: 1 | -1): number {
  const across = axis === "x" ? "y" : "x";
  const start = near(box, axis, sign);
  let end = far(box, axis, sign);
  const level = boxes.filter(
    (other) =>
      Math.abs(other.z1 - box.z1) <= sameRoofMm &&
      Math.min(high(other, across), high(box, across)) - Math.max(low(other, across), low(box, across)) > 1,
  );
  for (let grown = true; grown;) {
    const further = level
      .filter(
        (other) => sign * (near(other, axis, sign) - end) <= sameRoofMm && sign * (far(other, axis, sign) - end) > 0,
      )
      .map((other) => far(other, axis, sign));
    grown = further.length > 0;
    for (const reached of further) end = sign * (reached - end) > 0 ? reached : end;
  }
  return Math.abs(end - start);
}
