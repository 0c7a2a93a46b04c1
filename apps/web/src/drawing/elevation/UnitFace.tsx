import { foldLines, type PaperRect, onPaper, type ElevationFace } from "@cornerway/engine";
import { memo } from "react";
import { ink, weight } from "../../look/ink.ts";
import { rectToPx, xToPx, yToPx } from "../paper-to-px.ts";
import { linePath, px, type RectPx } from "../px-path.ts";
import { sameDrawn } from "../same-drawn.ts";
import type { ViewTransform } from "../view-transform.ts";
import { DoorEnd } from "./DoorEnd.tsx";

/** Corners overrun by this much, px. */
const overrunPx = 3.5;

/** One face of a unit without its openings: sheet, rails, posts, fittings, outline. */
export const UnitFace = memo(function UnitFace({ face, view }: { face: ElevationFace; view: ViewTransform }) {
  const rect = rectToPx(view, face);
  const line = face.beyond ? ink.pencil : ink.ink;
  const doors = face.face === "door" && face.openings.length === 0;
  return (
    <>
      <rect
        className="face-paper"
        x={px(rect.xPx)}
        y={px(rect.yPx)}
        width={px(rect.widthPx)}
        height={px(rect.heightPx)}
        fill={ink.paper}
      />
      {doors ? <DoorEnd face={face} view={view} /> : <Corrugation face={face} view={view} />}
      <path d={memberLines(face, view)} stroke={line} strokeWidth={face.beyond ? 0.55 : 0.8} />
      <path d={levelEdges(rect)} stroke={line} strokeWidth={face.beyond ? 0.75 : 1.45} strokeLinecap="round" />
      <path
        d={uprightEdges(rect)}
        stroke={line}
        strokeWidth={face.beyond ? 0.9 : weight.profile}
        strokeLinecap="round"
      />
      <path d={fittings(face, view)} fill={line} />
    </>
  );
}, sameDrawn);

/** Sheet between the posts and rails of a face, on paper. */
function sheetOnPaper(face: ElevationFace): PaperRect {
  const zone = face.placed.dimensions.sheetZone(face.face);
  const a = onPaper(face, zone.u0);
  const b = onPaper(face, zone.u1);
  const base = face.placed.baseZMm;
  return { u0Mm: Math.min(a, b), u1Mm: Math.max(a, b), z0Mm: base + zone.v0, z1Mm: base + zone.v1 };
}

function Corrugation({ face, view }: { face: ElevationFace; view: ViewTransform }) {
  const { side, end } = face.placed.dimensions.corrugationPitchMm;
  const pitchMm = (face.face === "left" || face.face === "right" ? side : end) * face.squeeze;
  const folds = foldLines(sheetOnPaper(face), pitchMm, face.openings);
  const crowded = (pitchMm * view.pxPerM) / 2000 < 3;
  const path = (light: boolean) =>
    folds
      .filter((fold) => fold.light === light)
      .flatMap(({ uMm, runsMm }) => {
        const x = xToPx(view, uMm);
        return runsMm.map(({ z0Mm, z1Mm }) => `M${px(x)} ${px(yToPx(view, z0Mm))}V${px(yToPx(view, z1Mm))}`);
      })
      .join("");
  const colour = face.beyond ? ink.pencil : ink.slate;
  return (
    <>
      <path
        d={path(false)}
        stroke={colour}
        strokeWidth={face.beyond ? 0.45 : 0.6}
        strokeOpacity={crowded ? 0.55 : 0.85}
      />
      {!crowded && (
        <path
          d={path(true)}
          stroke={face.beyond ? ink.pencil : ink.slate}
          strokeWidth={0.45}
          strokeOpacity={face.beyond ? 0.4 : 0.5}
        />
      )}
    </>
  );
}

/** Inner edges of rails and posts. */
function memberLines(face: ElevationFace, view: ViewTransform): string {
  const sheet = rectToPx(view, sheetOnPaper(face));
  const outline = rectToPx(view, face);
  const right = sheet.xPx + sheet.widthPx;
  const bottom = sheet.yPx + sheet.heightPx;
  return (
    linePath(outline.xPx, sheet.yPx, outline.xPx + outline.widthPx, sheet.yPx) +
    linePath(outline.xPx, bottom, outline.xPx + outline.widthPx, bottom) +
    linePath(sheet.xPx, sheet.yPx, sheet.xPx, bottom) +
    linePath(right, sheet.yPx, right, bottom)
  );
}

const levelEdges = ({ xPx, yPx, widthPx, heightPx }: RectPx): string =>
  linePath(xPx - overrunPx, yPx, xPx + widthPx + overrunPx, yPx) +
  linePath(xPx - overrunPx, yPx + heightPx, xPx + widthPx + overrunPx, yPx + heightPx);

const uprightEdges = ({ xPx, yPx, widthPx, heightPx }: RectPx): string =>
  linePath(xPx, yPx - overrunPx, xPx, yPx + heightPx + overrunPx) +
  linePath(xPx + widthPx, yPx - overrunPx, xPx + widthPx, yPx + heightPx + overrunPx);

/** Corner fittings, solid and to size; on a 45 ft side also those at the 40 ft spacing. */
function fittings(face: ElevationFace, view: ViewTransform): string {
  const { fitting, lengthMm, intermediateHoleSpacingMm, holeSpacingLengthwiseMm } = face.placed.dimensions;
  const long = face.face === "left" || face.face === "right";
  const wide = long ? fitting.lengthMm : fitting.widthMm;
  const total = face.placed.dimensions.face(face.face).u1;
  const between = intermediateHoleSpacingMm / 2;
  const starts = [0, total - wide];
  if (long && between > 0 && between < holeSpacingLengthwiseMm / 2)
    starts.push(lengthMm / 2 - between - wide / 2, lengthMm / 2 + between - wide / 2);
  return starts.map((start) => fittingPair(face, view, start, wide)).join("");
}

function fittingPair(face: ElevationFace, view: ViewTransform, startMm: number, wideMm: number): string {
  const a = xToPx(view, onPaper(face, startMm));
  const b = xToPx(view, onPaper(face, startMm + wideMm));
  const [left, right] = [Math.min(a, b), Math.max(a, b)];
  const high = (face.placed.dimensions.fitting.heightMm * view.pxPerM) / 1000;
  const box = (y: number) => `M${px(left)} ${px(y)}H${px(right)}v${px(high)}H${px(left)}Z`;
  return box(yToPx(view, face.z1Mm)) + box(yToPx(view, face.z0Mm) - high);
}
