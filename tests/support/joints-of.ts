import { mmToUm, type Beam, type FreeLoad, type Lock, type Seat, type Tie } from "@cornerway/schema";

type Spot = readonly [x: number, y: number, z: number];
type Girder = { id: string; from: Spot; to: Spot; section?: string };
type Bearing = {
  id: string;
  upper: string;
  lower: string;
  x: number;
  y: number;
  packing: number;
  length?: number;
  width?: number;
  held?: boolean;
  error?: number;
};
type Link = { id: string; a: string; b: string; at: Spot; upright?: boolean };
type Fastener = { id: string; in: string; fitting: Lock["fitting"]; kind: Lock["kind"] };

/** Beams, seats, ties and locks of a scheme, lengths in millimetres. */
export type Joints = {
  beams?: readonly Girder[];
  seats?: readonly Bearing[];
  ties?: readonly Link[];
  locks?: readonly Fastener[];
};

/** A free load: along and across its unit from the front end and the right side, mm; N, N/m or Pa. */
export type Put = {
  id: string;
  in: string;
  surface?: FreeLoad["surface"];
  case?: FreeLoad["case"];
  x: number;
  y: number;
} & (
  { downN: number } | { toX: number; toY: number; downNPerM: number } | { length: number; width: number; pa: number }
);

/** The lists a scheme keeps them in, each sorted by id. */
export const jointsOf = (
  { beams, seats, ties, locks }: Joints,
  tag: (letter: string) => string,
): { beams: Beam[]; seats: Seat[]; ties: Tie[]; locks: Lock[] } => ({
  beams: byId((beams ?? []).map((each) => beam(each, tag("M")))),
  seats: byId((seats ?? []).map((each) => seat(each, tag("S")))),
  ties: byId((ties ?? []).map((each) => tie(each, tag("T")))),
  locks: byId((locks ?? []).map((each) => lock(each, tag("L")))),
});

const byId = <T extends { id: string }>(elements: T[]): T[] => elements.toSorted((a, b) => (a.id < b.id ? -1 : 1));

const spot = ([x, y, z]: Spot) => ({ xUm: mmToUm(x), yUm: mmToUm(y), zUm: mmToUm(z) });

const beam = ({ id, from, to, section }: Girder, tag: string): Beam => ({
  id,
  tag,
  from: spot(from),
  to: spot(to),
  section: section ?? "W8x31",
});

const seat = ({ id, upper, lower, x, y, packing, length, width, held, error }: Bearing, tag: string): Seat => ({
  id,
  tag,
  upperId: upper,
  lowerId: lower,
  xUm: mmToUm(x),
  yUm: mmToUm(y),
  lengthUm: mmToUm(length ?? 150),
  widthUm: mmToUm(width ?? 60),
  packingUm: mmToUm(packing),
  heldDown: held ?? false,
  ...(error === undefined ? {} : { levelErrorUm: mmToUm(error) }),
});

const tie = ({ id, a, b, at, upright }: Link, tag: string): Tie => ({
  id,
  tag,
  aId: a,
  bId: b,
  ...spot(at),
  carries: upright === true ? "in plan and upright" : "in plan",
});

const lock = ({ id, in: containerId, fitting, kind }: Fastener, tag: string): Lock => ({
  id,
  tag,
  containerId,
  fitting,
  kind,
});

/** A free load as the schema keeps it. */
export function freeLoadOf(load: Put, tag: string): FreeLoad {
  const common = {
    id: load.id,
    tag,
    containerId: load.in,
    surface: load.surface ?? "floor",
    case: load.case ?? "imposed",
    note: "a load of the test",
    xUm: mmToUm(load.x),
    yUm: mmToUm(load.y),
  };
  if ("downN" in load) return { ...common, shape: "point", downN: load.downN, alongXN: 0, alongYN: 0 };
  if ("toX" in load)
    return { ...common, shape: "line", toXUm: mmToUm(load.toX), toYUm: mmToUm(load.toY), downNPerM: load.downNPerM };
  return {
    ...common,
    shape: "area",
    lengthUm: mmToUm(load.length),
    widthUm: mmToUm(load.width),
    pressurePa: load.pa,
  };
}
