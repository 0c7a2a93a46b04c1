import { defaultBasis, emptyScheme, type Container, type Lock, type Opening, type Scheme } from "@cornerway/schema";
import { sampleHazards } from "../../codes-loads/sample-hazards.ts";
import { idOf, type Placed } from "../../loads/sample-scheme.ts";
import { padsByHand } from "./pads-by-hand.ts";

const um = (mm: number): number => Math.round(mm * 1000);
const sizes = { "1AAA": { x: 5992.5, height: 2896 }, "1CC": { x: 2926.5, height: 2591 } } as const;
const Y = 1129.5;
/** Middle of a bottom side rail's flanges. */
const RAIL_Y = 1180;
const fittings = [
  ["front-right", -1, -1],
  ["front-left", -1, 1],
  ["door-right", 1, -1],
  ["door-left", 1, 1],
] as const;

type Type = keyof typeof sizes;
type Unit = Placed & { readonly type: Type; readonly seats?: boolean };
type Cut = Pick<Opening, "face" | "use"> & {
  readonly unit: number;
  readonly fromMm: number;
  readonly sillMm?: number;
  readonly widthMm: number;
  readonly heightMm?: number;
};

/**
 * An ordinary scheme: pads of 1.2 m under every ground fitting, hold-downs to them, stock locks between matching fittings,
 * framed openings, 1.0 kPa of finishes and a dwelling's imposed load, in 105 mph of exposure B, 20 psf of snow and little
 * earthquake.
 */
function ordinary(units: readonly Unit[], cuts: readonly Cut[] = []): Scheme {
  const ground = Math.min(...units.map(({ zMm }) => zMm));
  const containers = units.map(({ type, xMm, yMm, zMm, turn = 0 }, n): Container => {
    return { id: idOf(n + 1), tag: `U${n + 1}`, type, xUm: um(xMm), yUm: um(yMm), zUm: um(zMm), turnMdeg: turn * 1000 };
  });
  return {
    ...emptyScheme,
    containers,
    openings: cuts.map(({ unit, face, use, fromMm, sillMm = 180, widthMm, heightMm = 2200 }, n) => ({
      id: `o-${String(n + 1).padStart(2, "0")}`,
      tag: `O${n + 1}`,
      containerId: idOf(unit),
      face,
      use,
      offsetUm: um(fromMm),
      sillUm: um(sillMm),
      widthUm: um(widthMm),
      heightUm: um(heightMm),
      framed: true,
    })),
    pads: units.flatMap((unit, n) => (unit.zMm === ground ? padsUnder(unit, n + 1) : [])),
    locks: units.flatMap((unit, n) => locksUnder(unit, n + 1, unit.zMm === ground)),
    loads: containers.map(({ id: containerId }) => ({
      id: `finish-${containerId}`,
      containerId,
      surface: "floor",
      case: "finish",
      pressurePa: 1000,
    })),
    uses: containers.map(({ id: containerId }) => ({
      id: `use-${containerId}`,
      containerId,
      surface: "floor",
      occupancy: "dwelling",
    })),
    basis: {
      ...defaultBasis,
      hazards: sampleHazards({ wind: { mph: 105, exposure: "B" }, seismic: { ss: 0.15, s1: 0.06 } }),
      soil: { class: "sand" },
    },
  };
}

const padsUnder = ({ type, xMm, yMm }: Unit, number: number): Scheme["pads"] =>
  fittings.map(([name, x, y]) => ({
    id: `pad-${idOf(number)}-${name}`,
    tag: "P",
    xUm: um(xMm + x * sizes[type].x),
    yUm: um(yMm + y * Y),
    topZUm: 0,
    lengthUm: 1_200_000,
    widthUm: 1_200_000,
    depthUm: 400_000,
    turnMdeg: 0,
  }));

const locksUnder = ({ seats = false }: Unit, number: number, onPads: boolean): Lock[] =>
  fittings.map(([fitting]) => ({
    id: `lock-${idOf(number)}-${fitting}`,
    tag: "L",
    containerId: idOf(number),
    fitting,
    kind: onPads ? "hold-down" : seats ? "made connection" : "lock",
  }));

const at = (type: Type, xMm = 0, yMm = 0, level = 0, more: Partial<Unit> = {}): Unit => ({
  type,
  xMm,
  yMm,
  zMm: level * sizes[type].height,
  ...more,
});
const window = (unit: number, fromMm: number, more: Partial<Cut> = {}): Cut => ({
  unit,
  face: "right",
  use: "window",
  fromMm,
  sillMm: 900,
  widthMm: 1200,
  heightMm: 1200,
  ...more,
});
const door = (unit: number, fromMm: number, more: Partial<Cut> = {}): Cut => ({
  unit,
  face: "right",
  use: "door",
  fromMm,
  widthMm: 1000,
  ...more,
});
/** From rail to rail, to the neighbour on either side. */
const joined = (unit: number, face: "left" | "right", fromMm: number, widthMm: number, height: number): Cut => ({
  unit,
  face,
  use: "passage",
  fromMm,
  widthMm,
  sillMm: 174.5,
  heightMm: height - 240.5,
});
/**
 * A 40 ft unit drawn over the door end of the one below: made connections on the rails under its blind end, and under its own rails,
 * over the corners below, plates welded to both with a stiffener between the flanges, as every line off the corners asks for.
 */
const overhanging = (byMm: number): Scheme => {
  const drawn = ordinary([at("1AAA"), at("1AAA", byMm, 0, 1, { seats: true })]);
  return {
    ...drawn,
    // under the door end of the upper unit is nothing to connect to
    locks: drawn.locks.filter(({ containerId, fitting }) => containerId === idOf(1) || fitting.startsWith("front")),
    seats: [-1, 1].map((side, n) => ({
      id: `seat-${n + 1}`,
      tag: `S${n + 1}`,
      upperId: idOf(2),
      lowerId: idOf(1),
      xUm: um(sizes["1AAA"].x),
      yUm: um(side * RAIL_Y),
      lengthUm: um(150),
      widthUm: um(60),
      packingUm: um(12.5),
      heldDown: true,
      stiffenerUm: um(10),
    })),
  };
};
/** Units side by side: 50 mm apart. */
const BESIDE = 2488;

/** The same on pads sized by hand statics, as whoever draws foundations does before he asks. */
export const onPadsByHand = (scheme: Scheme): Scheme => ({ ...scheme, pads: padsByHand(scheme.containers) });

/** The same with doors welded shut, so that both ends are walls, on pads sized for that. */
export const withBothEnds = (scheme: Scheme): Scheme =>
  onPadsByHand({
    ...scheme,
    containers: scheme.containers.map((container) => ({ ...container, doors: "welded shut" })),
  });

/** Twenty of the kind architects draw every week. */
export const ordinarySchemes: Readonly<Record<string, Scheme>> = {
  "one 20 ft": ordinary([at("1CC")]),
  "one 40 ft": ordinary([at("1AAA")]),
  "two 20 ft stacked": ordinary([at("1CC"), at("1CC", 0, 0, 1)]),
  "two 40 ft stacked": ordinary([at("1AAA"), at("1AAA", 0, 0, 1)]),
  "three 40 ft stacked": ordinary([at("1AAA"), at("1AAA", 0, 0, 1), at("1AAA", 0, 0, 2)]),
  "two 40 ft side by side": ordinary([at("1AAA"), at("1AAA", 0, BESIDE)]),
  "four 20 ft, two by two": ordinary([at("1CC"), at("1CC", 0, BESIDE), at("1CC", 0, 0, 1), at("1CC", 0, BESIDE, 1)]),
  "a window in the middle of a 20 ft side": ordinary([at("1CC")], [window(1, 2429)]),
  "a window in the middle of a 40 ft side": ordinary([at("1AAA")], [window(1, 5496)]),
  "two windows in a 40 ft side": ordinary([at("1AAA")], [window(1, 3000), window(1, 8000)]),
  "a window in the blind end": ordinary([at("1AAA")], [window(1, 619, { face: "front" })]),
  "a window near the end of a 40 ft side": ordinary([at("1AAA")], [window(1, 1200)]),
  "a door in the middle of a 20 ft side": ordinary([at("1CC")], [door(1, 2529)]),
  "a door in the middle of a 40 ft side": ordinary([at("1AAA")], [door(1, 5596)]),
  "a door at the quarter point of a 40 ft side": ordinary([at("1AAA")], [door(1, 2500)]),
  "a door and a window in a 40 ft side": ordinary([at("1AAA")], [door(1, 4000), window(1, 7000)]),
  "two 20 ft joined by 2 m": ordinary(
    [at("1CC"), at("1CC", 0, BESIDE)],
    [joined(1, "left", 2029, 2000, 2591), joined(2, "right", 2029, 2000, 2591)],
  ),
  "two 40 ft joined by 2.4 m in the middle": ordinary(
    [at("1AAA"), at("1AAA", 0, BESIDE)],
    [joined(1, "left", 4896, 2400, 2896), joined(2, "right", 4896, 2400, 2896)],
  ),
  "an overhang of 1 m": overhanging(1000),
  "an overhang of 2 m": overhanging(2000),
};
