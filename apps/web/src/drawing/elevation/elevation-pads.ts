import type { Pad, Scheme } from "@cornerway/schema";
import { cosDegThousandths, sinDegThousandths } from "@cornerway/engine";
import type { Side } from "../contract.ts";
import { project } from "../view-transform.ts";
import type { PaperRect } from "./corrugation.ts";

export type ElevationPad = PaperRect & { pad: Pad; depthMm: number; behind: boolean };

/** Pads farther back than this from the front one are behind, mm. */
const behindMm = 1200;

/** Pads as seen, one hidden by another at the same place left out; those behind the front row say so. */
export function elevationPads(scheme: Scheme, side: Side): ElevationPad[] {
  const nearestFirst = scheme.pads.map((pad) => padOnPaper(pad, side)).toSorted((a, b) => a.depthMm - b.depthMm);
  const front = nearestFirst[0]?.depthMm ?? 0;
  const shown: ElevationPad[] = [];
  for (const pad of nearestFirst) {
    const hidden = shown.some((other) => pad.u0Mm < other.u1Mm && pad.u1Mm > other.u0Mm && pad.z1Mm <= other.z1Mm);
    if (!hidden) shown.push({ ...pad, behind: pad.depthMm > front + behindMm });
  }
  return shown;
}

function padOnPaper(pad: Pad, side: Side): ElevationPad {
  const { uMm, depthMm } = project(side, { xMm: pad.xUm / 1000, yMm: pad.yUm / 1000, zMm: 0 });
  const cos = Math.abs(cosDegThousandths(pad.turnMdeg));
  const sin = Math.abs(sinDegThousandths(pad.turnMdeg));
  const alongX = (pad.lengthUm * cos + pad.widthUm * sin) / 2000;
  const alongY = (pad.lengthUm * sin + pad.widthUm * cos) / 2000;
  const half = side === "south" || side === "north" ? alongX : alongY;
  const z1Mm = pad.topZUm / 1000;
  return { pad, depthMm, behind: false, u0Mm: uMm - half, u1Mm: uMm + half, z0Mm: z1Mm - pad.depthUm / 1000, z1Mm };
}
