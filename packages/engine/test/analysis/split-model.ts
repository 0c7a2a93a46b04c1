import type { AnalyticalModel, ModelCase, Triple } from "../../src/model/analytical-model.ts";
import type { BuildingModel, PlacedUnit } from "../../src/model/building-model.ts";
import { momentNodes, withMomentNodes } from "../../src/model/moment-nodes.ts";

export interface Origin {
  turnMdeg: number;
  at: Triple;
}

/** Cuts a reference model into its units by the letter before the colon or point, each in its own axes. */
export function splitModel(model: AnalyticalModel, origins: Record<string, Origin>): BuildingModel {
  const { springs, links, supports, combos } = model;
  const joints = { between: { nodes: [], sections: {}, beams: [], loads: {} }, springs, links, supports };
  const turned = momentNodes(joints);
  return {
    units: Object.entries(origins).map(([letter, origin]) => withMomentNodes(unitOf(model, letter, origin), turned)),
    ...joints,
    combos,
  };
}

function unitOf(model: AnalyticalModel, letter: string, { turnMdeg, at }: Origin): PlacedUnit {
  const quarter = (((turnMdeg / 90_000) % 4) + 4) % 4;
  const [cos, sin] = [
    [1, 0],
    [0, 1],
    [-1, 0],
    [0, -1],
  ][quarter] as [number, number];
  const back = ([x, y, z]: Triple): Triple => [cos * x + sin * y, cos * y - sin * x, z];
  const own = (id: string): string => id.slice(2);
  const mine = (id: string): boolean => id.startsWith(letter);
  const used = [...model.links.flatMap(({ i, j }) => [i, j]), ...model.supports.map(({ node }) => node)];
  const upright = (ids: string[]): boolean => {
    const [a, b] = ids.map((id) => model.nodes.find((node) => node.id === id));
    return a?.x === b?.x && a?.y === b?.y;
  };
  const loads = Object.fromEntries(
    Object.entries(model.cases).map(([name, { nodal = [], beam_udl = [] }]): [string, ModelCase] => [
      name,
      {
        nodal: nodal
          .filter(({ node }) => mine(node))
          .map(({ node, F }) => ({
            node: own(node),
            F: [...back([F[0], F[1], F[2]]), ...back([F[3], F[4], F[5]])] as const,
          })),
        beam_udl: beam_udl.filter(({ beam }) => mine(beam)).map(({ beam, q }) => ({ beam: own(beam), q: back(q) })),
      },
    ]),
  );
  return {
    id: letter,
    turnMdeg,
    at,
    loads,
    fragment: {
      key: `${letter} ${turnMdeg}`,
      nodes: model.nodes
        .filter(({ id }) => mine(id))
        .map(({ id, x, y, z }) => {
          const [u, v, w] = back([x - at[0], y - at[1], z - at[2]]);
          return { id: own(id), x: u, y: v, z: w };
        }),
      sections: model.sections,
      beams: model.beams
        .filter(({ id }) => mine(id))
        .map((beam) => ({
          ...beam,
          id: own(beam.id),
          i: own(beam.i),
          j: own(beam.j),
          ...(upright([beam.i, beam.j]) && { up: back([0, 1, 0]) }),
        })),
      panels: model.panels
        .filter(({ id }) => mine(id))
        .map((panel) => ({
          ...panel,
          id: own(panel.id),
          nodes: panel.nodes.map(own) as unknown as typeof panel.nodes,
        })),
      retained: [...new Set(used.filter(mine).map(own))],
    },
  };
}
