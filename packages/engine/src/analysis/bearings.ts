import { HOLDS_NOTHING, springsBetween, type Bearing } from "./system.ts";
import type { Element } from "../elements/element.ts";
import { nodeSpring } from "../elements/spring.ts";
import {
  FREEDOM_NAMES,
  type AnalyticalModel,
  type ModelLink,
  type ModelSupport,
  type Six,
} from "../model/analytical-model.ts";

/** What supports and links are to the solution. */
export interface Bearings {
  readonly bearings: readonly Bearing[];
  /** Elements that act whatever the bearings do. */
  readonly elements: readonly Element[];
  /** Freedoms that are held whatever the bearings do. */
  readonly held: readonly number[];
  readonly supportBearings: ReadonlyMap<string, number>;
  readonly linkBearings: ReadonlyMap<string, number>;
}

export type BearingRule = (model: AnalyticalModel, find: (id: string) => number) => Bearings;

/** The convention of the exchange format: an opened bearing gives up the upright direction alone. */
export const bearingsThatKeepHold: BearingRule = (model, find) => {
  const list = new BearingList(find);
  for (const support of model.supports) list.addSupport(support, []);
  for (const link of model.links) list.addLink(link, withoutUpright(link), NO_STIFFNESS);
  return list;
};

/** A building: a bearing that lifts holds nothing at all. */
export const bearingsThatLoseHold: BearingRule = (model, find) => {
  const list = new BearingList(find);
  for (const support of model.supports)
    list.addSupport(
      support,
      support.fix.filter((name) => name !== "uz"),
    );
  for (const link of model.links) list.addLink(link, NO_STIFFNESS, withoutUpright(link));
  return list;
};

const UPRIGHT = 2;
const NO_STIFFNESS: Six = [0, 0, 0, 0, 0, 0];

function withoutUpright({ k }: ModelLink): Six {
  return [k[0], k[1], 0, k[3], k[4], k[5]];
}

class BearingList implements Bearings {
  readonly bearings: Bearing[] = [];
  readonly elements: Element[] = [];
  readonly held: number[] = [];
  readonly supportBearings = new Map<string, number>();
  readonly linkBearings = new Map<string, number>();
  private readonly find: (id: string) => number;

  constructor(find: (id: string) => number) {
    this.find = find;
  }

  /** `lost` are the freedoms a compression-only support holds only until it first lifts. */
  addSupport({ node, fix, compression_only }: ModelSupport, lost: ModelSupport["fix"]): void {
    const freedom = (name: (typeof FREEDOM_NAMES)[number]): number => this.find(node) * 6 + FREEDOM_NAMES.indexOf(name);
    if (!compression_only) {
      this.held.push(...fix.map(freedom));
      return;
    }
    this.held.push(...fix.filter((name) => name !== "uz" && !lost.includes(name)).map(freedom));
    this.supportBearings.set(node, this.bearings.length);
    const holds = lost.length > 0 ? { springs: [], freedoms: lost.map(freedom) } : HOLDS_NOTHING;
    this.bearings.push({ kind: "support", freedom: freedom("uz"), holds });
  }

  /** `kept` acts whatever the bearing does, `lost` until it first lifts. */
  addLink({ id, i, j, k, compression_only }: ModelLink, kept: Six, lost: Six): void {
    const [lower, upper] = [this.find(i), this.find(j)];
    if (!compression_only || k[UPRIGHT] === 0) {
      this.elements.push(nodeSpring(lower, upper, k));
      return;
    }
    if (kept.some((value) => value > 0)) this.elements.push(nodeSpring(lower, upper, kept));
    this.linkBearings.set(id, this.bearings.length);
    const holds = { springs: springsBetween(lower, upper, lost), freedoms: [] };
    this.bearings.push({
      kind: "link",
      lower: lower * 6 + UPRIGHT,
      upper: upper * 6 + UPRIGHT,
      stiffness: k[UPRIGHT],
      holds,
    });
  }
}
