import type { Container, Pad } from "@cornerway/schema";

/**
 * Pads sized as one does by hand before any analysis, from the arrangement alone; nothing of it is the engine's. Strength level
 * for what lifts, allowable level for what presses; values of the codes from memory.
 *
 * Wind, 105 mph, exposure B, enclosed: q = 0.613 · 46.9² · K_z · 0.85; on a wall 0.85 (0.8 + 0.5) q, at least 0.77 kPa; under a roof
 * 0.85 · 1.3 q + 0.18 q, the worst zone taken on all of it; on a wall beside the wind 0.85 · 0.7 q + 0.18 q outwards. Empty containers hold down with 0.9 of their tare.
 *
 * A stack of height H, length L, fittings b apart, wind across: M = p L H²/2 about its leeward fittings. With both ends walls
 * each windward pad is pulled by M/2b. Where the doors carry nothing the blind end takes it all, M/b, and the twist p L H · L/2
 * goes into the sides, which pull the same pad by another M/2b: 1.5 M/b.
 */
export function padsByHand(containers: readonly Container[]): Pad[] {
  const ground = Math.min(...containers.map(({ zUm }) => zUm));
  const fittings = containers.filter(({ zUm }) => zUm === ground).flatMap((unit) => fittingsOf(unit, containers));
  return shared(fittings).map((together, n): Pad => {
    const [sideMm, depthMm] = sizeFor(together);
    const middle = (of: (fitting: Fitting) => number): number =>
      together.reduce((sum, fitting) => sum + of(fitting), 0) / together.length;
    return {
      id: `pad-${String(n + 1).padStart(2, "0")}`,
      tag: `P${n + 1}`,
      xUm: um(middle(({ xMm }) => xMm)),
      yUm: um(middle(({ yMm }) => yMm)),
      topZUm: 0,
      lengthUm: um(sideMm),
      widthUm: um(sideMm),
      depthUm: um(depthMm),
      turnMdeg: 0,
    };
  });
}

const um = (mm: number): number => Math.round(mm * 1000);
/** Outside sizes and distances between fittings, ISO 668; tare of carriers' tables, least and most. */
const sizes = {
  "1AAA": { length: 12_192, height: 2896, x: 5992.5, kg: [3800, 4200] },
  "1CC": { length: 6058, height: 2591, x: 2926.5, kg: [2150, 2400] },
} as const;
const [WIDTH, Y] = [2438, 1129.5];
const GRAVITY = 9.81;
/** Finishes, rooms of dwellings, roof; kPa on the floor or the roof. */
const [FINISH, ROOMS, ROOF] = [1, 1.92, 0.96];
/** Sand, presumptive, kPa; concrete, kN/m³. */
const [GROUND, CONCRETE] = [95.8, 23.5];
/** Least side and depth that are dug; beyond the most a pad is no pad any more, and the scheme has to change, mm. */
const [LEAST, MOST] = [
  { side: 1200, depth: 400 },
  { side: 2000, depth: 1000 },
];
/** Fittings nearer than this stand on one pad, mm. */
const NEAR = 600;

type Fitting = {
  readonly xMm: number;
  readonly yMm: number;
  readonly pullKn: number;
  readonly suckedKn: number;
  readonly pressKn: number;
};

function fittingsOf(unit: Container, containers: readonly Container[]): Fitting[] {
  const size = sizes[unit.type === "1CC" ? "1CC" : "1AAA"];
  const levels = containers.filter(({ xUm, yUm }) => near(xUm, unit.xUm, size.length) && near(yUm, unit.yUm, WIDTH));
  const [tall, long] = [(levels.length * size.height) / 1000, size.length / 1000];
  const [least, most] = size.kg.map((kg) => (levels.length * kg * GRAVITY) / 4000) as [number, number];
  const q = 0.613e-3 * 46.9 * 46.9 * exposureB(tall) * 0.85;
  const perKpaKn = ((unit.doors === "welded shut" ? 0.5 : 1.5) * long * tall * tall) / 2 / ((2 * Y) / 1000);
  const windKn = Math.max(1.105 * q, 0.77) * perKpaKn;
  const quarterM2 = (long * WIDTH) / 1000 / 4;
  const upKn = 1.285 * q * quarterM2 - 0.9 * least;
  const [pullKn, suckedKn] = [windKn + upKn, 0.775 * q * perKpaKn + upKn];
  const floorsKn = levels.length * quarterM2;
  const deadKn = most + FINISH * floorsKn;
  const pressKn = Math.max(
    deadKn + ROOMS * floorsKn,
    deadKn + 0.75 * (ROOMS * floorsKn + 0.6 * windKn + ROOF * quarterM2),
  );
  return [-1, 1].flatMap((x) =>
    [-1, 1].map((y) => ({
      xMm: unit.xUm / 1000 + x * size.x,
      yMm: unit.yUm / 1000 + y * Y,
      pullKn,
      suckedKn,
      pressKn,
    })),
  );
}

const near = (a: number, b: number, mm: number): boolean => Math.abs(a - b) < um(mm) / 2;

/** ASCE 7-16 table of K_z, exposure B, by height in m. */
const exposureB = (tallM: number): number => (tallM <= 4.6 ? 0.57 : tallM <= 6.1 ? 0.62 : 0.7);

/** Neighbours' fittings on one pad. */
function shared(fittings: readonly Fitting[]): Fitting[][] {
  const groups: Fitting[][] = [];
  for (const fitting of fittings) {
    const group = groups.find(([first]) => first !== undefined && isNear(first, fitting));
    if (group === undefined) groups.push([fitting]);
    else group.push(fitting);
  }
  return groups;
}

const isNear = (a: Fitting, b: Fitting): boolean => Math.abs(a.xMm - b.xMm) < NEAR && Math.abs(a.yMm - b.yMm) < NEAR;

/** Side and depth, mm, in steps of 100: wide enough for what presses, and half as deep as wide where what lifts asks for more. */
function sizeFor(together: readonly Fitting[]): [number, number] {
  const pressKn = together.reduce((sum, fitting) => sum + fitting.pressKn, 0);
  // wind across lifts one of two neighbours and presses the other; wind along them sucks at both outer walls and lifts both
  const pullKn = Math.max(
    ...together.map((fitting) => fitting.pullKn),
    together.length > 1 ? together.reduce((sum, { suckedKn }) => sum + suckedKn, 0) : 0,
  );
  const volumeM3 = Math.max(pullKn / 0.9 / CONCRETE, 0);
  const side = within("side", Math.max(Math.sqrt(pressKn / GROUND), Math.cbrt(2 * volumeM3)) * 1000);
  return [side, within("depth", Math.max((volumeM3 * 1e9) / side / side, 0))];
}

const within = (of: "side" | "depth", mm: number): number =>
  Math.min(Math.max(Math.ceil(mm / 100) * 100, LEAST[of]), MOST[of]);
