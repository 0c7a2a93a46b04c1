import type { Beam, FreeLoad, Lock, PointMm, Scheme, Seat, Tie } from "@cornerway/schema";
import { placeContainer, toLocal, toSite, type PlacedContainer } from "../geometry/place.ts";
import { hypot } from "../numerics/elementary.ts";
import { sectionSizeMm } from "../catalog/section-size.ts";

/** An added thing as it lies in the site, mm: what every view needs to draw it. */
export type PlacedObject = {
  id: string;
  tag: string;
  /** Where it is, for depth, visibility and its label. */
  at: PointMm;
} & (
  | { kind: "beam"; beam: Beam; box: PointMm[]; ends: [PointMm, PointMm] }
  | { kind: "seat"; seat: Seat; unitId: string; box: PointMm[] }
  | { kind: "tie"; tie: Tie; ends: [PointMm, PointMm] }
  | { kind: "lock"; lock: Lock; unitId: string; along: PointMm }
  | { kind: "load"; load: FreeLoad; unitId: string; outline: PointMm[]; aside: PointMm | null }
);

/** Every beam, seat, tie, lock and free load of a scheme that has its place. */
export function placedObjects(scheme: Scheme): PlacedObject[] {
  const units = new Map(scheme.containers.map((container) => [container.id, placeContainer(container)]));
  return [
    ...scheme.beams.map(placeBeam),
    ...scheme.seats.flatMap((seat) => placeSeat(scheme, units, seat)),
    ...scheme.ties.map((tie) => placeTie(units, tie)),
    ...scheme.locks.flatMap((lock) => placeLock(units, lock)),
    ...scheme.freeLoads.flatMap((load) => placeLoad(units, load)),
  ];
}

type Units = ReadonlyMap<string, PlacedContainer>;

const mm = ({ xUm, yUm, zUm }: { xUm: number; yUm: number; zUm: number }): PointMm => ({
  xMm: xUm / 1000,
  yMm: yUm / 1000,
  zMm: zUm / 1000,
});

const middle = (a: PointMm, b: PointMm): PointMm => ({
  xMm: (a.xMm + b.xMm) / 2,
  yMm: (a.yMm + b.yMm) / 2,
  zMm: (a.zMm + b.zMm) / 2,
});

/** Unit direction from one point to another in plan. */
function towards(from: PointMm, to: PointMm): { x: number; y: number } {
  const long = hypot(to.xMm - from.xMm, to.yMm - from.yMm);
  return long === 0 ? { x: 1, y: 0 } : { x: (to.xMm - from.xMm) / long, y: (to.yMm - from.yMm) / long };
}

function placeBeam(beam: Beam): PlacedObject {
  const [from, to] = [mm(beam.from), mm(beam.to)];
  const { depthMm, widthMm } = sectionSizeMm(beam.section);
  const { x, y } = towards(from, to);
  const box = [-depthMm, 0].flatMap((down) =>
    [-1, 1].flatMap((side) =>
      [from, to].map((end) => ({
        xMm: end.xMm - (y * side * widthMm) / 2,
        yMm: end.yMm + (x * side * widthMm) / 2,
        zMm: end.zMm + down,
      })),
    ),
  );
  const at = middle(from, to);
  return {
    kind: "beam",
    id: beam.id,
    tag: beam.tag,
    beam,
    box,
    ends: [from, to],
    at: { ...at, zMm: at.zMm - depthMm / 2 },
  };
}

function placeSeat(scheme: Scheme, units: Units, seat: Seat): PlacedObject[] {
  const under = lowerFace(scheme, units, seat);
  if (under === null) return [];
  const { zMm, x, y } = under;
  const [half, across] = [seat.lengthUm / 2000, seat.widthUm / 2000];
  const [cx, cy] = [seat.xUm / 1000, seat.yUm / 1000];
  const box = [0, seat.packingUm / 1000].flatMap((up) =>
    [-1, 1].flatMap((side) =>
      [-1, 1].map((end) => ({
        xMm: cx + x * end * half - y * side * across,
        yMm: cy + y * end * half + x * side * across,
        zMm: zMm + up,
      })),
    ),
  );
  const at = { xMm: cx, yMm: cy, zMm: zMm + seat.packingUm / 2000 };
  return [{ kind: "seat", id: seat.id, tag: seat.tag, seat, unitId: seat.upperId, box, at }];
}

/** Height and direction of what a seat lies on; null where that is not there. */
function lowerFace(scheme: Scheme, units: Units, { lowerId, xUm, yUm }: Seat) {
  const unit = units.get(lowerId);
  if (unit !== undefined) {
    const { frame, dimensions } = unit;
    return { zMm: unit.topZMm - dimensions.proudOfRoofMm, x: frame.cos, y: frame.sin };
  }
  const beam = scheme.beams.find(({ id }) => id === lowerId);
  if (beam === undefined) return null;
  const [from, to] = [mm(beam.from), mm(beam.to)];
  const way = towards(from, to);
  const long = hypot(to.xMm - from.xMm, to.yMm - from.yMm);
  const along = (xUm / 1000 - from.xMm) * way.x + (yUm / 1000 - from.yMm) * way.y;
  return { zMm: from.zMm + ((to.zMm - from.zMm) * along) / long, ...way };
}

/** From the middle of the gap to where a tie takes hold of each unit, mm; for drawing only. */
const holdMm = 120;

function placeTie(units: Units, tie: Tie): PlacedObject {
  const at = mm(tie);
  const { x, y } = acrossGap(units.get(tie.aId), units.get(tie.bId), at);
  const end = (side: 1 | -1) => ({ xMm: at.xMm + side * x * holdMm, yMm: at.yMm + side * y * holdMm, zMm: at.zMm });
  return { kind: "tie", id: tie.id, tag: tie.tag, tie, ends: [end(-1), end(1)], at };
}

/** The direction across the gap between two units: square to the wall of the first that is nearest to the tie. */
function acrossGap(a: PlacedContainer | undefined, b: PlacedContainer | undefined, at: PointMm) {
  if (a === undefined || b === undefined) return { x: 1, y: 0 };
  const { xMm, yMm } = toLocal(a.frame, at);
  const offEnd = Math.abs(Math.abs(xMm) - a.dimensions.lengthMm / 2);
  const offSide = Math.abs(Math.abs(yMm) - a.dimensions.widthMm / 2);
  const { cos, sin } = a.frame;
  return offEnd < offSide ? { x: cos, y: sin } : { x: -sin, y: cos };
}

function placeLock(units: Units, lock: Lock): PlacedObject[] {
  const unit = units.get(lock.containerId);
  const fitting = unit?.bottomFittings.find(({ name }) => name === lock.fitting);
  if (unit === undefined || fitting === undefined) return [];
  const along = { xMm: unit.frame.cos, yMm: unit.frame.sin, zMm: 0 };
  return [{ kind: "lock", id: lock.id, tag: lock.tag, lock, unitId: unit.id, along, at: fitting.at }];
}

function placeLoad(units: Units, load: FreeLoad): PlacedObject[] {
  const unit = units.get(load.containerId);
  if (unit === undefined) return [];
  const { lengthMm, widthMm, heightMm, baseAboveFittingMm, bottomRailDepthMm } = unit.dimensions;
  const zMm = load.surface === "roof" ? heightMm : baseAboveFittingMm + bottomRailDepthMm;
  const on = (xUm: number, yUm: number): PointMm =>
    toSite(unit.frame, { xMm: xUm / 1000 - lengthMm / 2, yMm: yUm / 1000 - widthMm / 2, zMm });
  const outline = outlineOf(load).map(([x, y]) => on(x, y));
  const [first, third] = [outline[0], outline[2] ?? outline[1]];
  const at = first === undefined ? on(load.xUm, load.yUm) : third === undefined ? first : middle(first, third);
  const aside =
    load.shape === "point" && (load.alongXN !== 0 || load.alongYN !== 0)
      ? directionOf(unit, load.alongXN, load.alongYN)
      : null;
  return [{ kind: "load", id: load.id, tag: load.tag, load, unitId: unit.id, outline, aside, at }];
}

function outlineOf(load: FreeLoad): [number, number][] {
  const { xUm, yUm } = load;
  switch (load.shape) {
    case "point":
      return [[xUm, yUm]];
    case "line":
      return [
        [xUm, yUm],
        [load.toXUm, load.toYUm],
      ];
    case "area":
      return [
        [xUm, yUm],
        [xUm + load.lengthUm, yUm],
        [xUm + load.lengthUm, yUm + load.widthUm],
        [xUm, yUm + load.widthUm],
      ];
  }
}

function directionOf({ frame: { cos, sin } }: PlacedContainer, alongX: number, alongY: number): PointMm {
  const long = hypot(alongX, alongY);
  return { xMm: (alongX * cos - alongY * sin) / long, yMm: (alongX * sin + alongY * cos) / long, zMm: 0 };
}
