import type { Opening } from "@cornerway/schema";
import { pencilFill } from "../../look/hatch.ts";
import { ink } from "../../look/ink.ts";
import { inset, linePath, px, type RectPx } from "../px-path.ts";

type Pen = { line: string; fill: string };

/** What stands in an opening, by its use, drawn to size in px. */
export function OpeningDrawing({ use, rect, pen }: { use: Opening["use"]; rect: RectPx; pen: Pen }) {
  switch (use) {
    case "door":
      return rect.widthPx > rect.heightPx * 0.56 ? (
        <GlazedLeaves rect={rect} pen={pen} />
      ) : (
        <DoorLeaf rect={rect} pen={pen} />
      );
    case "window":
      return <WindowFrame rect={rect} pen={pen} />;
    case "passage":
      return <Passage rect={rect} pen={pen} />;
    case "open-wall":
      return <OpenWall rect={rect} pen={pen} />;
    case "hatch":
      return <Hatch rect={rect} pen={pen} />;
  }
}

type Part = { rect: RectPx; pen: Pen };

function Frame({ rect, pen, strokeWidth = 1.3 }: Part & { strokeWidth?: number }) {
  return (
    <rect
      x={px(rect.xPx)}
      y={px(rect.yPx)}
      width={px(rect.widthPx)}
      height={px(rect.heightPx)}
      fill={pen.fill}
      stroke={pen.line}
      strokeWidth={strokeWidth}
    />
  );
}

/** One leaf with a light in its upper half and a knob. */
function DoorLeaf({ rect, pen }: Part) {
  const leaf = { ...inset(rect, 2.5), heightPx: Math.max(0, rect.heightPx - 2.5) };
  const light = {
    xPx: leaf.xPx + leaf.widthPx * 0.22,
    yPx: leaf.yPx + leaf.heightPx * 0.1,
    widthPx: leaf.widthPx * 0.56,
    heightPx: leaf.heightPx * 0.38,
  };
  return (
    <>
      <Frame rect={rect} pen={pen} />
      <Frame rect={leaf} pen={{ ...pen, fill: "none" }} strokeWidth={0.6} />
      <Frame rect={light} pen={{ ...pen, fill: "none" }} strokeWidth={0.5} />
      <circle cx={px(leaf.xPx + leaf.widthPx - 4)} cy={px(leaf.yPx + leaf.heightPx * 0.54)} r={1.2} fill={pen.line} />
    </>
  );
}

/** Leaves of glass with a kick rail; about one for each 0.6 of the height. */
function GlazedLeaves({ rect, pen }: Part) {
  const count = Math.max(2, Math.round(rect.widthPx / (rect.heightPx * 0.36)));
  const each = rect.widthPx / count;
  const kick = rect.yPx + rect.heightPx * 0.82;
  const leaves = Array.from({ length: count }, (_, index) => rect.xPx + index * each);
  const joints = leaves.slice(1).map((x) => linePath(x, rect.yPx, x, rect.yPx + rect.heightPx));
  const panes = leaves.map(
    (x) =>
      `M${px(x + 1.8)} ${px(rect.yPx + rect.heightPx)}V${px(rect.yPx + 2.4)}H${px(x + each - 1.8)}V${px(rect.yPx + rect.heightPx)}`,
  );
  const kicks = leaves.map((x) => linePath(x + 2.4, kick, x + each - 2.4, kick));
  return (
    <>
      <Frame rect={rect} pen={pen} />
      <path d={joints.join("")} stroke={pen.line} strokeWidth={0.9} />
      <path d={panes.join("") + kicks.join("")} fill="none" stroke={pen.line} strokeWidth={0.55} />
      <Glint rect={{ ...rect, heightPx: rect.heightPx * 0.8 }} />
    </>
  );
}

function WindowFrame({ rect, pen }: Part) {
  const count = Math.max(1, Math.round(rect.widthPx / Math.max(34, rect.heightPx * 0.75)));
  const mullions = Array.from({ length: count - 1 }, (_, index) => {
    const x = rect.xPx + ((index + 1) * rect.widthPx) / count;
    return linePath(x, rect.yPx + 2.5, x, rect.yPx + rect.heightPx - 2.5);
  });
  const sill = rect.yPx + rect.heightPx;
  return (
    <>
      <Frame rect={rect} pen={pen} />
      <Frame rect={inset(rect, 2.5)} pen={{ ...pen, fill: "none" }} strokeWidth={0.6} />
      <path d={mullions.join("")} stroke={pen.line} strokeWidth={0.9} />
      <Glint rect={rect} />
      <path
        d={linePath(rect.xPx - 3, sill, rect.xPx + rect.widthPx + 3, sill)}
        stroke={pen.line}
        strokeWidth={1.7}
        strokeLinecap="round"
      />
    </>
  );
}

/** A way through: what lies behind is in shade. */
function Passage({ rect, pen }: Part) {
  const depth = Math.min(5, rect.widthPx / 5);
  return (
    <>
      <Frame rect={rect} pen={{ ...pen, fill: ink.shade }} />
      <rect
        x={px(rect.xPx)}
        y={px(rect.yPx)}
        width={px(rect.widthPx)}
        height={px(rect.heightPx)}
        fill={pencilFill.open}
      />
      <path
        d={
          linePath(rect.xPx + depth, rect.yPx + depth, rect.xPx + depth, rect.yPx + rect.heightPx) +
          linePath(rect.xPx + depth, rect.yPx + depth, rect.xPx + rect.widthPx, rect.yPx + depth)
        }
        stroke={pen.line}
        strokeWidth={0.5}
      />
    </>
  );
}

/** A wall taken out: the rails stay, the edges of the sheet are trimmed, the room stands open in shade. */
function OpenWall({ rect, pen }: Part) {
  const floor = rect.yPx + rect.heightPx - Math.min(7, rect.heightPx * 0.08);
  const back = {
    xPx: rect.xPx + 7,
    yPx: rect.yPx + 6,
    widthPx: Math.max(0, rect.widthPx - 14),
    heightPx: Math.max(0, floor - rect.yPx - 6),
  };
  const corners =
    linePath(rect.xPx, rect.yPx, back.xPx, back.yPx) +
    linePath(rect.xPx + rect.widthPx, rect.yPx, back.xPx + back.widthPx, back.yPx) +
    linePath(rect.xPx, rect.yPx + rect.heightPx, back.xPx, floor) +
    linePath(rect.xPx + rect.widthPx, rect.yPx + rect.heightPx, back.xPx + back.widthPx, floor);
  return (
    <>
      <Frame rect={rect} pen={{ ...pen, fill: ink.slip }} strokeWidth={1.1} />
      <rect
        x={px(rect.xPx)}
        y={px(rect.yPx)}
        width={px(rect.widthPx)}
        height={px(Math.min(rect.heightPx, rect.heightPx * 0.3))}
        fill={pencilFill.open}
      />
      <Frame rect={back} pen={{ ...pen, fill: "none" }} strokeWidth={0.45} />
      <path d={corners} stroke={pen.line} strokeWidth={0.45} />
    </>
  );
}

function Hatch({ rect, pen }: Part) {
  const { xPx, yPx, widthPx, heightPx } = rect;
  return (
    <>
      <Frame rect={rect} pen={pen} strokeWidth={1.1} />
      <path
        d={linePath(xPx, yPx, xPx + widthPx, yPx + heightPx) + linePath(xPx, yPx + heightPx, xPx + widthPx, yPx)}
        stroke={pen.line}
        strokeWidth={0.5}
      />
    </>
  );
}

/** Three short strokes that say glass. */
function Glint({ rect }: { rect: RectPx }) {
  const size = Math.min(rect.widthPx * 0.32, rect.heightPx * 0.5, 34);
  const x = rect.xPx + rect.widthPx * 0.24;
  const y = rect.yPx + rect.heightPx * 0.62;
  const stroke = (share: number, along: number) =>
    linePath(x + along, y, x + along + size * share * 0.82, y - size * share);
  return (
    <path
      d={stroke(1, 0) + stroke(0.78, 8) + stroke(0.5, 16)}
      stroke={ink.graphite}
      strokeWidth={0.4}
      strokeOpacity={0.6}
    />
  );
}
