import type { FrameSolution } from "../../../packages/engine/src/analysis/frame-result.ts";
import { solved } from "../../../packages/engine/test/analysis/line-model.ts";
import { referenceJson, referenceModel } from "../../../packages/engine/test/analysis/reference-model.ts";
import type { VerificationCase, VerificationFamily } from "../verification-case.ts";

const buildings = {
  D01: "one 40 ft high-cube on four pads",
  D02: "the same with a framed full-height opening of 3.0 m",
  D03: "the same with a whole side out and two posts on pads",
  D04: "two of them stacked corner on corner",
  D05: "two stacked, the upper one shifted 3.0 m",
  D06: "a 20 ft unit turned across two others",
  D07: "a 20 ft unit in wind, free to lift",
} as const;

type Values = Readonly<Record<string, readonly number[] | number>>;
type Printed = { readonly combos: Readonly<Record<string, FrameSolution>> };

/** The reference's largest value of a kind: where it is, so that ours is read at the same place. */
function largest(values: Values, component: (c: number) => boolean): { id: string; c: number; value: number } {
  let most = { id: "", c: 0, value: 0 };
  for (const [id, value] of Object.entries(values))
    [value].flat().forEach((one, c) => {
      if (component(c) && Math.abs(one) > Math.abs(most.value)) most = { id, c, value: one };
    });
  return most;
}

const kinds = [
  { key: "displacements", name: "largest displacement", unit: "mm", component: (c: number) => c % 6 < 3 },
  { key: "reactions", name: "largest reaction", unit: "N", component: (c: number) => c % 6 < 3 },
  { key: "memberEndForces", name: "largest member moment", unit: "N mm", component: (c: number) => c % 6 > 2 },
  { key: "panelFlows", name: "largest sheet flow", unit: "N/mm", component: () => true },
] as const;

const cases = Object.entries(buildings).flatMap(([name, what]) =>
  Object.entries(referenceJson<Printed>(`models/${name}.expected.json`).combos).flatMap(([combination, expected]) =>
    kinds.flatMap(({ key, name: kind, unit, component }): VerificationCase[] => {
      const at = largest(expected[key], component);
      if (at.value === 0) return [];
      return [
        {
          id: `${name}-${combination}-${key}`,
          what: `${name}, ${what}, ${combination}: ${kind} (${at.id})`,
          source: `shared/reference/models/${name}: another frame solver, written apart from this one`,
          certainty: "derived",
          reference: at.value,
          unit,
          allowed: { relative: 0.001 },
          ours: () => [oursOf(name, combination)[key][at.id] ?? Number.NaN].flat()[at.c] ?? Number.NaN,
        },
      ];
    }),
  ),
);

const kept = new Map<string, FrameSolution>();

function oursOf(name: string, combination: string): FrameSolution {
  const key = `${name} ${combination}`;
  const before = kept.get(key);
  if (before !== undefined) return before;
  const solution = solved(referenceModel(name), combination);
  kept.set(key, solution);
  return solution;
}

/** Whole buildings of members and sheet, with bearings that may open, against an independent solver. */
export const referenceBuildings: VerificationFamily = {
  id: "reference-buildings",
  title: "Whole buildings against an independent solver",
  about:
    "Seven line models of container buildings, solved beforehand by a solver that shares no code with this one. The largest value of each kind is compared where the other solver has it; the tests compare every value and which bearings open.",
  cases,
};
