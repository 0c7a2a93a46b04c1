import type { ModelBeam, ModelNode, ModelSection, ModelSpring } from "./analytical-model.ts";
import { nodeName } from "./building-model.ts";
import type { ModelAssumptions } from "./model-assumptions.ts";
import type { PlannedTie, TiedPoint } from "./tie-plan.ts";

/** The nodes of a tie in the gap between its units: the force between them is the tie's. */
export const tieNodes = (tieId: string): { readonly a: string; readonly b: string } => ({
  a: nodeName(tieId, "a"),
  b: nodeName(tieId, "b"),
});

/**
 * Ties between units as the model has them: arms of post section, as the stubs of seats, from either unit to one place in the
 * gap, and a spring there that carries both ways in plan, and upright where it is drawn so. It holds no moment.
 */
export function drawTies(
  ties: readonly PlannedTie[],
  nodeOf: (point: TiedPoint) => string,
  { sections, tieStiffness }: ModelAssumptions,
): {
  readonly nodes: ModelNode[];
  readonly beams: ModelBeam[];
  readonly sections: Record<string, ModelSection>;
  readonly springs: ModelSpring[];
} {
  const nodes: ModelNode[] = [];
  const beams: ModelBeam[] = [];
  const springs = ties.map(({ tieId, at, ends, across, upright, stiffness }): ModelSpring => {
    const named = tieNodes(tieId);
    const [x, y, z] = at;
    (["a", "b"] as const).forEach((end, n) => {
      nodes.push({ id: named[end], x, y, z });
      beams.push({ id: nodeName(tieId, `arm ${end}`), i: nodeOf(ends[n === 0 ? 0 : 1]), j: named[end], section: ARM });
    });
    const along = stiffness ?? tieStiffness.along;
    // springs act along the site's axes: of a gap askew to them the softer stands for both
    const by = (share: number): number => (Math.abs(share) > SQUARE ? (stiffness ?? tieStiffness.across) : along);
    return { id: tieId, i: named.a, j: named.b, k: [by(across[0]), by(across[1]), upright ? along : 0, 0, 0, 0] };
  });
  return { nodes, beams, springs, sections: ties.length === 0 ? {} : { [ARM]: sections.post } };
}

const ARM = "tie arm";
/** Cosine of less than 3° to an axis of the site: square to the gap. */
const SQUARE = 0.9986;
