import type { ViewPoint } from "@cornerway/engine";
import { mmPerInch, type UnitSystem } from "@cornerway/schema";
import { pt, ptPerMm } from "./ink.ts";
import type { At, Box } from "./shapes.ts";

/** What a view covers at full size, mm. */
export type Extent = { u0: number; u1: number; v0: number; v1: number };

/** A drawing at a stated scale: where a point of it lies on paper. */
export type View = {
  scale: Scale;
  toPaper: (at: ViewPoint) => At;
  x: (uMm: number) => number;
  y: (vMm: number) => number;
  /** Paper points for a length at full size. */
  length: (mm: number) => number;
};

/** One to so many, and its name as it stands under the view. */
export type Scale = { ratio: number; name: string };

const feet = (inchesPerFoot: string, ratio: number): Scale => ({ ratio, name: `${inchesPerFoot}" = 1'-0"` });
const metric = (ratio: number): Scale => ({ ratio, name: `1:${ratio}` });

const scales: Record<UnitSystem, readonly Scale[]> = {
  SI: [1, 2, 5, 10, 20, 25, 50, 75, 100, 125, 150, 200, 250, 300, 400, 500, 750, 1000, 2000, 5000].map(metric),
  US: [
    feet("6", 2),
    feet("3", 4),
    feet("1 1/2", 8),
    feet("1", 12),
    feet("1/2", 24),
    feet("3/8", 32),
    feet("1/4", 48),
    feet("3/16", 64),
    feet("1/8", 96),
    feet("3/32", 128),
    feet("1/16", 192),
    feet("1/32", 384),
    feet("1/64", 768),
    feet("1/128", 1536),
    feet("1/256", 3072),
  ],
};

/** The largest usual scale at which an extent fits the box; its middle stands in the middle of the box. */
export function fitView(extent: Extent, room: Box, units: UnitSystem): View {
  const needed = Math.max(
    ((extent.u1 - extent.u0) * ptPerMm) / room.width,
    ((extent.v1 - extent.v0) * ptPerMm) / room.height,
  );
  const scale = scales[units].find(({ ratio }) => ratio >= needed) ?? {
    ratio: Math.ceil(needed / 1000) * 1000,
    name: `1:${Math.ceil(needed / 1000) * 1000}`,
  };
  return viewAt(scale, extent, room);
}

function viewAt(scale: Scale, extent: Extent, room: Box): View {
  const perMm = ptPerMm / scale.ratio;
  const left = room.x + (room.width - (extent.u1 - extent.u0) * perMm) / 2 - extent.u0 * perMm;
  const foot = room.y + (room.height + (extent.v1 - extent.v0) * perMm) / 2 + extent.v0 * perMm;
  const x = (uMm: number) => pt(left + uMm * perMm);
  const y = (vMm: number) => pt(foot - vMm * perMm);
  return { scale, x, y, length: (mm) => mm * perMm, toPaper: ({ uMm, vMm }) => ({ x: x(uMm), y: y(vMm) }) };
}

/** A round length for a scale bar of about 100 pt, mm at full size, and its step. */
export function barLengthMm({ scale: { ratio } }: View, units: UnitSystem): { step: number; steps: number } {
  const one = units === "US" ? mmPerInch * 12 : 1000;
  const steps = [1, 2, 5, 10, 20, 50, 100, 200].map((count) => count * one);
  const step = steps.find((each) => (each * ptPerMm) / ratio >= 22) ?? one;
  return { step, steps: 4 };
}
