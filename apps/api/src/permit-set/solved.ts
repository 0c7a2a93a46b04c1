import { engineVersion, governingFirst, loadFlow, type RunForces } from "@cornerway/engine";
import type { Scheme, SolvedForces, StrengthProof } from "@cornerway/schema";
import type { SetSource } from "./set-source.ts";

/** Forces as the record has them, and the run whose strokes are drawn. */
export type Solved = SolvedForces & {
  /** Under the sum that governs most, drawn anew by the engine that judged; null where nothing makes it stand, or the engine is another now. */
  governing: RunForces | null;
};

/** Null where strength was not run, or was recorded before its forces were. */
export function solve({ scheme, assessment, proof }: SetSource): Solved | null {
  const forces = proof?.report.forces;
  if (proof === null || forces === undefined) return null;
  return { ...forces, governing: assessment.engineVersion === engineVersion ? governingRun(scheme, proof) : null };
}

function governingRun(scheme: Scheme, { report }: StrengthProof): RunForces | null {
  const flow = loadFlow(scheme);
  if (!flow.accepted) return null;
  const [first] = governingFirst(flow.runs, report.results);
  return first === undefined ? null : flow.of({ run: first.id });
}

/** Vertical reactions of one support by what acts, kN, up positive; null where that does not act. */
export type SupportByCase = {
  id: string;
  dead: number | null;
  imposed: number | null;
  roof: number | null;
  /** The greatest of the snow cases. */
  snow: number | null;
  wind: Range | null;
  earthquake: Range | null;
};

/** Greatest and least upwards, and the greatest sideways, over the cases of one kind. */
export type Range = { most: number; least: number; level: number };

/** What comes down on a support with dead load, every floor and every roof loaded, unfactored, kN. */
export const gravityKn = ({ dead, imposed, roof }: SupportByCase): number => (dead ?? 0) + (imposed ?? 0) + (roof ?? 0);

type Sum = { upKn: number; levelKn: number };

/** Each support once, in the order of its bearings. */
export function supportsByCase(cases: SolvedForces["cases"]): SupportByCase[] {
  const ids = [...new Set(cases.flatMap(({ reactions }) => (reactions ?? []).map(({ elementId }) => elementId)))];
  return ids.map((id) => {
    const of = (symbol: string, caseId?: string): Sum[] =>
      cases
        .filter((one) => one.symbol === symbol && (caseId === undefined || one.caseId === caseId))
        .flatMap(({ reactions }) => (reactions === null ? [] : [sumAt(id, reactions)]));
    const most = (sums: readonly Sum[]): number | null =>
      sums.length === 0 ? null : Math.max(...sums.map(({ upKn }) => upKn));
    return {
      id,
      dead: most(of("D")),
      imposed: most(of("L", "L everywhere")),
      roof: most(of("Lr")),
      snow: most(of("S")),
      wind: rangeOf(of("W")),
      earthquake: rangeOf(of("Eh")),
    };
  });
}

function sumAt(id: string, reactions: NonNullable<SolvedForces["cases"][number]["reactions"]>): Sum {
  let [up, east, north] = [0, 0, 0];
  for (const { elementId, upKn, eastKn, northKn } of reactions)
    if (elementId === id) [up, east, north] = [up + upKn, east + eastKn, north + northKn];
  return { upKn: up, levelKn: Math.sqrt(east * east + north * north) };
}

function rangeOf(sums: readonly Sum[]): Range | null {
  if (sums.length === 0) return null;
  const ups = sums.map(({ upKn }) => upKn);
  return { most: Math.max(...ups), least: Math.min(...ups), level: Math.max(...sums.map(({ levelKn }) => levelKn)) };
}
