import {
  FREEDOM_NAMES,
  type AnalyticalModel,
  type FreedomName,
  type ModelBeam,
  type ModelCase,
  type ModelLink,
  type ModelNode,
  type ModelPanel,
  type ModelSection,
  type ModelSpring,
  type ModelSupport,
  type Six,
  type Triple,
} from "./analytical-model.ts";
import { checkReferences } from "./check-references.ts";
import { JsonCursor, ReadError, required } from "./json-cursor.ts";

export type ModelReading =
  | { readonly ok: true; readonly model: AnalyticalModel }
  | { readonly ok: false; readonly path: string; readonly message: string };

/** Reads a parsed JSON value as a line model; the first fault is returned with its JSON path (RFC 9535). */
export function readAnalyticalModel(json: unknown): ModelReading {
  try {
    const model = readModel(new JsonCursor(json));
    checkReferences(model);
    return { ok: true, model };
  } catch (error) {
    if (error instanceof ReadError) return { ok: false, path: error.path, message: error.message };
    throw error;
  }
}

const MODEL_KEYS = ["nodes", "sections", "beams", "panels", "springs", "links", "supports", "cases", "combos"] as const;

function readModel(at: JsonCursor): AnalyticalModel {
  const keys = at.object(MODEL_KEYS);
  return {
    nodes: required(at, keys.nodes, "nodes").array().map(readNode),
    sections: readRecord(keys.sections, readSection),
    beams: listOf(keys.beams, readBeam),
    panels: listOf(keys.panels, readPanel),
    springs: listOf(keys.springs, readSpring),
    links: listOf(keys.links, readLink),
    supports: listOf(keys.supports, readSupport),
    cases: readRecord(required(at, keys.cases, "cases"), readCase),
    combos: readRecord(required(at, keys.combos, "combos"), (combo) => readRecord(combo, (factor) => factor.number())),
  };
}

function listOf<T>(at: JsonCursor | undefined, read: (item: JsonCursor) => T): T[] {
  return at === undefined ? [] : at.array().map(read);
}

function readRecord<T>(at: JsonCursor | undefined, read: (member: JsonCursor) => T): Record<string, T> {
  const members = at === undefined ? [] : at.members();
  return Object.fromEntries(members.map(([key, member]) => [key, read(member)]));
}

function readNode(at: JsonCursor): ModelNode {
  const keys = at.object(["id", "x", "y", "z"]);
  const [x, y, z] = (["x", "y", "z"] as const).map((key) => required(at, keys[key], key).number());
  return { id: required(at, keys.id, "id").id(), x: x ?? 0, y: y ?? 0, z: z ?? 0 };
}

function readSection(at: JsonCursor): ModelSection {
  const keys = at.object(["E", "G", "A", "Iy", "Iz", "J", "Asy", "Asz"]);
  const value = (key: "E" | "G" | "A" | "Iy" | "Iz" | "J"): JsonCursor => required(at, keys[key], key);
  return {
    E: value("E").positive(),
    G: value("G").positive(),
    A: value("A").notNegative(),
    Iy: value("Iy").notNegative(),
    Iz: value("Iz").notNegative(),
    J: value("J").notNegative(),
    ...(keys.Asy && { Asy: keys.Asy.positive() }),
    ...(keys.Asz && { Asz: keys.Asz.positive() }),
  };
}

function readBeam(at: JsonCursor): ModelBeam {
  const keys = at.object(["id", "i", "j", "section", "up", "rel_i", "rel_j", "off_i", "off_j"]);
  return {
    id: required(at, keys.id, "id").id(),
    i: required(at, keys.i, "i").id(),
    j: required(at, keys.j, "j").id(),
    section: required(at, keys.section, "section").string(),
    ...(keys.up && { up: readTriple(keys.up) }),
    ...(keys.rel_i && { rel_i: readFreedoms(keys.rel_i) }),
    ...(keys.rel_j && { rel_j: readFreedoms(keys.rel_j) }),
    ...(keys.off_i && { off_i: readTriple(keys.off_i) }),
    ...(keys.off_j && { off_j: readTriple(keys.off_j) }),
  };
}

function readPanel(at: JsonCursor): ModelPanel {
  const keys = at.object(["id", "nodes", "Gt", "Ev", "Eh", "off"]);
  const [a = "", b = "", c = "", d = ""] = required(at, keys.nodes, "nodes")
    .listOf(4)
    .map((node) => node.id());
  return {
    id: required(at, keys.id, "id").id(),
    nodes: [a, b, c, d],
    Gt: required(at, keys.Gt, "Gt").notNegative(),
    ...(keys.Ev && { Ev: keys.Ev.notNegative() }),
    ...(keys.Eh && { Eh: keys.Eh.notNegative() }),
    ...(keys.off && { off: readArms(keys.off) }),
  };
}

function readArms(at: JsonCursor): readonly [Triple, Triple, Triple, Triple] {
  const [a, b, c, d] = at.listOf(4).map(readTriple);
  if (!a || !b || !c || !d) return at.fail("expected four rigid arms");
  return [a, b, c, d];
}

function readSpring(at: JsonCursor): ModelSpring {
  const keys = at.object(["id", "i", "j", "k"]);
  return {
    id: required(at, keys.id, "id").id(),
    i: required(at, keys.i, "i").id(),
    ...(keys.j && { j: keys.j.id() }),
    k: readStiffness(required(at, keys.k, "k")),
  };
}

function readLink(at: JsonCursor): ModelLink {
  const keys = at.object(["id", "i", "j", "k", "compression_only"]);
  return {
    id: required(at, keys.id, "id").id(),
    i: required(at, keys.i, "i").id(),
    j: required(at, keys.j, "j").id(),
    k: readStiffness(required(at, keys.k, "k")),
    ...(keys.compression_only && { compression_only: keys.compression_only.boolean() }),
  };
}

function readSupport(at: JsonCursor): ModelSupport {
  const keys = at.object(["node", "fix", "compression_only"]);
  return {
    node: required(at, keys.node, "node").id(),
    fix: readFreedoms(required(at, keys.fix, "fix")),
    ...(keys.compression_only && { compression_only: keys.compression_only.boolean() }),
  };
}

function readCase(at: JsonCursor): ModelCase {
  const keys = at.object(["nodal", "beam_udl", "settle"]);
  return {
    ...(keys.nodal && { nodal: keys.nodal.array().map(readNodalLoad) }),
    ...(keys.beam_udl && { beam_udl: keys.beam_udl.array().map(readUniformLoad) }),
    ...(keys.settle && { settle: keys.settle.array().map(readSettlement) }),
  };
}

function readNodalLoad(at: JsonCursor) {
  const keys = at.object(["node", "F"]);
  return { node: required(at, keys.node, "node").id(), F: readSix(required(at, keys.F, "F")) };
}

function readUniformLoad(at: JsonCursor) {
  const keys = at.object(["beam", "q"]);
  return { beam: required(at, keys.beam, "beam").id(), q: readTriple(required(at, keys.q, "q")) };
}

function readSettlement(at: JsonCursor) {
  const keys = at.object(["node", "dof", "value"]);
  return {
    node: required(at, keys.node, "node").id(),
    dof: required(at, keys.dof, "dof").oneOf(FREEDOM_NAMES),
    value: required(at, keys.value, "value").number(),
  };
}

function readTriple(at: JsonCursor): Triple {
  const [x = 0, y = 0, z = 0] = at.listOf(3).map((part) => part.number());
  return [x, y, z];
}

function readSix(at: JsonCursor): Six {
  return asSix(at.listOf(6).map((part) => part.number()));
}

function readStiffness(at: JsonCursor): Six {
  return asSix(at.listOf(6).map((part) => part.notNegative()));
}

function asSix([a = 0, b = 0, c = 0, d = 0, e = 0, f = 0]: readonly number[]): Six {
  return [a, b, c, d, e, f];
}

function readFreedoms(at: JsonCursor): readonly FreedomName[] {
  const seen = new Set<FreedomName>();
  return at.array().map((item) => {
    const name = item.oneOf(FREEDOM_NAMES);
    if (seen.has(name)) item.fail(`"${name}" is listed twice`);
    seen.add(name);
    return name;
  });
}
