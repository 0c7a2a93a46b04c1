import type { SectionCut, SectionWall } from "@cornerway/engine";
import { memo } from "react";
import { ink, weight } from "../../look/ink.ts";
import { rectToPx, xToPx, yToPx } from "../paper-to-px.ts";
import { linePath, px, rectPath } from "../px-path.ts";
import { sameDrawn } from "../same-drawn.ts";
import type { ViewTransform } from "../view-transform.ts";

/** Thickness of the floor's boards over the cross-members, mm: common practice, no published source. */
const boardMm = 28;

/** One unit cut through: rails solid, floor on its cross-members, roof, and walls with what is cut out of them. */
export const SectionCutDrawing = memo(function SectionCutDrawing({
  cut,
  view,
}: {
  cut: SectionCut;
  view: ViewTransform;
}) {
  const { dimensions } = cut.placed;
  const foot = cut.z0Mm + dimensions.baseAboveFittingMm;
  const roof = cut.z1Mm - dimensions.proudOfRoofMm;
  const body = { ...cut, z0Mm: foot, z1Mm: roof };
  const edge = (zMm: number) =>
    linePath(xToPx(view, cut.u0Mm), yToPx(view, zMm), xToPx(view, cut.u1Mm), yToPx(view, zMm));
  return (
    <>
      <path d={rectPath(rectToPx(view, body))} fill={ink.paper} />
      <path d={crossMembers(cut, foot, view)} stroke={ink.slate} strokeWidth={weight.hair} />
      <path d={edge(cut.floorMm) + edge(roof) + edge(foot)} stroke={ink.ink} strokeWidth={weight.edge} />
      <path d={edge(cut.floorMm - boardMm)} stroke={ink.ink} strokeWidth={weight.hair} />
      {cut.walls.map((wall) => (
        <WallCut key={wall.face} wall={wall} cut={cut} view={view} />
      ))}
      <path d={rails(cut, foot, roof, view)} fill={ink.ink} />
    </>
  );
}, sameDrawn);

/** The sheet in the heaviest line; where something is cut out of it, the two edges of what stands there. */
function WallCut({ wall, cut, view }: { wall: SectionWall; cut: SectionCut; view: ViewTransform }) {
  const x = xToPx(view, wall.uMm);
  const holes = wall.openings.toSorted((a, b) => a.z0Mm - b.z0Mm);
  const edges = [cut.floorMm, ...holes.flatMap(({ z0Mm, z1Mm }) => [z0Mm, z1Mm]), cut.ceilingMm];
  const sheet = edges.flatMap((from, index) => {
    const to = edges[index + 1];
    if (index % 2 === 1 || to === undefined || to <= from) return [];
    return [linePath(x, yToPx(view, from), x, yToPx(view, to))];
  });
  return (
    <>
      <path d={sheet.join("")} stroke={ink.ink} strokeWidth={weight.profile} />
      {holes.map(({ opening, z0Mm, z1Mm }) => (
        <g key={opening.id} stroke={opening.framing === undefined ? ink.ink : ink.prussian} strokeWidth={weight.fine}>
          {opening.use === "door" || opening.use === "window" ? (
            <path d={glass(x, yToPx(view, z0Mm), yToPx(view, z1Mm))} fill="none" />
          ) : null}
          <path
            d={`M${px(x - 4)} ${px(yToPx(view, z0Mm))}h8M${px(x - 4)} ${px(yToPx(view, z1Mm))}h8`}
            strokeWidth={weight.edge}
          />
        </g>
      ))}
    </>
  );
}

const glass = (x: number, y0: number, y1: number): string =>
  linePath(x - 1.4, y0, x - 1.4, y1) + linePath(x + 1.4, y0, x + 1.4, y1);

/** Cross-members under the boards: one stroke each, at their pitch along the cut. */
function crossMembers(cut: SectionCut, footMm: number, view: ViewTransform): string {
  const pitchMm = cut.placed.dimensions.crossMemberPitchMm;
  const count = Math.floor((cut.u1Mm - cut.u0Mm) / pitchMm);
  const [top, foot] = [yToPx(view, cut.floorMm - boardMm), yToPx(view, footMm)];
  return Array.from({ length: Math.max(0, count) }, (_, at) => {
    const x = xToPx(view, cut.u0Mm + (at + 0.5) * pitchMm);
    return linePath(x, top, x, foot);
  }).join("");
}

/** The four rails, solid, where the line passes through them. */
function rails(
  { placed, u0Mm, u1Mm, floorMm, ceilingMm }: SectionCut,
  foot: number,
  roof: number,
  view: ViewTransform,
) {
  const { bottomRailWidthMm: low, topRailWidthMm: high } = placed.dimensions;
  const rail = (from: number, wide: number, z0Mm: number, z1Mm: number) =>
    rectPath(rectToPx(view, { u0Mm: from, u1Mm: from + wide, z0Mm, z1Mm }));
  return (
    rail(u0Mm, low, foot, floorMm) +
    rail(u1Mm - low, low, foot, floorMm) +
    rail(u0Mm, high, ceilingMm, roof) +
    rail(u1Mm - high, high, ceilingMm, roof)
  );
}
