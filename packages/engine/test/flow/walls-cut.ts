import type { UnitSolution } from "../../src/analysis/recover-unit.ts";
import type { UnitFragment } from "../../src/model/building-model.ts";
import type { FlowPath } from "../../src/flow/flow-paths.ts";
import type { VerticalFlow } from "../../src/flow/vertical-flow.ts";

/**
 * The vertical force across a horizontal cut of all four walls as the elements of the model say it, N, downwards positive:
 * axial force of every upright member, and of the two struts of every sheet (Ev·b/2h times what they shorten by). The shear
 * of a sheet leaves one upright and joins the other, so it cancels.
 */
export function solvedForceAt({ nodes, beams, panels }: UnitFragment, inside: UnitSolution, zMm: number): number {
  const byId = new Map(nodes.map((node) => [node.id, node]));
  const at = (id: string) => byId.get(id) ?? { x: NaN, y: NaN, z: NaN };
  const up = (id: string): number => inside.displacements[id]?.[2] ?? NaN;
  const crosses = (a: string, b: string): boolean => (at(a).z - zMm) * (at(b).z - zMm) < 0;
  const members = beams
    .filter(({ i, j }) => at(i).x === at(j).x && at(i).y === at(j).y && crosses(i, j))
    .map(({ id }) => inside.memberEndForces[id]?.[0] ?? NaN);
  const struts = panels
    .filter(({ nodes: [bl, , , tl] }) => crosses(bl, tl))
    .map(({ nodes: [bl, br, tr, tl], Ev = 0 }) => {
      const b = Math.abs(at(br).x - at(bl).x) + Math.abs(at(br).y - at(bl).y);
      return ((Ev * b) / (2 * (at(tl).z - at(bl).z))) * (up(bl) - up(tl) + up(br) - up(tr));
    });
  return [...members, ...struts].reduce((sum, force) => sum + force, 0);
}

/** What tubes carry down across the cut, less what they carry up. */
export function carriedAt({ nodes }: VerticalFlow, paths: readonly FlowPath[], zMm: number): number {
  return paths.reduce(
    (sum, { forceN, nodes: path }) =>
      sum +
      forceN *
        crossings(
          path.map((n) => nodes[n]?.z ?? NaN),
          zMm,
        ),
    0,
  );
}

const crossings = (levels: readonly number[], zMm: number): number =>
  levels.slice(1).reduce((sum, z, n) => {
    const before = levels[n] ?? NaN;
    return before > zMm && z < zMm ? sum + 1 : before < zMm && z > zMm ? sum - 1 : sum;
  }, 0);
