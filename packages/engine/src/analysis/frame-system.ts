import type { System } from "./system.ts";
import type { Element } from "../elements/element.ts";
import { AlikeElements } from "../elements/alike.ts";
import type { Member, MemberFacts } from "../elements/member.ts";
import { memberAxes } from "../model/member-axes.ts";
import { panelAxes } from "../model/panel-axes.ts";
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
 * opened bearing keeps is for `bearingsOf` to say.
 */
export function frameSystem(model: AnalyticalModel, bearingsOf: BearingRule = bearingsThatKeepHold): FrameSystem {
  const nodeOf = new Map(model.nodes.map(({ id }, n): [string, number] => [id, n]));
  const places = model.nodes.map(({ x, y, z }): Vector => [x, y, z]);
  const find = (id: string): number => nodeOf.get(id) ?? missing("node", id);
  const alike = new AlikeElements();
  const members = new Map(
    model.beams.map((beam): [string, Member] => [
      beam.id,
      alike.member(memberFacts(beam, sectionOf(model, beam), find, places)),
    ]),
  );
  const panels = new Map(
    model.panels.map((panel): [string, ShearPanel] => [panel.id, alike.panel(panelFacts(panel, find, places))]),
  );
  const springs = model.springs.map(({ i, j, k }) =>
    j === undefined ? groundSpring(find(i), k) : nodeSpring(find(i), find(j), k),
  );
  const contact = bearingsOf(model, find);
  const elements: Element[] = [...members.values(), ...panels.values(), ...springs, ...contact.elements];
  const system: System = {
    nodeCount: places.length,
    elements,
    held: heldBy(contact.held, places.length),
    sheetOnly: sheetOnly(model, find, places.length),
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
): MemberFacts {
  const nodes = [find(beam.i), find(beam.j)] as const;
  const axes = memberAxes(shifted(places[nodes[0]], beam.off_i), shifted(places[nodes[1]], beam.off_j), beam.up);
  if (axes === null) throw new Error(`beam "${beam.id}" has no length or no side that is up`);
  const released = [...freedomNumbers(beam.rel_i), ...freedomNumbers(beam.rel_j).map((c) => c + 6)];
  return { nodes, axes, section, released, armI: armOf(beam.off_i), armJ: armOf(beam.off_j) };
}

function panelFacts(panel: ModelPanel, find: (id: string) => number, places: readonly Vector[]): PanelFacts {
  const [a, b, c, d] = panel.nodes.map(find);
  const corner = (n: number | undefined, k: 0 | 1 | 2 | 3): Vector => shifted(places[n ?? -1], panel.off?.[k]);
  const axes = panelAxes([corner(a, 0), corner(b, 1), corner(c, 2), corner(d, 3)]);
  if (axes === null) throw new Error(`panel "${panel.id}" is not a rectangle`);
  return {
    nodes: [a ?? -1, b ?? -1, c ?? -1, d ?? -1],
    axes,
    shearStiffness: panel.Gt,
    uprightStiffness: panel.Ev ?? 0,
    alongStiffness: panel.Eh ?? 0,
    arms: panel.off && panel.off.some((arm) => armOf(arm)) ? panel.off : null,
  };
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

function sheetOnly(model: AnalyticalModel, find: (id: string) => number, nodeCount: number): Uint8Array {
  const flags = new Uint8Array(nodeCount).fill(1);
  for (const { i, j } of [...model.beams, ...model.springs, ...model.links]) {
    flags[find(i)] = 0;
    if (j !== undefined) flags[find(j)] = 0;
  }
  return flags;
}
