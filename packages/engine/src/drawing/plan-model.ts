import type { Container, Face, Opening, Pad, Post, Scheme } from "@cornerway/schema";
import { faceFrame, pointOnFace } from "../geometry/face-frame.ts";
import { placeContainer, solidCorners, type PlacedContainer } from "../geometry/place.ts";
import { storeysOf } from "../geometry/storeys.ts";
import { project, type ViewPoint } from "./projection.ts";
import { seenOnPlan, type SeenObject } from "./seen-objects.ts";

/** Height of the cut above the storey's level, mm; common practice, no published source. */
export const cutAboveMm = 1200;

/** A length of a wall, mm along it from the face's start. */
export type WallRun = { fromMm: number; toMm: number };

export type PlanWall = {
  key: string;
  /** Ends on paper; offsets run from `start`. `inward` points into the unit. */
  start: ViewPoint;
  end: ViewPoint;
  inward: ViewPoint;
  lengthMm: number;
  pitchMm: number;
  /** Sheet that is cut; what is above or below the cut and has no sheet; a wall taken out. */
  sheet: readonly WallRun[];
  /** The outer line of the wall, corner to corner, without what is cut. */
  outside: readonly WallRun[];
  openings: readonly (WallRun & { opening: Opening; cut: boolean })[];
};

export type PlanUnit = {
  container: Container;
  placed: PlacedContainer;
  outline: readonly ViewPoint[];
  walls: readonly PlanWall[];
};

export type PlanModel = {
  storey: number;
  cutMm: number;
  units: readonly PlanUnit[];
  /** Units of the storey above where they do not simply stand on these, and units below not covered. */
  overhead: readonly PlanUnit[];
  below: readonly PlanUnit[];
  posts: readonly { post: Post; at: ViewPoint }[];
  pads: readonly Pad[];
  objects: readonly SeenObject[];
};

/** What a plan cut through one storey draws. */
export function planModel(scheme: Scheme, storey: number): PlanModel {
  const storeys = storeysOf(scheme);
  const here = storeys.find(({ index }) => index === storey);
  const on = (index: number) => unitsOn(scheme, storeys.find((each) => each.index === index)?.containerIds ?? []);
  const units = on(storey);
  const cutMm = (here?.levelMm ?? scheme.site.groundZUm / 1000) + cutAboveMm;
  const apart = (unit: PlanUnit) => !units.some((other) => sameOutline(unit, other));
  return {
    storey,
    cutMm,
    units: units.map((unit) => ({ ...unit, walls: wallsOf(scheme, unit.placed, cutMm) })),
    overhead: on(storey + 1).filter(apart),
    below: on(storey - 1).filter(apart),
    posts: scheme.posts
      .filter(({ baseZUm, topZUm }) => baseZUm / 1000 < cutMm && topZUm / 1000 > cutMm)
      .map((post) => ({ post, at: { uMm: post.xUm / 1000, vMm: post.yUm / 1000 } })),
    pads: storey === 0 ? scheme.pads : [],
    objects: seenOnPlan(scheme, new Set(here?.containerIds ?? []), cutMm - cutAboveMm, cutMm),
  };
}

const unitsOn = (scheme: Scheme, ids: readonly string[]): PlanUnit[] =>
  scheme.containers
    .filter(({ id }) => ids.includes(id))
    .map((container) => {
      const placed = placeContainer(container);
      const outline = solidCorners(placed)
        .slice(0, 4)
        .map((corner) => project("plan", corner));
      return { container, placed, outline, walls: [] };
    });

const sameOutlineMm = 160;

const sameOutline = (one: PlanUnit, other: PlanUnit): boolean =>
  one.outline.every((corner) =>
    other.outline.some(
      ({ uMm, vMm }) => Math.abs(uMm - corner.uMm) < sameOutlineMm && Math.abs(vMm - corner.vMm) < sameOutlineMm,
    ),
  );

const wallFaces: readonly Face[] = ["right", "door", "left", "front"];

const wallsOf = (scheme: Scheme, placed: PlacedContainer, cutMm: number): PlanWall[] =>
  wallFaces.map((face) =>
    wallOf(
      scheme.openings.filter((opening) => opening.containerId === placed.id && opening.face === face),
      placed,
      face,
      cutMm,
    ),
  );

function wallOf(openings: readonly Opening[], placed: PlacedContainer, face: Face, cutMm: number): PlanWall {
  const frame = faceFrame(placed, face);
  const { lengthMm, pitchMm } = { lengthMm: placed.dimensions.face(face).u1, pitchMm: pitchOf(placed, face) };
  const zone = placed.dimensions.sheetZone(face);
  const holes = openings.map((opening) => {
    const fromMm = opening.offsetUm / 1000;
    const sill = placed.baseZMm + opening.sillUm / 1000;
    return {
      opening,
      fromMm,
      toMm: fromMm + opening.widthUm / 1000,
      cut: sill < cutMm && sill + opening.heightUm / 1000 > cutMm,
    };
  });
  return {
    key: `${placed.id}-${face}`,
    start: project("plan", frame.origin),
    end: project("plan", pointOnFace(frame, lengthMm, 0)),
    inward: { uMm: -frame.normal.xMm, vMm: -frame.normal.yMm },
    lengthMm,
    pitchMm,
    sheet: runsLeft(
      { fromMm: zone.u0, toMm: zone.u1 },
      holes.filter(({ cut }) => cut),
    ),
    outside: runsLeft(
      { fromMm: 0, toMm: lengthMm },
      holes.filter(({ cut }) => cut),
    ),
    openings: holes,
  };
}

const pitchOf = ({ dimensions }: PlacedContainer, face: Face): number =>
  face === "left" || face === "right" ? dimensions.corrugationPitchMm.side : dimensions.corrugationPitchMm.end;

/** What is left of a run when holes are taken out of it. */
function runsLeft(whole: WallRun, holes: readonly WallRun[]): WallRun[] {
  const left: WallRun[] = [];
  let fromMm = whole.fromMm;
  for (const hole of holes.toSorted((a, b) => a.fromMm - b.fromMm)) {
    if (hole.fromMm > fromMm) left.push({ fromMm, toMm: Math.min(hole.fromMm, whole.toMm) });
    fromMm = Math.max(fromMm, hole.toMm);
  }
  if (fromMm < whole.toMm) left.push({ fromMm, toMm: whole.toMm });
  return left;
}

/** The point of a wall at a length along it and a depth into the unit, mm. */
export function onWall({ start, end, inward, lengthMm }: PlanWall, alongMm: number, inwardMm = 0): ViewPoint {
  const share = alongMm / lengthMm;
  return {
    uMm: start.uMm + (end.uMm - start.uMm) * share + inward.uMm * inwardMm,
    vMm: start.vMm + (end.vMm - start.vMm) * share + inward.vMm * inwardMm,
  };
}
