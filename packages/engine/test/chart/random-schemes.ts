import type { Opening, Scheme } from "@cornerway/schema";
import type { ChartRequest } from "../../src/chart/chart.ts";
import { drawnUnit } from "../strength/drawn-unit.ts";

export type RandomTrial = {
  readonly scheme: Scheme;
  readonly request: ChartRequest;
  readonly place: { readonly centreMm: number; readonly widthMm: number };
  readonly hasOverhang: boolean;
};

/** A sequence of numbers from 0 to 1 that is the same for the same seed (a linear congruential generator). */
export function sequence(seed: number): () => number {
  let state = Math.imul(seed, 2_654_435_761) & 0x7fffffff;
  return () => {
    state = (Math.imul(state, 1_103_515_245) + 12_345) & 0x7fffffff;
    return state / 0x80000000;
  };
}

/** One or two units of 20 or 40 ft, the upper one plain or shifted, sometimes with an opening already, and an opening to try. */
export function randomTrial(seed: number): RandomTrial {
  const next = sequence(seed);
  const between = (from: number, to: number): number => Math.round((from + next() * (to - from)) / 50) * 50;
  const type = next() < 0.8 ? "1CC" : "1AAA";
  const [length, height] = type === "1CC" ? [6058, 2591] : [12_192, 2896];
  const above = next() < 0.75 ? 1 : 0;
  const shiftMm = above === 1 && next() < 0.65 ? between(200, length / 5) : 0;
  const drawn = drawnUnit({ type, above, imposedPa: next() < 0.5 ? 2400 : 4800 });
  const containers = drawn.containers.map((one, n) => (n === 1 ? { ...one, xUm: shiftMm * 1000 } : one));
  const railToRail = next() < 0.3;
  const [sillMm, headMm] = railToRail ? [174.5, height - 66] : [180, 2380];
  const widthMm = between(300, length * (next() < 0.85 ? 0.12 : 0.4));
  const request: ChartRequest = {
    containerId: "u1",
    face: next() < 0.5 ? "right" : "left",
    sillUm: sillMm * 1000,
    heightUm: (headMm - sillMm) * 1000,
    use: "door",
    framed: next() < 0.35,
  };
  const opposite: Opening = {
    ...{ id: "o1", tag: "O1", containerId: "u1", face: request.face === "right" ? "left" : "right", use: "door" },
    ...{ offsetUm: 2_000_000, sillUm: 180_000, widthUm: 900_000, heightUm: 2_000_000, framed: true },
  };
  const place = { widthMm, centreMm: between(widthMm / 2 + 250, length - widthMm / 2 - 250) };
  const openings = next() < 0.3 ? [opposite] : [];
  return { scheme: { ...drawn, containers, openings }, request, place, hasOverhang: shiftMm > 0 };
}
