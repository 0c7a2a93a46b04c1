import { emptyScheme, type Scheme } from "@cornerway/schema";
import { analyse } from "../../src/load-path/analysis.ts";
import type { ActionCase } from "../../src/loads/action-case.ts";
import { evenPatch } from "../../src/loads/action-case.ts";
import { containerDimensions } from "../../src/catalog/container-dimensions.ts";
import type { ModelSpring } from "../../src/model/analytical-model.ts";
import { buildModel } from "../../src/model/build-model.ts";
import type { BuildingModel } from "../../src/model/building-model.ts";

/** Sizes of the grids measured: along, across, up. */
export const GRIDS: Readonly<Record<number, readonly [number, number, number]>> = {
  1: [1, 1, 1],
  8: [2, 2, 2],
  9: [3, 1, 3],
  16: [2, 2, 4],
  64: [4, 4, 4],
  128: [4, 8, 4],
  256: [8, 8, 4],
  500: [10, 10, 5],
};

const um = (mm: number): number => Math.round(mm * 1000);
const id = (n: number): string => `unit-${String(n).padStart(4, "0")}`;
const GAP_MM = 76;

/**
 * A grid of 40 ft high-cube containers stacked corner on corner, tied to their neighbours at the heads. Every other one has
 * openings of its own (a window on the left, a framed passage on the right), no two alike; the rest are whole. In the
 * `edited` one the window stands `step` times 40 mm farther on.
 */
export function stackedScheme(count: number, edited = 0, step = 1): Scheme {
  const [nx, ny, nz] = GRIDS[count] ?? [count, 1, 1];
  const { lengthMm, widthMm, heightMm } = containerDimensions("1AAA");
  const containers: Scheme["containers"] = [];
  const openings: Scheme["openings"] = [];
  const pads: Scheme["pads"] = [];
  for (let k = 0; k < nz; k++) {
    for (let j = 0; j < ny; j++) {
      for (let i = 0; i < nx; i++) {
        const n = containers.length + 1;
        const [x, y] = [i * (lengthMm + GAP_MM), j * (widthMm + GAP_MM)];
        containers.push({
          id: id(n),
          tag: `U${n}`,
          type: "1AAA",
          xUm: um(x),
          yUm: um(y),
          zUm: um(k * heightMm),
          turnMdeg: 0,
        });
        if (n % 2 === 0) openings.push(...ownOpenings(n, n === edited ? 40 * step : 0));
        if (k === 0) pads.push(...padsUnder(n, x, y));
      }
    }
  }
  openings.sort((a, b) => (a.id < b.id ? -1 : 1));
  pads.sort((a, b) => (a.id < b.id ? -1 : 1));
  return {
    ...emptyScheme,
    site: { northMdeg: 0, groundZUm: 0, edition: "IBC 2021" },
    containers,
    openings,
    posts: [],
    pads,
    loads: [],
  };
}

function ownOpenings(n: number, shiftMm: number): Scheme["openings"] {
  const sheet = containerDimensions("1AAA").sheetZone("right");
  const window = {
    id: `o-${id(n)}-w`,
    tag: `W${n}`,
    containerId: id(n),
    face: "left",
    use: "window",
    offsetUm: um(2000 + 7 * n + shiftMm),
    sillUm: um(1000),
    widthUm: um(1500),
    heightUm: um(1200),
    framed: true,
  } as const;
  const passage = {
    id: `o-${id(n)}-p`,
    tag: `P${n}`,
    containerId: id(n),
    face: "right",
    use: "passage",
    offsetUm: um(3000 + 11 * n),
    sillUm: um(sheet.v0),
    widthUm: um(2500),
    heightUm: um(sheet.v1 - sheet.v0),
    framed: true,
  } as const;
  return [window, passage];
}

function padsUnder(n: number, x: number, y: number): Scheme["pads"] {
  const { holeSpacingLengthwiseMm: L, holeSpacingCrosswiseMm: W } = containerDimensions("1AAA");
  return [-1, 1].flatMap((a) =>
    [-1, 1].map((b) => ({
      id: `pad-${id(n)}-${a + 1}${b + 1}`,
      tag: `F${n}${a + 1}${b + 1}`,
      xUm: um(x + (a * L) / 2),
      yUm: um(y + (b * W) / 2),
      topZUm: 0,
      lengthUm: um(300),
      widthUm: um(300),
      depthUm: um(300),
      turnMdeg: 0,
    })),
  );
}

/** Enough to open the bearing under the corner, not enough to turn the container over. */
const LIFTING_PA = 2600;

/**
 * Seven action cases: dead, imposed in two patterns, snow, wind along and across, and suction on a corner of every third
 * roof of the top storey that lifts the container off the bearing there.
 */
function actionsOn({ containers }: Scheme): ActionCase[] {
  const { face } = containerDimensions("1AAA");
  const on = (which: "floor" | "roof", pressurePa: number, keep: (n: number) => boolean) =>
    containers.flatMap(({ id: containerId }, n) =>
      keep(n) ? [{ kind: "on" as const, containerId, surface: which, patch: evenPatch(face(which), pressurePa) }] : [],
    );
  const top = Math.max(...containers.map(({ zUm }) => zUm));
  const { u1, v1 } = face("roof");
  const corner = { u0: 0, u1: u1 / 3, v0: 0, v1: v1 / 2 };
  const suction = containers
    .filter(({ zUm }) => zUm === top)
    .filter((_, n) => n % 3 === 0)
    .map(({ id: containerId }) => ({
      kind: "on" as const,
      containerId,
      surface: "roof" as const,
      patch: evenPatch(corner, -LIFTING_PA),
    }));
  const against = (which: "right" | "front", pressurePa: number) =>
    containers.map(({ id: containerId }) => ({
      kind: "against" as const,
      containerId,
      face: which,
      patch: evenPatch(face(which), pressurePa),
    }));
  return [
    {
      id: "D",
      symbol: "D",
      loads: containers.map(({ id: containerId }) => ({ kind: "own weight", containerId, weightN: 38_300 })),
    },
    { id: "L1", symbol: "L", loads: on("floor", 2400, (n) => n % 2 === 0) },
    { id: "L2", symbol: "L", loads: on("floor", 2400, (n) => n % 2 === 1) },
    { id: "S", symbol: "S", loads: on("roof", 1000, () => true) },
    { id: "WY", symbol: "W", loads: against("right", 60) },
    { id: "WX", symbol: "W", loads: against("front", 120) },
    { id: "WU", symbol: "W", loads: suction },
  ];
}

export const COMBINATIONS: BuildingModel["combos"] = {
  "1.4D": { D: 1.4 },
  "1.2D+1.6L": { D: 1.2, L1: 1.6, L2: 1.6, S: 0.5 },
  "1.2D+1.6L1": { D: 1.2, L1: 1.6, S: 0.5 },
  "1.2D+1.6L2": { D: 1.2, L2: 1.6, S: 0.5 },
  "1.2D+1.6S": { D: 1.2, L1: 1, L2: 1, S: 1.6 },
  "1.2D+WY": { D: 1.2, L1: 1, L2: 1, S: 0.5, WY: 1 },
  "1.2D-WY": { D: 1.2, L1: 1, L2: 1, S: 0.5, WY: -1 },
  "1.2D+WX": { D: 1.2, L1: 1, L2: 1, S: 0.5, WX: 1 },
  "0.9D+WY": { D: 0.9, WY: 0.3, WU: 1 },
  "0.9D+WX": { D: 0.9, WX: 1, WU: 1 },
};

/** The building as the engine models it, with ties between neighbours' heads added. */
export function stackedModel(scheme: Scheme, combos = COMBINATIONS): BuildingModel {
  const { model } = buildModel(analyse(scheme), actionsOn(scheme), combos);
  return { ...model, springs: ties(scheme, model) };
}

function ties({ containers }: Scheme, model: BuildingModel): ModelSpring[] {
  const { lengthMm, widthMm } = containerDimensions("1AAA");
  const byPlace = new Map(containers.map((one, n) => [`${one.xUm},${one.yUm},${one.zUm}`, n]));
  const springs: ModelSpring[] = [];
  containers.forEach((one, n) => {
    const beside = [
      [lengthMm + GAP_MM, 0],
      [0, widthMm + GAP_MM],
    ] as const;
    for (const [dx, dy] of beside) {
      const other = byPlace.get(`${one.xUm + um(dx)},${one.yUm + um(dy)},${one.zUm}`);
      if (other !== undefined) springs.push(...tieHeads(model, n, other, dx > 0));
    }
  });
  return springs;
}

function tieHeads(model: BuildingModel, n: number, other: number, along: boolean): ModelSpring[] {
  const [a, b] = [model.units[n], model.units[other]];
  if (a === undefined || b === undefined) return [];
  const heads = a.fragment.retained
    .map((name) => ({ name, node: a.fragment.nodes.find(({ id: own }) => own === name) }))
    .filter(({ node }) => node !== undefined && node.z > 1000);
  const shared = heads.filter(({ node }) => node !== undefined && (along ? node.x > 0 : node.y > 0));
  return shared.flatMap(({ name, node }) => {
    const mirror = b.fragment.nodes.find(
      (to) =>
        node !== undefined &&
        to.z === node.z &&
        (along ? to.x === -node.x && to.y === node.y : to.y === -node.y && to.x === node.x),
    );
    return mirror === undefined
      ? []
      : [
          {
            id: `tie ${a.id}-${b.id} ${name}`,
            i: `${a.id}:${name}`,
            j: `${b.id}:${mirror.id}`,
            k: [1e5, 1e5, 0, 0, 0, 0] as const,
          },
        ];
  });
}
