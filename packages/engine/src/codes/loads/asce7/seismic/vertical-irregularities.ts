import type { Irregularity, IrregularityConsequence, IrregularityKind } from "../../../../loads/irregularity.ts";
import type { SeismicCategory } from "../../../../loads/seismic-site.ts";
import type { SeismicStorey } from "../../../../loads/seismic-storey.ts";
import type { Axis } from "../../../../loads/wind-shape.ts";
import { asce7, type Asce7Edition } from "../asce7-edition.ts";

/** Table 12.3-2, from memory, over the storeys, lowest first. 7-22 no longer has the mass irregularity. */
export function verticalIrregularities(
  edition: Asce7Edition,
  category: SeismicCategory,
  storeys: readonly SeismicStorey[],
): Irregularity[] {
  const at: Found = (kind, storeyId, value, limit, axis) => ({
    kind,
    storeyId,
    ...(axis === undefined ? {} : { axis }),
    value,
    limit,
    consequence: consequenceOf(kind, category),
    clause: asce7(edition, "Table 12.3-2"),
  });
  return [
    ...axes.flatMap((axis) => softAndWeak(storeys, axis, at)),
    ...(edition === "2016" ? heavyStoreys(storeys, at) : []),
    ...axes.flatMap((axis) => changedLengths(storeys, axis, at)),
    ...shiftedLines(storeys, at),
  ];
}

type Found = (kind: IrregularityKind, storeyId: string, value: number, limit: number, axis?: Axis) => Irregularity;

const axes: readonly Axis[] = ["x", "y"];

/**
 * 12.3.3.1: weak and extremely soft storeys out of E and F, extremely weak ones out of D too; 12.3.3.3 for lines cut in
 * plane.
 */
function consequenceOf(kind: IrregularityKind, category: SeismicCategory): IrregularityConsequence {
  if (kind === "in-plane discontinuity") return "overstrength below";
  const severe = category === "E" || category === "F";
  if (kind === "extreme soft storey" || kind === "weak storey") return severe ? "not permitted" : "noted";
  if (kind === "extreme weak storey") return severe || category === "D" ? "not permitted" : "noted";
  return "noted";
}

const sumOver = (storey: SeismicStorey, axis: Axis, of: "stiffnessNPerMm" | "strengthN" | "lengthMm"): number =>
  storey.lines.reduce((sum, line) => (line.axis === axis ? sum + line[of] : sum), 0);

/**
 * 1a and 1b: under 70 (60) % of the stiffness above, or under 80 (70) % of the mean of three above; 5a and 5b: strength
 * 80 (65) %.
 */
function softAndWeak(storeys: readonly SeismicStorey[], axis: Axis, found: Found): Irregularity[] {
  return storeys.flatMap((storey, place) => {
    const above = storeys[place + 1];
    if (above === undefined) return [];
    const three = storeys.slice(place + 1, place + 4);
    const mean = three.reduce((sum, one) => sum + sumOver(one, axis, "stiffnessNPerMm"), 0) / three.length;
    const stiffness = sumOver(storey, axis, "stiffnessNPerMm");
    const ratio = stiffness / sumOver(above, axis, "stiffnessNPerMm");
    const meanRatio = three.length === 3 ? stiffness / mean : Infinity;
    const strength = sumOver(storey, axis, "strengthN") / sumOver(above, axis, "strengthN");
    return [
      ...graded(Math.min(ratio / 0.7, meanRatio / 0.8), Math.min(ratio / 0.6, meanRatio / 0.7), (extreme, value) =>
        found(extreme ? "extreme soft storey" : "soft storey", storey.id, value, 1, axis),
      ),
      ...graded(strength / 0.8, strength / 0.65, (extreme, value) =>
        found(extreme ? "extreme weak storey" : "weak storey", storey.id, value, 1, axis),
      ),
    ];
  });
}

/** Values are given in parts of their limit: under 1 is irregular. */
function graded(
  plain: number,
  extreme: number,
  make: (extreme: boolean, value: number) => Irregularity,
): Irregularity[] {
  if (extreme < 1) return [make(true, extreme)];
  return plain < 1 ? [make(false, plain)] : [];
}

/** 2: over 150 % of a neighbour's mass; a roof lighter than the floor below is left out. */
function heavyStoreys(storeys: readonly SeismicStorey[], found: Found): Irregularity[] {
  return storeys.flatMap((storey, place) => {
    const neighbours = [storeys[place - 1], place + 1 < storeys.length - 1 ? storeys[place + 1] : undefined];
    const ratio = Math.max(...neighbours.map((one) => (one === undefined ? 0 : storey.weightN / one.weightN)));
    return ratio > 1.5 ? [found("mass", storey.id, ratio, 1.5)] : [];
  });
}

/** 3: the system's length over 130 % of a neighbour's. */
function changedLengths(storeys: readonly SeismicStorey[], axis: Axis, found: Found): Irregularity[] {
  return storeys.flatMap((storey, place) => {
    const own = sumOver(storey, axis, "lengthMm");
    const ratio = Math.max(
      ...[storeys[place - 1], storeys[place + 1]].map((one) => {
        const length = one === undefined ? 0 : sumOver(one, axis, "lengthMm");
        return length === 0 ? 0 : own / length;
      }),
    );
    return ratio > 1.3 ? [found("vertical geometry", storey.id, ratio, 1.3, axis)] : [];
  });
}

/** 4: a line shorter below than above, or carried by nothing, loads what is below as a discontinuity in its plane. */
const shiftedLines = (storeys: readonly SeismicStorey[], found: Found): Irregularity[] =>
  storeys.flatMap((storey) =>
    storey.lines.flatMap(({ id, axis, lengthMm, below }) => {
      const ratio = below?.kind === "line" ? below.lengthMm / lengthMm : below === undefined ? 0 : 1;
      return ratio < 1 ? [{ ...found("in-plane discontinuity", storey.id, ratio, 1, axis), lineId: id }] : [];
    }),
  );
