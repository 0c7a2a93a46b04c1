import { sectionSizeMm } from "@cornerway/engine";
import type { Framing } from "@cornerway/schema";
import { hatchFill } from "../../look/hatch.ts";
import { ink } from "../../look/ink.ts";
import { rectPath, type RectPx } from "../px-path.ts";

/** Thinner than this a member is drawn as a line would be, px. */
const leastPx = 2.2;

/** The members round a framed opening, to size: jambs past the header and the sill. */
export function FramingDrawing({ rect, framing, pxPerM }: { rect: RectPx; framing: Framing; pxPerM: number }) {
  const thick = (section: string) => Math.max(leastPx, (sectionSizeMm(section).widthMm * pxPerM) / 1000);
  const [jamb, header] = [thick(framing.jamb), thick(framing.header)];
  const sill = framing.sill === undefined ? 0 : thick(framing.sill);
  const { xPx, yPx, widthPx, heightPx } = rect;
  const upright = (x: number): RectPx => ({
    xPx: x,
    yPx: yPx - header,
    widthPx: jamb,
    heightPx: heightPx + header + sill,
  });
  const level = (y: number, thickPx: number): RectPx => ({ xPx, yPx: y, widthPx, heightPx: thickPx });
  const members = [
    upright(xPx - jamb),
    upright(xPx + widthPx),
    level(yPx - header, header),
    ...(sill === 0 ? [] : [level(yPx + heightPx, sill)]),
  ];
  const d = members.map(rectPath).join("");
  return (
    <>
      <path d={d} fill={ink.paper} />
      <path d={d} fill={hatchFill("works with steel", "small")} stroke={ink.prussian} strokeWidth={0.9} />
    </>
  );
}
