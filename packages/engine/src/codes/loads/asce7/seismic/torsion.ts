import { rigidDiaphragm } from "../../../../loads/rigid-diaphragm.ts";
import type { SeismicStorey } from "../../../../loads/seismic-storey.ts";
import type { Axis } from "../../../../loads/wind-shape.ts";
import { openWorking } from "../../../../working/open-working.ts";
import type { Working } from "../../../../working/working.ts";
import { asce7, type Asce7Edition } from "../asce7-edition.ts";

/** Accidental eccentricity of the mass, 12.8.4.2, in parts of the width across the force. */
export const accidentalEccentricity = 0.05;

/**
 * Largest edge movement over the mean of both edges, with the mass 5 % off either way; undefined when nothing holds the
 * floor.
 */
export function torsionalRatio(storey: SeismicStorey, axis: Axis): number | undefined {
  const { outline, lines } = storey;
  const [low, high, centre] =
    axis === "x" ? [outline.y0Mm, outline.y1Mm, storey.centreYMm] : [outline.x0Mm, outline.x1Mm, storey.centreXMm];
  const ratios = [accidentalEccentricity, -accidentalEccentricity].map((part) => {
    const response = rigidDiaphragm(lines, outline, axis, 1, centre + part * (high - low));
    if (response === undefined) return undefined;
    const { lowEdgeMm, highEdgeMm } = response;
    return Math.max(Math.abs(lowEdgeMm), Math.abs(highEdgeMm)) / Math.abs((lowEdgeMm + highEdgeMm) / 2);
  });
  return ratios.reduce((worst, ratio) =>
    worst === undefined || ratio === undefined ? undefined : Math.max(worst, ratio),
  );
}

/** Amplification of accidental torsion, 12.8.4.3: 1 to 3. */
export function torsionAmplification(edition: Asce7Edition, ratio: number): Working {
  const w = openWorking("Amplification of accidental torsion", asce7(edition, "12.8.4.3"));
  w.let("r", ratio, "1", "largest edge movement over the mean", "derived");
  w.compute("A_x", "min(max((r / 1.2)^2, 1), 3)", "1", "12.8-14");
  return w.giving("A_x");
}
