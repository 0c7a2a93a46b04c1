import {
  emptyScheme,
  mmToUm,
  Scheme,
  type Container,
  type FloorLoad,
  type FloorUse,
  type Opening,
  type Override,
  type Pad,
  type Post,
} from "@cornerway/schema";
import { freeLoadOf, jointsOf, type Joints, type Put } from "./joints-of.ts";

type Unit = { id: string; type: Container["type"]; x: number; y: number; z?: number; turn?: number; plateKg?: number };
type Cut = {
  id: string;
  in: string;
  face: Opening["face"];
  use?: Opening["use"];
  at: number;
  sill: number;
  width: number;
  height: number;
  cut?: Opening["cut"];
  framing?: Opening["framing"];
};
type Column = { id: string; x: number; y: number; foot: number; head: number; section?: string; error?: number };
type Support = {
  id: string;
  x: number;
  y: number;
  top?: number;
  length?: number;
  width?: number;
  kind?: Pad["support"];
  turn?: number;
  error?: number;
};
type Load = { in: string; surface?: FloorLoad["surface"]; case?: FloorLoad["case"]; pa: number };

/** A scheme from lengths in millimetres and turns in degrees; checked against the schema, so tests cannot drift off it. */
export function schemeOf(
  parts: {
    units: readonly Unit[];
    cuts?: readonly Cut[];
    posts?: readonly Column[];
    pads?: readonly Support[];
    loads?: readonly Load[];
    put?: readonly Put[];
    uses?: readonly Omit<FloorUse, "id">[];
    found?: readonly Override[];
    groundMm?: number;
    northMdeg?: number;
  } & Joints,
): Scheme {
  let number = 0;
  const tag = (letter: string) => `${letter}${(number += 1)}`;
  return Scheme.parse({
    ...emptyScheme,
    site: { ...emptyScheme.site, groundZUm: mmToUm(parts.groundMm ?? 0), northMdeg: parts.northMdeg ?? 0 },
    containers: byId(parts.units.map((unit) => container(unit, tag("U")))),
    openings: byId((parts.cuts ?? []).map((cut) => opening(cut, tag("D")))),
    posts: byId((parts.posts ?? []).map((column) => post(column, tag("P")))),
    pads: byId((parts.pads ?? []).map((support) => pad(support, tag("B")))),
    loads: byId((parts.loads ?? []).map((load, at) => floorLoad(load, at))),
    freeLoads: byId((parts.put ?? []).map((load) => freeLoadOf(load, tag("Q")))),
    uses: byId((parts.uses ?? []).map((use, at) => ({ ...use, id: `${use.containerId}-use-${at}` }))),
    overrides: byId([...(parts.found ?? [])]),
    ...jointsOf(parts, tag),
  });
}

/** Pads of 600 mm under the four corner fittings of a unit lying at a quarter turn, their tops at `top`. */
export function padsUnder(unit: Unit, top = 0): Support[] {
  const { s, p } = holes[unit.type];
  const across = ((unit.turn ?? 0) / 90) % 2 !== 0;
  const [dx, dy] = across ? [p / 2, s / 2] : [s / 2, p / 2];
  return [
    [-1, -1],
    [-1, 1],
    [1, -1],
    [1, 1],
  ].map(([sx = 0, sy = 0], at) => ({ id: `${unit.id}-pad-${at}`, x: unit.x + sx * dx, y: unit.y + sy * dy, top }));
}

/** Hole spacings S and P, mm: ISO 668 Table A.1, from memory. */
export const holes: Record<Container["type"], { s: number; p: number }> = {
  "1EEE": { s: 13509, p: 2259 },
  "1EE": { s: 13509, p: 2259 },
  "1AAA": { s: 11985, p: 2259 },
  "1AA": { s: 11985, p: 2259 },
  "1A": { s: 11985, p: 2259 },
  "1BBB": { s: 8918, p: 2259 },
  "1BB": { s: 8918, p: 2259 },
  "1CCC": { s: 5853, p: 2259 },
  "1CC": { s: 5853, p: 2259 },
  "1C": { s: 5853, p: 2259 },
  "1D": { s: 2787, p: 2259 },
};

const byId = <T extends { id: string }>(elements: T[]): T[] => elements.toSorted((a, b) => (a.id < b.id ? -1 : 1));

const container = ({ id, type, x, y, z, turn, plateKg }: Unit, tag: string): Container => ({
  id,
  tag,
  type,
  xUm: mmToUm(x),
  yUm: mmToUm(y),
  zUm: mmToUm(z ?? 0),
  turnMdeg: Math.round((turn ?? 0) * 1000),
  ...(plateKg === undefined ? {} : { plateTareKg: plateKg }),
});

const opening = (cut: Cut, tag: string): Opening => ({
  id: cut.id,
  tag,
  containerId: cut.in,
  face: cut.face,
  use: cut.use ?? "window",
  offsetUm: mmToUm(cut.at),
  sillUm: mmToUm(cut.sill),
  widthUm: mmToUm(cut.width),
  heightUm: mmToUm(cut.height),
  framed: true,
  ...(cut.cut === undefined ? {} : { cut: cut.cut }),
  ...(cut.framing === undefined ? {} : { framing: cut.framing }),
});

const post = ({ id, x, y, foot, head, section, error }: Column, tag: string): Post => ({
  id,
  tag,
  xUm: mmToUm(x),
  yUm: mmToUm(y),
  baseZUm: mmToUm(foot),
  topZUm: mmToUm(head),
  turnMdeg: 0,
  section: section ?? "HSS 102x102x6.4",
  ...(error === undefined ? {} : { levelErrorUm: mmToUm(error) }),
});

const pad = ({ id, x, y, top, length, width, kind, turn, error }: Support, tag: string): Pad => ({
  id,
  tag,
  xUm: mmToUm(x),
  yUm: mmToUm(y),
  topZUm: mmToUm(top ?? 0),
  lengthUm: mmToUm(length ?? 600),
  widthUm: mmToUm(width ?? 600),
  depthUm: mmToUm(600),
  turnMdeg: Math.round((turn ?? 0) * 1000),
  ...(kind === undefined ? {} : { support: kind }),
  ...(error === undefined ? {} : { levelErrorUm: mmToUm(error) }),
});

const floorLoad = (load: Load, at: number): FloorLoad => ({
  id: `${load.in}-load-${at}`,
  containerId: load.in,
  surface: load.surface ?? "floor",
  case: load.case ?? "imposed",
  pressurePa: load.pa,
});
