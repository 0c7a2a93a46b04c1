import { memberAxes } from "./member-axes.ts";
import { panelAxes } from "./panel-axes.ts";
import { plus, type Vector } from "../numerics/vector.ts";
import { JsonCursor, memberPath } from "./json-cursor.ts";
import type { AnalyticalModel, ModelBeam, ModelCase, ModelPanel, ModelSupport } from "./analytical-model.ts";

/** Checks what the shape alone cannot tell: ids, lengths, rectangles, loads on nothing. Fails at the JSON path of the fault. */
export function checkReferences(model: AnalyticalModel): void {
  if (model.nodes.length === 0) at("$.nodes", "a model needs at least one node");
  const known = {
    nodes: new Map(model.nodes.map(({ id, x, y, z }): [string, Vector] => [id, [x, y, z]])),
    beams: new Set(model.beams.map(({ id }) => id)),
    supports: new Map(model.supports.map((support) => [support.node, support])),
  };
  for (const kind of ["nodes", "beams", "panels", "springs", "links"] as const) checkUnique(kind, model[kind]);
  checkUnique(
    "supports",
    model.supports.map(({ node }) => ({ id: node })),
    ".node",
  );
  model.beams.forEach((beam, n) => checkBeam(beam, `$.beams[${n}]`, model, known));
  model.panels.forEach((panel, n) => checkPanel(panel, `$.panels[${n}]`, known));
  model.springs.forEach((spring, n) => checkPair(spring, `$.springs[${n}]`, known));
  model.links.forEach((link, n) => checkPair(link, `$.links[${n}]`, known));
  model.supports.forEach((support, n) => checkSupport(support, `$.supports[${n}]`, known));
  for (const [name, loads] of Object.entries(model.cases)) checkCase(loads, `$.cases${memberPath(name)}`, known);
  checkCombos(model);
}

interface Known {
  readonly nodes: ReadonlyMap<string, Vector>;
  readonly beams: ReadonlySet<string>;
  readonly supports: ReadonlyMap<string, ModelSupport>;
}

function at(path: string, message: string): never {
  return new JsonCursor(undefined, path).fail(message);
}

function checkUnique(kind: string, items: readonly { readonly id: string }[], key = ".id"): void {
  const seen = new Map<string, number>();
  items.forEach(({ id }, n) => {
    const first = seen.get(id);
    if (first !== undefined) at(`$.${kind}[${n}]${key}`, `"${id}" is already used by $.${kind}[${first}]`);
    seen.set(id, n);
  });
}

function place(id: string, path: string, { nodes }: Known): Vector {
  return nodes.get(id) ?? at(path, `there is no node "${id}"`);
}

function checkBeam(beam: ModelBeam, path: string, model: AnalyticalModel, known: Known): void {
  const start = plus(place(beam.i, `${path}.i`, known), beam.off_i ?? ORIGIN);
  const end = plus(place(beam.j, `${path}.j`, known), beam.off_j ?? ORIGIN);
  if (!Object.hasOwn(model.sections, beam.section)) at(`${path}.section`, `there is no section "${beam.section}"`);
  if (memberAxes(start, end, beam.up)) return;
  if (start.every((value, c) => value === end[c])) at(path, `the length of beam "${beam.id}" is zero`);
  at(`${path}.up`, `"up" of beam "${beam.id}" lies along the beam or is zero`);
}

function checkPanel(panel: ModelPanel, path: string, known: Known): void {
  const corner = (n: 0 | 1 | 2 | 3): Vector =>
    plus(place(panel.nodes[n], `${path}.nodes[${n}]`, known), panel.off?.[n] ?? ORIGIN);
  if (!panelAxes([corner(0), corner(1), corner(2), corner(3)]))
    at(`${path}.nodes`, `panel "${panel.id}" is not a rectangle`);
}

function checkPair({ i, j }: { readonly i: string; readonly j?: string }, path: string, known: Known): void {
  place(i, `${path}.i`, known);
  if (j === undefined) return;
  place(j, `${path}.j`, known);
  if (i === j) at(`${path}.j`, `both ends are at node "${i}"`);
}

function checkSupport({ node, fix, compression_only }: ModelSupport, path: string, known: Known): void {
  place(node, `${path}.node`, known);
  if (compression_only && !fix.includes("uz")) at(`${path}.fix`, "a compression-only support must fix uz");
}

function checkCase({ nodal = [], beam_udl = [], settle = [] }: ModelCase, path: string, known: Known): void {
  nodal.forEach(({ node }, n) => place(node, `${path}.nodal[${n}].node`, known));
  beam_udl.forEach(({ beam }, n) => {
    if (!known.beams.has(beam)) at(`${path}.beam_udl[${n}].beam`, `there is no beam "${beam}"`);
  });
  const moved = new Set<string>();
  settle.forEach(({ node, dof }, n) => {
    place(node, `${path}.settle[${n}].node`, known);
    if (!known.supports.get(node)?.fix.includes(dof))
      at(`${path}.settle[${n}].dof`, `node "${node}" has no support that fixes ${dof}`);
    if (moved.has(`${dof} ${node}`))
      at(`${path}.settle[${n}]`, `${dof} of node "${node}" is already settled in this case`);
    moved.add(`${dof} ${node}`);
  });
}

function checkCombos({ cases, combos }: AnalyticalModel): void {
  for (const [name, combo] of Object.entries(combos)) {
    for (const key of Object.keys(combo)) {
      if (!Object.hasOwn(cases, key)) at(`$.combos${memberPath(name)}${memberPath(key)}`, `there is no case "${key}"`);
    }
  }
}

const ORIGIN: Vector = [0, 0, 0];
