import { sectionSizeMm, onWall, type PlanUnit, type PlanWall, type WallRun } from "@cornerway/engine";
import { memo } from "react";
import { hatchFill } from "../../look/hatch.ts";
import { dash, ink, verdictInk } from "../../look/ink.ts";
import { DrawnElement } from "../DrawnElement.tsx";
import { itemOf, type ElementSetting } from "../element-setting.ts";
import type { ElementVerdict } from "../marks/element-verdicts.ts";
import { polygonPath, polylinePath, type RectPx } from "../px-path.ts";
import { sameDrawn } from "../same-drawn.ts";
import { toScreen, type ViewPoint, type ViewTransform } from "../view-transform.ts";
import { foldedSheet } from "./folded-sheet.ts";

/** A unit cut in plan: folded sheets, corner posts solid, openings with their jambs. */
export function PlanUnitDrawing({ unit, ...setting }: { unit: PlanUnit } & ElementSetting) {
  const { view, verdicts, still } = setting;
  const { id } = unit.container;
  const openings = unit.walls.flatMap((wall) => wall.openings.map((hole) => ({ wall, hole })));
  return (
    <DrawnElement {...itemOf(setting, id, "container")} rect={boundsPx(unit.outline, view)}>
      <UnitPlan unit={unit} view={view} />
      {openings.length > 0 && (
        <g role={still ? undefined : "group"}>
          {openings.map(({ wall, hole }) => (
            <DrawnElement
              key={hole.opening.id}
              {...itemOf(setting, hole.opening.id, "opening", 2)}
              rect={boundsPx(bandOf(wall, hole, 130), view)}
            >
              <HolePlan wall={wall} hole={hole} view={view} verdict={verdicts.get(hole.opening.id)} />
            </DrawnElement>
          ))}
        </g>
      )}
    </DrawnElement>
  );
}

/** Doors welded shut: slanting strokes across the door end. */
function weldedDoors({ container, walls }: PlanUnit, view: ViewTransform): string {
  const wall = walls.find(({ key }) => key === `${container.id}-door`);
  if (container.doors !== "welded shut" || wall === undefined) return "";
  const deepMm = 4000 / view.pxPerM;
  return [0.08, 0.3, 0.5, 0.7, 0.92]
    .map((share) => share * wall.lengthMm)
    .map((at) =>
      polylinePath(
        [onWall(wall, at - deepMm, -deepMm), onWall(wall, at + deepMm, deepMm)].map((point) => toScreen(view, point)),
      ),
    )
    .join("");
}

const UnitPlan = memo(function UnitPlan({ unit, view }: { unit: PlanUnit; view: ViewTransform }) {
  const runs = unit.walls.flatMap((wall) => wall.sheet.map((run) => ({ wall, run })));
  const line = (wall: PlanWall, run: WallRun) =>
    polylinePath([onWall(wall, run.fromMm), onWall(wall, run.toMm)].map((point) => toScreen(view, point)));
  return (
    <>
      <path
        d={polygonPath(unit.outline.map((point) => toScreen(view, point)))}
        className="face-paper"
        fill={ink.paper}
      />
      <path
        d={runs.map(({ wall, run }) => foldedSheet(wall, run, view)).join("")}
        fill="none"
        stroke={ink.ink}
        strokeWidth={0.7}
        strokeLinejoin="round"
      />
      <path
        d={unit.walls.flatMap((wall) => wall.outside.map((run) => line(wall, run))).join("")}
        stroke={ink.ink}
        strokeWidth={1.5}
      />
      <path
        d={unit.walls
          .filter((wall) => isLong(wall, unit))
          .flatMap((wall) => cornerPosts(wall, unit))
          .map((corner) => polygonPath(corner.map((point) => toScreen(view, point))))
          .join("")}
        fill={ink.ink}
      />
      <path d={weldedDoors(unit, view)} stroke={ink.prussian} strokeWidth={1.1} />
    </>
  );
}, sameDrawn);

type Hole = PlanWall["openings"][number];

const HolePlan = memo(function HolePlan({
  wall,
  hole,
  view,
  verdict,
}: {
  wall: PlanWall;
  hole: Hole;
  view: ViewTransform;
  verdict: ElementVerdict | undefined;
}) {
  const at = (along: number, inward: number) => toScreen(view, onWall(wall, along, inward));
  const across = polylinePath([at(hole.fromMm, 0), at(hole.toMm, 0)]);
  const jambMm = 3000 / view.pxPerM;
  const jamb = (along: number) => polylinePath([at(along, -jambMm), at(along, jambMm)]);
  const out = hole.opening.use === "open-wall";
  const hatched = verdict !== undefined && verdict.verdict !== "works as built" && verdict.verdict !== "not checked";
  return (
    <>
      <path
        d={across}
        stroke={ink.ink}
        strokeWidth={out ? 0.9 : 0.6}
        strokeDasharray={out || !hole.cut ? dash.hidden : undefined}
      />
      {hole.cut && !out && (
        <path d={jamb(hole.fromMm) + jamb(hole.toMm)} stroke={ink.ink} strokeWidth={1.2} strokeLinecap="round" />
      )}
      {hole.cut && hole.opening.framing !== undefined && (
        <path d={framingSections(wall, hole, hole.opening.framing.jamb, view)} fill={ink.prussian} />
      )}
      {hole.cut && hole.opening.use === "door" && (
        <path d={leafSwing(wall, hole, view)} fill="none" stroke={ink.graphite} strokeWidth={0.5} />
      )}
      {hatched && (
        <path
          d={polygonPath(bandOf(wall, hole, 4500 / view.pxPerM).map((point) => toScreen(view, point)))}
          fill={hatchFill(verdict.verdict, "small", verdict.screening ? "pencil" : "ink")}
          stroke={verdictInk[verdict.verdict]}
          strokeWidth={verdict.screening ? 0.75 : 1.1}
        />
      )}
    </>
  );
}, sameDrawn);

/** The quarter circle a single leaf swings through; wider doors fold or slide and have none. */
function leafSwing(wall: PlanWall, { fromMm, toMm }: WallRun, view: ViewTransform): string {
  const wide = toMm - fromMm;
  if (wide > 1250) return "";
  const hinge = toScreen(view, onWall(wall, fromMm));
  const arc = Array.from({ length: 9 }, (_, step) => {
    const turn = (step / 8) * (Math.PI / 2);
    return toScreen(view, onWall(wall, fromMm + Math.cos(turn) * wide, Math.sin(turn) * wide));
  });
  return polylinePath([...arc, hinge]);
}

const isLong = (wall: PlanWall, { placed }: PlanUnit): boolean => wall.lengthMm === placed.dimensions.lengthMm;

/** The two corner posts at the ends of a long wall, as quadrilaterals. */
function cornerPosts(wall: PlanWall, { placed }: PlanUnit): ViewPoint[][] {
  const { lengthMm, widthMm } = placed.dimensions.fitting;
  const box = (from: number) => [
    onWall(wall, from),
    onWall(wall, from + lengthMm),
    onWall(wall, from + lengthMm, widthMm),
    onWall(wall, from, widthMm),
  ];
  return [box(0), box(wall.lengthMm - lengthMm)];
}

/** The jambs of a framed opening cut through, at least 3 px wide. */
function framingSections(wall: PlanWall, { fromMm, toMm }: WallRun, section: string, view: ViewTransform): string {
  const wideMm = Math.max(sectionSizeMm(section).widthMm, 3000 / view.pxPerM);
  const jamb = (from: number, to: number) =>
    polygonPath(
      [onWall(wall, from, 0), onWall(wall, to, 0), onWall(wall, to, wideMm), onWall(wall, from, wideMm)].map((point) =>
        toScreen(view, point),
      ),
    );
  return jamb(fromMm - wideMm, fromMm) + jamb(toMm, toMm + wideMm);
}

const bandOf = (wall: PlanWall, { fromMm, toMm }: WallRun, halfMm: number): ViewPoint[] => [
  onWall(wall, fromMm, -halfMm),
  onWall(wall, toMm, -halfMm),
  onWall(wall, toMm, halfMm),
  onWall(wall, fromMm, halfMm),
];

export function boundsPx(points: readonly ViewPoint[], view: ViewTransform): RectPx {
  const at = points.map((point) => toScreen(view, point));
  const left = Math.min(...at.map(({ xPx }) => xPx));
  const top = Math.min(...at.map(({ yPx }) => yPx));
  return {
    xPx: left,
    yPx: top,
    widthPx: Math.max(...at.map(({ xPx }) => xPx)) - left,
    heightPx: Math.max(...at.map(({ yPx }) => yPx)) - top,
  };
}
