import { faceFrame, placeContainer } from "@cornerway/engine";
import type { Container, Opening, Operation, PointMm, Scheme } from "@cornerway/schema";
import { layGroup } from "../tools/lay-group.ts";
import { shiftedBy, type PlaceUm } from "../tools/laying.ts";
import { moveUnit } from "../tools/move-unit.ts";
import { restHeightMm } from "../tools/rest-height.ts";
import { shiftElement } from "../tools/shift-element.ts";
import { snapUnit } from "../tools/snap-unit.ts";
import type { Projection } from "../drawing/view-transform.ts";

/** A unit lifted by less than this stays on its level. */
const liftMm = 400;
const gridUm = 10_000;

/** The operations that move an element by the way between two points of a view; empty when it stays. */
export function moveElement(
  scheme: Scheme,
  id: string,
  projection: Projection,
  from: PointMm,
  to: PointMm,
  reachMm: number,
  places: readonly PlaceUm[] = [],
): Operation[] {
  const by = { xMm: to.xMm - from.xMm, yMm: to.yMm - from.yMm, zMm: to.zMm - from.zMm };
  const unit = scheme.containers.find((container) => container.id === id);
  if (unit !== undefined) return moveUnit(scheme, caught(scheme, unit, projection, by, reachMm, places));
  const opening = scheme.openings.find((cut) => cut.id === id);
  if (opening !== undefined) return moveOpening(scheme, opening, by);
  const post = scheme.posts.find((standing) => standing.id === id);
  if (post !== undefined)
    return [{ kind: "post.move", id, xUm: onGrid(post.xUm, by.xMm), yUm: onGrid(post.yUm, by.yMm) }];
  const pad = scheme.pads.find((lying) => lying.id === id);
  if (pad === undefined) return shiftElement(scheme, id, stepped(by));
  return [{ kind: "pad.move", id, xUm: onGrid(pad.xUm, by.xMm), yUm: onGrid(pad.yUm, by.yMm), topZUm: pad.topZUm }];
}

/** The dragged unit, on a place where its fittings land on fittings below when it comes near one on its own level. */
function caught(
  scheme: Scheme,
  unit: Container,
  projection: Projection,
  by: PointMm,
  reachMm: number,
  places: readonly PlaceUm[],
): Container {
  const dragged = draggedUnit(scheme, unit, projection, by, reachMm);
  if (dragged.zUm !== unit.zUm) return dragged;
  const off = (place: PlaceUm) =>
    Math.max(
      Math.abs(place.xUm - (seesX(projection) ? unit.xUm + by.xMm * 1000 : unit.xUm)),
      Math.abs(place.yUm - (seesY(projection) ? unit.yUm + by.yMm * 1000 : unit.yUm)),
    );
  const near = places.filter((place) => off(place) <= reachMm * 1000).toSorted((a, b) => off(a) - off(b))[0];
  if (near === undefined) return dragged;
  return {
    ...dragged,
    xUm: seesX(projection) ? near.xUm : unit.xUm,
    yUm: seesY(projection) ? near.yUm : unit.yUm,
  };
}

const seesX = (projection: Projection) => projection === "plan" || projection === "south" || projection === "north";
const seesY = (projection: Projection) => projection === "plan" || projection === "east" || projection === "west";

/** Whole steps of the grid, mm. */
const stepped = ({ xMm, yMm, zMm }: PointMm): PointMm => ({
  xMm: onGrid(0, xMm) / 1000,
  yMm: onGrid(0, yMm) / 1000,
  zMm: onGrid(0, zMm) / 1000,
});

/** Moves several things together, as the one that was taken moves: a unit catches on what is not moved. */
export function moveGroup(
  scheme: Scheme,
  { id, ids }: { id: string; ids: readonly string[] },
  projection: Projection,
  from: PointMm,
  to: PointMm,
  reachMm: number,
): Operation[] {
  const by = { xMm: to.xMm - from.xMm, yMm: to.yMm - from.yMm, zMm: 0 };
  const unit = scheme.containers.find((container) => container.id === id);
  if (unit === undefined) {
    const way = stepped(by);
    return layGroup(scheme, ids, shiftedBy(way.xMm * 1000, way.yMm * 1000));
  }
  const still = { ...scheme, containers: scheme.containers.filter((other) => !ids.includes(other.id)) };
  const after = draggedUnit(still, unit, projection, by, reachMm);
  return layGroup(scheme, ids, shiftedBy(after.xUm - unit.xUm, after.yUm - unit.yUm));
}

/** Where a dragged unit lies: on what is below it, drawn to fittings and sides along the axes the view shows. */
export function draggedUnit(
  scheme: Scheme,
  unit: Container,
  projection: Projection,
  by: PointMm,
  reachMm: number,
): Container {
  const moved = { ...unit, xUm: Math.round(unit.xUm + by.xMm * 1000), yUm: Math.round(unit.yUm + by.yMm * 1000) };
  const lifted = Math.abs(by.zMm) > liftMm;
  const zUm = lifted ? Math.round(restHeightMm(scheme, moved, unit.zUm / 1000 + by.zMm) * 1000) : unit.zUm;
  const { unit: snapped } = snapUnit(scheme, { ...moved, zUm }, reachMm);
  return {
    ...snapped,
    xUm: seesX(projection) ? snapped.xUm : unit.xUm,
    yUm: seesY(projection) ? snapped.yUm : unit.yUm,
  };
}

function moveOpening(scheme: Scheme, opening: Opening, by: PointMm): Operation[] {
  const unit = scheme.containers.find((container) => container.id === opening.containerId);
  if (unit === undefined) return [];
  const { u, v } = faceFrame(placeContainer(unit), opening.face);
  const along = by.xMm * u.xMm + by.yMm * u.yMm;
  const up = by.xMm * v.xMm + by.yMm * v.yMm + by.zMm * v.zMm;
  const { id, widthUm, heightUm } = opening;
  return [
    {
      kind: "opening.shape",
      id,
      offsetUm: onGrid(opening.offsetUm, along),
      sillUm: onGrid(opening.sillUm, up),
      widthUm,
      heightUm,
    },
  ];
}

/** A coordinate moved by mm; it keeps its own grid, so that a snapped thing moves in whole steps of 10 mm. */
const onGrid = (um: number, byMm: number): number => um + Math.round((byMm * 1000) / gridUm) * gridUm;
