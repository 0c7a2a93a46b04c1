import type { System } from "./system.ts";
import type { Element } from "../elements/element.ts";
import { AlikeElements } from "../elements/alike.ts";
import type { Member, MemberFacts } from "../elements/member.ts";
import type { PanelFacts, ShearPanel } from "../elements/shear-panel.ts";
import { groundSpring, nodeSpring } from "../elements/spring.ts";
import { bearingsThatKeepHold, type BearingRule } from "./bearings.ts";
import { plus, type Vector } from "../numerics/vector.ts";
import {
  FREEDOM_NAMES,
  type AnalyticalModel,
  type FreedomName,
  type ModelBeam,
  type ModelPanel,
  type ModelSection,
  type Triple,
} from "../model/analytical-model.ts";

/** A line model as elements, with the way back from elements to the names in the file. */
export interface FrameSystem {
  readonly system: System;
  readonly nodeIds: readonly string[];
  readonly nodeOf: ReadonlyMap<string, number>;
  readonly places: readonly Vector[];
  readonly members: ReadonlyMap<string, Member>;
  readonly panels: ReadonlyMap<string, ShearPanel>;
  /** Bearing number of each compression-only support (by node id) and link (by link id). */
  readonly supportBearings: ReadonlyMap<string, number>;
  readonly linkBearings: ReadonlyMap<string, number>;
}

/**
 * Turns a checked line model into elements; throws on a model that `readAnalyticalModel` would not have passed. What an
 * opened bearing keeps is for `bearingsOf` to say; `alike` knows the kinds of elements made before.
 */
export function frameSystem(
  model: AnalyticalModel,
  bearingsOf: BearingRule = bearingsThatKeepHold,
  alike = new AlikeElements(),
): FrameSystem {
  const nodeOf = new Map<string, number>();
  const places: Vector[] = [];
  for (const { id, x, y, z } of model.nodes) nodeOf.set(id, places.push([x, y, z]) - 1);
  const find = (id: string): number => nodeOf.get(id) ?? missing("node", id);
  const elements: Element[] = [];
  const members = new Map<string, Member>();
  for (const beam of model.beams) {
    const made = alike.member(memberFacts(beam, sectionOf(model, beam), find, places, alike));
    members.set(beam.id, made);
    elements.push(made);
  }
  const panels = new Map<string, ShearPanel>();
  for (const panel of model.panels) {
    const made = alike.panel(panelFacts(panel, find, places, alike));
    panels.set(panel.id, made);
    elements.push(made);
  }
  const springs = model.springs.map(({ i, j, k }) =>
    j === undefined ? groundSpring(find(i), k) : nodeSpring(find(i), find(j), k),
  );
  const contact = bearingsOf(model, find);
  elements.push(...springs, ...contact.elements);
  const system: System = {
    nodeCount: places.length,
    elements,
    held: heldBy(contact.held, places.length),
    sheetOnly: sheetOnly(model, members, find, places.length),
    bearings: contact.bearings,
  };
  const { supportBearings, linkBearings } = contact;
  return {
    system,
    nodeIds: model.nodes.map(({ id }) => id),
    nodeOf,
    places,
    members,
    panels,
    supportBearings,
    linkBearings,
  };
}

/** The frame with the stiffness of its sheets as in `drawn`, which are on the same nodes; it has no springs and nothing bears it. */
export function withPanels(frame: FrameSystem, drawn: readonly ModelPanel[], alike = new AlikeElements()): FrameSystem {
  const { members, system } = frame;
  const panels = new Map<string, ShearPanel>();
  for (const panel of drawn) {
    const known = frame.panels.get(panel.id);
    if (known === undefined) throw new Error(`the frame has no panel "${panel.id}"`);
    const made = alike.panel({ ...known.facts, ...stiffnessOf(panel) });
    panels.set(panel.id, { ...made, freedoms: known.freedoms });
  }
  return { ...frame, panels, system: { ...system, elements: [...members.values(), ...panels.values()] } };
}

const stiffnessOf = ({ Gt, Ev = 0, Eh = 0 }: ModelPanel) => ({
  shearStiffness: Gt,
  uprightStiffness: Ev,
  alongStiffness: Eh,
});

function missing(kind: string, id: string): never {
  throw new Error(`the line model has no ${kind} "${id}"`);
}

function sectionOf({ sections }: AnalyticalModel, { section }: ModelBeam): ModelSection {
  return sections[section] ?? missing("section", section);
}

function memberFacts(
  beam: ModelBeam,
  section: ModelSection,
  find: (id: string) => number,
  places: readonly Vector[],
  alike: AlikeElements,
): MemberFacts {
  const nodes = [find(beam.i), find(beam.j)] as const;
  const axes = alike.memberAxes(shifted(places[nodes[0]], beam.off_i), shifted(places[nodes[1]], beam.off_j), beam.up);
  if (axes === null) throw new Error(`beam "${beam.id}" has no length or no side that is up`);
  const released =
    beam.rel_i === undefined && beam.rel_j === undefined
      ? NOTHING_RELEASED
      : [...freedomNumbers(beam.rel_i), ...freedomNumbers(beam.rel_j).map((c) => c + 6)];
  return { nodes, axes, section, released, armI: armOf(beam.off_i), armJ: armOf(beam.off_j) };
}

const NOTHING_RELEASED: readonly number[] = [];

function panelFacts(
  panel: ModelPanel,
  find: (id: string) => number,
  places: readonly Vector[],
  alike: AlikeElements,
): PanelFacts {
  const { off } = panel;
  const nodes = [find(panel.nodes[0]), find(panel.nodes[1]), find(panel.nodes[2]), find(panel.nodes[3])] as const;
  const axes = alike.panelAxes([
    shifted(places[nodes[0]], off?.[0]),
    shifted(places[nodes[1]], off?.[1]),
    shifted(places[nodes[2]], off?.[2]),
    shifted(places[nodes[3]], off?.[3]),
  ]);
  if (axes === null) throw new Error(`panel "${panel.id}" is not a rectangle`);
  const { Gt: shearStiffness, Ev: uprightStiffness = 0, Eh: alongStiffness = 0 } = panel;
  const arms = off?.some((arm) => armOf(arm)) ? off : null;
  return { nodes, axes, shearStiffness, uprightStiffness, alongStiffness, arms };
}

function shifted(place: Vector | undefined, arm: Triple | undefined): Vector {
  if (place === undefined) throw new Error("an element of the line model stands on no node");
  return arm ? plus(place, arm) : place;
}

function armOf(arm: Triple | undefined): Vector | null {
  return arm?.some((value) => value !== 0) ? arm : null;
}

function freedomNumbers(names: readonly FreedomName[] = []): number[] {
  return names.map((name) => FREEDOM_NAMES.indexOf(name));
}

function heldBy(freedoms: readonly number[], nodeCount: number): Uint8Array {
  const held = new Uint8Array(nodeCount * 6);
  for (const freedom of freedoms) held[freedom] = 1;
  return held;
}

function sheetOnly(
  { springs, links }: AnalyticalModel,
  members: ReadonlyMap<string, Member>,
  find: (id: string) => number,
  nodeCount: number,
): Uint8Array {
  const flags = new Uint8Array(nodeCount).fill(1);
  members.forEach(({ facts }) => (flags[facts.nodes[0]] = flags[facts.nodes[1]] = 0));
  for (const { i, j } of [...springs, ...links]) {
    flags[find(i)] = 0;
    if (j !== undefined) flags[find(j)] = 0;
  }
  return flags;
}
