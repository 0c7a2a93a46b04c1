import type {
  AnalyticalModel,
  FreedomName,
  ModelCase,
  ModelSection,
  ModelSupport,
  Six,
} from "../../src/model/analytical-model.ts";
import type { FrameSolution } from "../../src/analysis/frame-result.ts";
import { solveFrame } from "../../src/frame.ts";
import { modelFrom } from "./reference-model.ts";

export const ALL: FreedomName[] = ["ux", "uy", "uz", "rx", "ry", "rz"];
/** Holds a plane frame in x-z in its plane. */
export const IN_PLANE: FreedomName[] = ["uy", "rx", "rz"];
export const ROTATIONS: FreedomName[] = ["rx", "ry", "rz"];

/** A section with one I both ways and so much area that its axial strain is lost in the digits compared. */
export function bendingSection(E: number, I: number, A = 1e7): ModelSection {
  return { E, G: E / 2.6, A, Iy: I, Iz: I, J: I };
}

export interface Parts {
  nodes: Record<string, [number, number, number]>;
  sections: Record<string, ModelSection>;
  beams?: Record<
    string,
    {
      i: string;
      j: string;
      section: string;
      rel_i?: FreedomName[];
      rel_j?: FreedomName[];
      up?: [number, number, number];
    }
  >;
  panels?: Record<string, { nodes: [string, string, string, string]; Gt: number; Ev?: number; Eh?: number }>;
  links?: Record<string, { i: string; j: string; k: Six; compression_only?: boolean }>;
  springs?: Record<string, { i: string; j?: string; k: Six }>;
  supports: Record<string, FreedomName[] | { fix: FreedomName[]; compression_only: true }>;
  load: ModelCase;
}

/** A line model with one case and one combination, written briefly; read through the product's own reader. */
export function lineModel(parts: Parts): AnalyticalModel {
  const listed = <T>(items: Record<string, T> = {}) => Object.entries(items).map(([id, item]) => ({ id, ...item }));
  const supports = Object.entries(parts.supports).map(([node, held]): ModelSupport =>
    Array.isArray(held) ? { node, fix: held } : { node, ...held },
  );
  return modelFrom({
    nodes: Object.entries(parts.nodes).map(([id, [x, y, z]]) => ({ id, x, y, z })),
    sections: parts.sections,
    beams: listed(parts.beams),
    panels: listed(parts.panels),
    links: listed(parts.links),
    springs: listed(parts.springs),
    supports,
    cases: { load: parts.load },
    combos: { load: { load: 1 } },
  });
}

export function solved(model: AnalyticalModel, combo = "load"): FrameSolution {
  const solution = solveFrame(model).combos[combo];
  if (solution === undefined || "refused" in solution) throw new Error(solution?.refused ?? "no such combination");
  return solution;
}

/** A straight plane beam along x of `parts` equal members named b0, b1 …, on nodes n0, n1 …, held in its plane at every node. */
export function straightBeam(
  lengthMm: number,
  parts: number,
  section: ModelSection,
  ends: Record<string, FreedomName[]>,
  load: ModelCase,
): Parts {
  const at = Array.from({ length: parts + 1 }, (_, n) => n);
  return {
    nodes: Object.fromEntries(at.map((n) => [`n${n}`, [(lengthMm * n) / parts, 0, 0]])),
    sections: { s: section },
    beams: Object.fromEntries(at.slice(1).map((n) => [`b${n - 1}`, { i: `n${n - 1}`, j: `n${n}`, section: "s" }])),
    supports: Object.fromEntries(at.map((n) => [`n${n}`, [...new Set([...IN_PLANE, ...(ends[`n${n}`] ?? [])])]])),
    load,
  };
}

export function everywhere(parts: number, q: number): ModelCase {
  return { beam_udl: Array.from({ length: parts }, (_, n) => ({ beam: `b${n}`, q: [0, 0, -q] as const })) };
}
