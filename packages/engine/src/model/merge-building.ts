import type { AnalyticalModel, ModelBeam, ModelCase, ModelPanel, ModelSection, Triple } from "./analytical-model.ts";
import { nodeName, type BuildingModel, type PlacedUnit } from "./building-model.ts";
import { withHolds } from "./plan-holds.ts";
import { turned, turnedSix, turnOf, type Turn } from "./turn.ts";

/** The building as one line model of the exchange format, for export and for solving without condensation. */
export function mergeBuilding(building: BuildingModel): AnalyticalModel {
  const { units, between, springs, combos } = building;
  const { links, supports } = withHolds(building.links, building.supports, building.holds);
  const caseNames = [
    ...new Set([...units.map(({ loads }) => loads), between.loads].flatMap((loads) => Object.keys(loads))),
  ];
  return {
    nodes: [...units.flatMap(nodesOf), ...between.nodes],
    sections: Object.fromEntries([...units.flatMap(sectionsOf), ...Object.entries(between.sections)]),
    beams: [...units.flatMap(beamsOf), ...between.beams],
    panels: units.flatMap(panelsOf),
    springs,
    links,
    supports,
    cases: Object.fromEntries(caseNames.map((name) => [name, mergedCase(building, name)])),
    combos,
  };
}

function nodesOf({ id, fragment, turnMdeg, at }: PlacedUnit) {
  const turn = turnOf(turnMdeg);
  return fragment.nodes.map((node) => {
    const [x, y, z] = turned(turn, [node.x, node.y, node.z]);
    return { id: nodeName(id, node.id), x: x + at[0], y: y + at[1], z: z + at[2] };
  });
}

/** Sections keep the fragment's name where all containers agree on it, which the builder sees to. */
function sectionsOf({ fragment }: PlacedUnit): [string, ModelSection][] {
  return Object.entries(fragment.sections);
}

function beamsOf({ id, fragment, turnMdeg }: PlacedUnit): ModelBeam[] {
  const turn = turnOf(turnMdeg);
  return fragment.beams.map((beam) => ({
    ...beam,
    id: nodeName(id, beam.id),
    i: nodeName(id, beam.i),
    j: nodeName(id, beam.j),
    ...(beam.up ? { up: turned(turn, beam.up) } : uprightSide(beam, fragment, turn)),
    ...(beam.off_i && { off_i: turned(turn, beam.off_i) }),
    ...(beam.off_j && { off_j: turned(turn, beam.off_j) }),
  }));
}

/** The default side of an upright member is global Y, which a turned container's own Y is not. */
function uprightSide(beam: ModelBeam, { nodes }: PlacedUnit["fragment"], turn: Turn): { up?: Triple } {
  if (turn.cos === 1) return {};
  const start = nodes.find(({ id }) => id === beam.i);
  const end = nodes.find(({ id }) => id === beam.j);
  const upright = start?.x === end?.x && start?.y === end?.y;
  return upright ? { up: turned(turn, [0, 1, 0]) } : {};
}

function panelsOf({ id, fragment, turnMdeg }: PlacedUnit): ModelPanel[] {
  const turn = turnOf(turnMdeg);
  return fragment.panels.map((panel) => {
    const [a, b, c, d] = panel.nodes;
    const off = panel.off;
    return {
      ...panel,
      id: nodeName(id, panel.id),
      nodes: [nodeName(id, a), nodeName(id, b), nodeName(id, c), nodeName(id, d)],
      ...(off && { off: [turned(turn, off[0]), turned(turn, off[1]), turned(turn, off[2]), turned(turn, off[3])] }),
    };
  });
}

function mergedCase({ units, between }: BuildingModel, name: string): ModelCase {
  const parts = units.map((unit) => placedCase(unit, unit.loads[name] ?? {}));
  const all = [...parts, between.loads[name] ?? {}];
  return {
    nodal: all.flatMap(({ nodal }) => nodal ?? []),
    beam_udl: all.flatMap(({ beam_udl }) => beam_udl ?? []),
    settle: all.flatMap(({ settle }) => settle ?? []),
  };
}

function placedCase({ id, turnMdeg }: PlacedUnit, { nodal = [], beam_udl = [] }: ModelCase): ModelCase {
  const turn = turnOf(turnMdeg);
  return {
    nodal: nodal.map(({ node, F }) => ({ node: nodeName(id, node), F: turnedSix(turn, F) })),
    beam_udl: beam_udl.map(({ beam, q }) => ({ beam: nodeName(id, beam), q: turned(turn, q) })),
  };
}
