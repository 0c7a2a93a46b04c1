import {
  fittingNames,
  lockKinds,
  mmToUm,
  Scheme,
  tieKinds,
  type Beam,
  type FittingName,
  type FreeLoad,
  type Lock,
} from "@cornerway/schema";
import fc from "fast-check";
import { padsUnder } from "./scheme-of.ts";

const widthUm = 2_438_000;

const girders = fc.record({
  x: fc.integer({ min: -4000, max: 4000 }),
  y: fc.integer({ min: -3000, max: 3000 }),
  halfLength: fc.integer({ min: 1500, max: 5000 }),
  spread: fc.integer({ min: 1000, max: 2926 }),
  supports: fc.array(fc.integer({ min: -100, max: 100 }), { maxLength: 3 }),
  section: fc.constantFrom("W8x31", "W18x50", "HSS8x4x1/4", "girder 9"),
  turn: fc.constantFrom(0, 90_000),
});

const seat = fc.record({
  upper: fc.nat(),
  lower: fc.nat(),
  corner: fc.nat({ max: 3 }),
  /** Under the corner of the upper unit, or so far along it. */
  along: fc.oneof(fc.constant(0), fc.integer({ min: 200, max: 3000 })),
  packing: fc.constantFrom(6, 6, 12.5, 18.5, 10),
  heldDown: fc.boolean(),
});

const lock = fc.record({
  unit: fc.nat(),
  fitting: fc.constantFrom(...fittingNames),
  kind: fc.constantFrom(...lockKinds, "made connection", "made connection"),
});

const freeLoad = fc.record({
  unit: fc.nat(),
  x: fc.integer({ min: 0, max: 5000 }),
  y: fc.integer({ min: 0, max: 2000 }),
  downN: fc.integer({ min: 0, max: 20_000 }),
  size: fc.integer({ min: 1, max: 800 }),
  shape: fc.constantFrom("point", "line", "area"),
  case: fc.constantFrom("plant", "imposed", "wind"),
});

const tie = fc.record({
  a: fc.nat(),
  b: fc.nat(),
  up: fc.integer({ min: 0, max: 2600 }),
  carries: fc.constantFrom(...tieKinds),
});

/** A scheme with beams under a unit of its own, and seats, locks, ties and free loads put where they may or may not serve. */
export const withJoints = (plain: fc.Arbitrary<Scheme>): fc.Arbitrary<Scheme> =>
  fc
    .tuple(
      plain,
      fc.record({
        girders: fc.option(girders, { nil: undefined }),
        seats: fc.array(seat, { maxLength: 4 }),
        locks: fc.array(lock, { maxLength: 8 }),
        ties: fc.array(tie, { maxLength: 2 }),
        freeLoads: fc.array(freeLoad, { maxLength: 3 }),
        heldAll: fc.boolean(),
        error: fc.constantFrom(0, 0, 5, -12),
      }),
    )
    .map(([scheme, drawn]) => {
      const all = scheme.containers;
      const idOf = (n: number) => all[n % all.length]?.id ?? "g0";
      const raised = drawn.girders === undefined ? emptyRaised : raisedOn(drawn.girders);
      const [first, ...pads] = scheme.pads;
      const uneven = first === undefined ? pads : [{ ...first, levelErrorUm: mmToUm(drawn.error) }, ...pads];
      return Scheme.parse({
        ...scheme,
        containers: byId([...all, ...raised.containers]),
        pads: byId([...uneven, ...raised.pads]),
        beams: byId(raised.beams),
        seats: byId(drawn.seats.flatMap((one, at) => seatOf(scheme, one, at, idOf))),
        locks: [...drawn.locks, ...(drawn.heldAll ? allCornersOf(all.length - 1) : [])].map((one, at): Lock => ({
          id: `l${String(at).padStart(2, "0")}`,
          tag: `L${at}`,
          containerId: idOf(one.unit),
          fitting: one.fitting,
          kind: one.kind,
        })),
        ties: drawn.ties.flatMap((one, at) => {
          const [a, b] = [all[one.a % all.length], all[one.b % all.length]];
          if (a === undefined || b === undefined || a.id === b.id) return [];
          const middle = { xUm: Math.round((a.xUm + b.xUm) / 2), yUm: Math.round((a.yUm + b.yUm) / 2) };
          return [
            {
              id: `t${at}`,
              tag: `T${at}`,
              aId: a.id,
              bId: b.id,
              ...middle,
              zUm: a.zUm + mmToUm(one.up),
              carries: one.carries,
            },
          ];
        }),
        freeLoads: drawn.freeLoads.map((one, at) => freeLoadOf(one, at, idOf)),
      });
    });

const allCornersOf = (unit: number) =>
  fittingNames.map((fitting) => ({ unit, fitting, kind: "made connection" as const }));

type Raised = Pick<Scheme, "containers" | "beams" | "pads">;
const emptyRaised: Raised = { containers: [], beams: [], pads: [] };

/** Printed depths; of a section not in the catalogue the first figure of its name, in inches. */
const depthsMm = { W8x31: 203.2, W18x50: 457.2, "HSS8x4x1/4": 203.2, "girder 9": 9 * 25.4 } as const;

/** A 20 ft unit 20 m away on two beams across, each on pads at some of its hundredths. */
function raisedOn(drawn: typeof girders extends fc.Arbitrary<infer T> ? T : never): Raised {
  const away = 20_000;
  const level = 1000;
  const beams = [-1, 1].map((side, at): Beam => {
    const x = mmToUm(away + side * drawn.spread);
    const end = (y: number) => ({ xUm: x, yUm: mmToUm(y), zUm: mmToUm(level) });
    return {
      id: `m${at}`,
      tag: `M${at}`,
      from: end(-drawn.halfLength),
      to: end(drawn.halfLength),
      section: drawn.section,
    };
  });
  const depthMm = depthsMm[drawn.section];
  const pads = beams.flatMap((beam) =>
    drawn.supports.map((hundredths, at) => ({
      id: `${beam.id}-pad-${at}`,
      tag: `${beam.tag.replace("M", "MB")}${at}`,
      xUm: beam.from.xUm,
      yUm: mmToUm((drawn.halfLength * hundredths) / 100),
      topZUm: mmToUm(level - depthMm),
      lengthUm: mmToUm(400),
      widthUm: mmToUm(400),
      depthUm: mmToUm(1500),
      turnMdeg: 0,
    })),
  );
  const unit = {
    id: "k0",
    tag: "K0",
    type: "1CC" as const,
    xUm: mmToUm(away + drawn.x / 4),
    yUm: mmToUm(drawn.y),
    zUm: mmToUm(level),
    turnMdeg: drawn.turn,
  };
  return { containers: [unit], beams, pads };
}

function seatOf(
  scheme: Scheme,
  one: typeof seat extends fc.Arbitrary<infer T> ? T : never,
  at: number,
  idOf: (n: number) => string,
): Scheme["seats"] {
  const upper = scheme.containers.find(({ id }) => id === idOf(one.upper));
  const lowerId = idOf(one.lower);
  if (upper === undefined || lowerId === upper.id) return [];
  const lower = scheme.containers.find(({ id }) => id === lowerId);
  const holes = padsUnder({ id: upper.id, type: upper.type, x: 0, y: 0, turn: upper.turnMdeg / 1000 })[one.corner];
  if (lower === undefined || holes === undefined) return [];
  // At the upper unit's corner, or inward of it, on the middle of the nearer rail of the lower unit: 1189 from its axis.
  const spot = {
    xUm: upper.xUm + mmToUm(inward(holes.x, one.along)),
    yUm: upper.yUm + mmToUm(inward(holes.y, one.along)),
  };
  const long = lower.turnMdeg % 180_000 === 0;
  const across = long ? spot.yUm - lower.yUm : spot.xUm - lower.xUm;
  const onRail = (across < 0 ? -1 : 1) * mmToUm(1189);
  const place = long ? { ...spot, yUm: lower.yUm + onRail } : { ...spot, xUm: lower.xUm + onRail };
  return [
    {
      id: `s${at}`,
      tag: `S${at}`,
      upperId: upper.id,
      lowerId,
      ...place,
      lengthUm: mmToUm(150),
      widthUm: mmToUm(60),
      packingUm: mmToUm(one.packing),
      heldDown: one.heldDown,
    },
  ];
}

const inward = (mm: number, byMm: number): number => Math.sign(mm) * Math.max(0, Math.abs(mm) - byMm);

function freeLoadOf(
  one: typeof freeLoad extends fc.Arbitrary<infer T> ? T : never,
  at: number,
  idOf: (n: number) => string,
): FreeLoad {
  const common = {
    id: `q${at}`,
    tag: `Q${at}`,
    containerId: idOf(one.unit),
    surface: "floor" as const,
    case: one.case,
    note: "random",
    xUm: mmToUm(one.x),
    yUm: mmToUm(one.y),
  };
  if (one.shape === "point") return { ...common, shape: "point", downN: one.downN, alongXN: 0, alongYN: 0 };
  const size = mmToUm(one.size);
  return one.shape === "line"
    ? { ...common, shape: "line", toXUm: common.xUm + size, toYUm: common.yUm, downNPerM: one.downN }
    : { ...common, shape: "area", lengthUm: size, widthUm: mmToUm(400), pressurePa: one.downN };
}

const byId = <T extends { id: string }>(elements: readonly T[]): T[] =>
  elements.toSorted((a, b) => (a.id < b.id ? -1 : 1));

type Spot = { xUm: number; yUm: number };

/** Beams, seats and ties with every spot of them put elsewhere. */
export const jointsPut = (
  scheme: Scheme,
  to: <T extends Spot>(spot: T) => T,
): Pick<Scheme, "beams" | "seats" | "ties"> => ({
  beams: scheme.beams.map((beam) => ({ ...beam, from: to(beam.from), to: to(beam.to) })),
  seats: scheme.seats.map(to),
  ties: scheme.ties.map(to),
});

/** Locks and free loads in a mirror along their units: left becomes right. */
export const mirroredInUnits = (scheme: Scheme): Pick<Scheme, "locks" | "freeLoads"> => ({
  locks: scheme.locks.map((one) => ({ ...one, fitting: otherSide[one.fitting] })),
  freeLoads: scheme.freeLoads.map((load): FreeLoad => {
    switch (load.shape) {
      case "point":
        return { ...load, yUm: widthUm - load.yUm, alongYN: 0 - load.alongYN };
      case "line":
        return { ...load, yUm: widthUm - load.yUm, toYUm: widthUm - load.toYUm };
      case "area":
        return { ...load, yUm: widthUm - load.yUm - load.widthUm };
    }
  }),
});

const otherSide: Record<FittingName, FittingName> = {
  "front-right": "front-left",
  "front-left": "front-right",
  "door-right": "door-left",
  "door-left": "door-right",
  "front-right-inner": "front-left-inner",
  "front-left-inner": "front-right-inner",
  "door-right-inner": "door-left-inner",
  "door-left-inner": "door-right-inner",
};
