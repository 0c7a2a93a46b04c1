import type { LateralLine, PlanOutline } from "./seismic-storey.ts";
import type { Axis } from "./wind-shape.ts";

/** What a stiff floor does under one horizontal force: movement of its two edges and the force in every line. */
export type DiaphragmResponse = {
  readonly lowEdgeMm: number;
  readonly highEdgeMm: number;
  readonly lineForcesN: readonly { readonly id: string; readonly forceN: number }[];
};

/**
 * Statics of a rigid floor on elastic lines: the force acts along `axis` at `atMm` across it. Undefined when the lines
 * cannot hold the floor: none along the axis, or nothing against turning while the force is off the centre of
 * stiffness.
 */
export function rigidDiaphragm(
  lines: readonly LateralLine[],
  outline: PlanOutline,
  axis: Axis,
  forceN: number,
  atMm: number,
): DiaphragmResponse | undefined {
  const along = lines.filter((line) => line.axis === axis);
  const across = lines.filter((line) => line.axis !== axis);
  const stiffness = total(along, () => 1);
  if (stiffness <= 0) return undefined;
  const centre = total(along, ({ atMm: at }) => at) / stiffness;
  const acrossCentre = across.length === 0 ? 0 : total(across, ({ atMm: at }) => at) / total(across, () => 1);
  const torsional =
    total(along, ({ atMm: at }) => (at - centre) * (at - centre)) +
    total(across, ({ atMm: at }) => (at - acrossCentre) * (at - acrossCentre));
  const arm = atMm - centre;
  if (torsional <= 0 && arm !== 0) return undefined;
  const shift = forceN / stiffness;
  const turn = torsional > 0 ? (forceN * arm) / torsional : 0;
  const [low, high] = axis === "x" ? [outline.y0Mm, outline.y1Mm] : [outline.x0Mm, outline.x1Mm];
  return {
    lowEdgeMm: shift + turn * (low - centre),
    highEdgeMm: shift + turn * (high - centre),
    lineForcesN: lines.map((line) => ({
      id: line.id,
      forceN:
        line.stiffnessNPerMm *
        (line.axis === axis ? shift + turn * (line.atMm - centre) : -turn * (line.atMm - acrossCentre)),
    })),
  };
}

const total = (lines: readonly LateralLine[], of: (line: LateralLine) => number): number =>
  lines.reduce((sum, line) => sum + line.stiffnessNPerMm * of(line), 0);
