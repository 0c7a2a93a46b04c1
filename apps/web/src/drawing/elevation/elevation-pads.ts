import type { Pad, Scheme } from "@cornerway/schema";
import { cosDegThousandths, sinDegThousandths } from "@cornerway/engine";
import type { Side } from "../contract.ts";
import { project } from "../view-transform.ts";
import type { PaperRect } from "./corrugation.ts";

export type ElevationPad = PaperRect & { pad: Pad; depthMm: number };

/** The front row of pads: one hidden behind another at the same place is left out, since both are under ground. */
export function elevationPads(scheme: Scheme, side: Side): ElevationPad[] {
  const nearestFirst = scheme.pads.map((pad) => padOnPaper(pad, side)).toSorted((a, b) => a.depthMm - b.depthMm);
  const shown: ElevationPad[] = [];
  for (const pad of nearestFirst) {
    const hidden = shown.some((other) => pad.u0Mm < other.u1Mm && pad.u1Mm > other.u0Mm && pad.z1Mm <= other.z1Mm);
    if (!hidden) shown.push(pad);
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
  return { pad, depthMm, u0Mm: uMm - half, u1Mm: uMm + half, z0Mm: z1Mm - pad.depthUm / 1000, z1Mm };
}
