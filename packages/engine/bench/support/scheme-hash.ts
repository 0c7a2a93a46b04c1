import { emptyScheme, type Scheme } from "@cornerway/schema";
import { containerDimensions } from "../../src/catalog/container-dimensions.ts";
import { analyse } from "../../src/load-path/analysis.ts";
import type { ActionCase } from "../../src/loads/action-case.ts";
import { evenPatch } from "../../src/loads/action-case.ts";
import { condensationCache, solveBuilding } from "../../src/building.ts";
import { buildModel } from "../../src/model/build-model.ts";

/** Hash of the bits of every number in the solutions of `count` generated schemes: FNV-1a, 2 × 32 bits. */
export function hashOfSchemes(count: number): string {
  const hash = new BitHash();
  for (let n = 1; n <= count; n++) hashScheme(n, hash);
  return hash.text();
}

function hashScheme(seed: number, hash: BitHash): void {
  const scheme = generatedScheme(seed);
  const { model } = buildModel(analyse(scheme), actionsOn(scheme), { up: { D: 1.2, L: 1.6 }, side: { D: 0.9, W: 1 } });
  const { combos } = solveBuilding(model, condensationCache(5e8));
  for (const [name, combo] of Object.entries(combos)) {
    hash.addText(name);
    if ("refused" in combo) {
      hash.addText(combo.refused);
      continue;
    }
    for (const values of Object.values(combo.frame.displacements)) values.forEach((value) => hash.addNumber(value));
    for (const { id } of model.units.slice(0, 1)) {
      const { memberEndForces, panelFlows } = combo.unit(id);
      for (const values of Object.values(memberEndForces)) values.forEach((value) => hash.addNumber(value));
      for (const value of Object.values(panelFlows)) hash.addNumber(value);
    }
  }
}

/** One to three 20 ft containers, stacked straight, shifted or turned by any angle, some with an opening. */
function generatedScheme(seed: number): Scheme {
  const next = lehmer(seed);
  const { heightMm, holeSpacingLengthwiseMm: L, holeSpacingCrosswiseMm: W } = containerDimensions("1CC");
  const um = (mm: number): number => Math.round(mm * 1000);
  const turn = next() < 0.5 ? 90_000 * Math.floor(next() * 4) : Math.floor(next() * 360_000);
  const count = 1 + Math.floor(next() * 3);
  const containers = Array.from({ length: count }, (_, n) => ({
    id: `unit-0${n + 1}`,
    tag: `U${n + 1}`,
    type: "1CC" as const,
    xUm: 0,
    yUm: 0,
    zUm: um(n * heightMm),
    turnMdeg: n > 0 && next() < 0.2 ? (turn + 180_000) % 360_000 : turn,
  }));
  const corners = [-1, 1].flatMap((a) => [-1, 1].map((b) => [(a * L) / 2, (b * W) / 2] as const));
  const frame = analyse({ ...EMPTY, containers: containers.slice(0, 1) }).structure.building.units[0]?.frame;
  const pads = corners.map(([x, y], n) => {
    const [cos, sin] = [frame?.cos ?? 1, frame?.sin ?? 0];
    return {
      id: `pad-${n + 1}`,
      tag: `F${n + 1}`,
      xUm: um(cos * x - sin * y),
      yUm: um(sin * x + cos * y),
      topZUm: 0,
      lengthUm: um(400),
      widthUm: um(400),
      depthUm: um(300),
      turnMdeg: 0,
    };
  });
  const openings: Scheme["openings"] =
    next() < 0.5
      ? []
      : [
          {
            id: "opening-1",
            tag: "O1",
            containerId: "unit-01",
            face: next() < 0.5 ? "left" : "right",
            use: "window",
            offsetUm: um(800 + 2000 * next()),
            sillUm: um(900),
            widthUm: um(900 + 900 * next()),
            heightUm: um(1000),
            framed: next() < 0.7,
          },
        ];
  return { ...EMPTY, containers, openings, pads };
}

const EMPTY: Scheme = {
  ...emptyScheme,
  site: { northMdeg: 0, groundZUm: 0, edition: "IBC 2021" },
  containers: [],
  openings: [],
  posts: [],
  pads: [],
  loads: [],
};

function actionsOn({ containers }: Scheme): ActionCase[] {
  const { face } = containerDimensions("1CC");
  return [
    {
      id: "D",
      symbol: "D",
      loads: containers.map(({ id }) => ({ kind: "own weight", containerId: id, weightN: 22_500 })),
    },
    {
      id: "L",
      symbol: "L",
      loads: containers.map(({ id }) => ({
        kind: "on",
        containerId: id,
        surface: "floor",
        patch: evenPatch(face("floor"), 2400),
      })),
    },
    {
      id: "W",
      symbol: "W",
      loads: containers.map(({ id }) => ({
        kind: "against",
        containerId: id,
        face: "right",
        patch: evenPatch(face("right"), 350),
      })),
    },
  ];
}

/** Lehmer's generator, modulus 2³¹ − 1: whole numbers only, the same everywhere. */
function lehmer(seed: number): () => number {
  let state = (seed * 7919) % 2147483647;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

class BitHash {
  private a = 0x811c9dc5;
  private b = 0x01234567;
  private readonly view = new DataView(new ArrayBuffer(8));

  addNumber(value: number): void {
    this.view.setFloat64(0, value);
    for (let byte = 0; byte < 8; byte++) this.addByte(this.view.getUint8(byte));
  }

  addText(text: string): void {
    for (let n = 0; n < text.length; n++) this.addByte(text.charCodeAt(n) & 255);
  }

  text(): string {
    return [this.a, this.b].map((half) => (half >>> 0).toString(16).padStart(8, "0")).join("");
  }

  private addByte(byte: number): void {
    this.a = Math.imul(this.a ^ byte, 0x01000193);
    this.b = Math.imul(this.b ^ byte ^ (this.a >>> 13), 0x01000193);
  }
}
