import {
  isometricPlace,
  pictureEye,
  pictureSize,
  placeContainer,
  sectionModel,
  solidCorners,
  type EyePlace,
  type SectionLine,
} from "@cornerway/engine";
import type { PointMm, Scheme } from "@cornerway/schema";
import { sectionExtent } from "../drawing/section/section-extent.ts";
import { stringStepPx } from "../drawing/dimension/strings.ts";
import { hasOpeningString, planStringsPx, planTopPx, type Within } from "../drawing/plan/plan-strings.ts";
import { planWindow } from "../drawing/plan/plan-window.ts";
import { project } from "../drawing/view-transform.ts";
import type { Projection, ScreenPoint, ViewTransform } from "../drawing/view-transform.ts";
import type { Side } from "../drawing/contract.ts";

export interface FieldPx {
  widthPx: number;
  heightPx: number;
}

export interface RectPx {
  leftPx: number;
  topPx: number;
  widthPx: number;
  heightPx: number;
}

export interface LaidView {
  rect: RectPx;
  transform: ViewTransform;
}

export interface LaidViews {
  /** True where the field is too narrow for more than the elevation. */
  oneView: boolean;
  elevation: LaidView;
  plan: LaidView;
  isometric: LaidView;
}

/** Drawing scales on offer, px a metre; 50 px a metre is called 1:100 on screen. */
const scales = [50, 40, 33.333, 25, 20, 16.667, 14.286, 12.5, 11.111, 10, 8, 6.25, 5, 4, 2.5, 2, 1];
/** Room round a drawing for grid bubbles, levels and dimension strings, px. */
const elevationRoom = { leftPx: 56, rightPx: 72, topPx: 45, footPx: 122 };
/** A narrow field has no level strip beside it, and the heights stand close. */
const narrowRoom = { leftPx: 30, rightPx: 62, topPx: 45, footPx: 122 };
/** From the foot of a view to the rule under its title, and to the top of its capitals, px. */
export const titleRisePx = 21;
const titleRoomPx = titleRisePx + 15;
/** Room round a plan for its grid, the string of the whole and its title. */
const planRoom = { leftPx: 64, rightPx: 66, topPx: 26, footPx: titleRoomPx + planStringsPx.foot + 4 };
/** Room for the string of the bays as well, which the elevation has too, and for that of the openings. */
const roomWithBays = { ...planRoom, topPx: planTopPx };
const roomWithOpenings = { ...roomWithBays, footPx: planRoom.footPx + stringStepPx };
/** Shares of the field's height the elevation takes at least and at most. */
const elevationShare = { least: 0.58, most: 0.74 } as const;

/** A narrower field shows the elevation alone. */
const oneViewBelowPx = 480;

/**
 * Where the three views stand on the field: elevation above, plan and isometric below it side by side. The plan is
 * drawn as large as its own storey allows; the elevation keeps its place whatever storey is cut.
 */
export function layViews(
  field: FieldPx,
  scheme: Scheme,
  side: Side,
  storey: number,
  { picture = isometricPlace, section = null }: ThirdView = {},
): LaidViews {
  const half = Math.round(field.widthPx * 0.52);
  const oneView = field.widthPx < oneViewBelowPx;
  const above = oneView ? field.heightPx : bestHeightPx(field, half, scheme, side);
  const top = { leftPx: 0, topPx: 0, widthPx: field.widthPx, heightPx: above };
  const left = { leftPx: 0, topPx: above, widthPx: half, heightPx: field.heightPx - above };
  const right = { ...left, leftPx: half, widthPx: field.widthPx - half };
  return {
    oneView,
    elevation: {
      rect: top,
      transform: standOnGround(top, extentOf(scheme, side), oneView ? narrowRoom : elevationRoom),
    },
    plan: planOn(oneView ? top : left, scheme, storey),
    isometric: {
      rect: right,
      transform:
        section === null ? isometricTransform(right, scheme, picture) : sectionTransform(right, scheme, section),
    },
  };
}

/**
 * The plan as large as its own storey and the string of its whole allow, with those of bays and openings where they cost nothing; on a narrow field it
 * takes the place of the elevation when asked for.
 */
function planOn(rect: RectPx, scheme: Scheme, storey: number): LaidView {
  const extent = planExtent(scheme, storey);
  const largest = scaleFor(rect, extent, planRoom);
  const room = [roomWithOpenings, roomWithBays].find(
    (each) => scaleFor(rect, extent, each) === largest && (each !== roomWithOpenings || hasOpeningString(largest)),
  );
  return { rect, transform: centred(rect, extent, room ?? planRoom) };
}

/** What the plan of a storey shows, and the posts beside it. */
function planExtent(scheme: Scheme, storey: number): Extent {
  const window = planWindow(scheme, storey);
  if (window === null) return extentOf(scheme, "plan");
  const posts = postPoints(scheme).map((point) => project("plan", point));
  return {
    uLow: Math.min(window.uLow, ...posts.map(({ uMm }) => uMm)),
    uHigh: Math.max(window.uHigh, ...posts.map(({ uMm }) => uMm)),
    vLow: Math.min(window.vLow, ...posts.map(({ vMm }) => vMm)),
    vHigh: Math.max(window.vHigh, ...posts.map(({ vMm }) => vMm)),
  };
}

/** Between which heights the strings of a plan run, px: its circles stand over them, its title under them. */
export const planStringsWithin = ({ topPx, heightPx }: Pick<RectPx, "topPx" | "heightPx">): Within => ({
  topPx,
  footPx: topPx + heightPx - titleRoomPx - 4,
});

/** The height that draws elevation and plan largest together, the elevation before all: one its scale just needs. */
function bestHeightPx(field: FieldPx, planWidthPx: number, scheme: Scheme, side: Side): number {
  const extent = extentOf(scheme, side);
  const planExtent = extentOf(scheme, "plan");
  const tallM = (extent.vHigh - extent.vLow) / 1000;
  const least = Math.round(field.heightPx * elevationShare.least);
  const most = Math.round(field.heightPx * elevationShare.most);
  const needed = scales.map((scale) => Math.ceil(elevationRoom.topPx + elevationRoom.footPx + tallM * scale));
  const drawn = (abovePx: number) => {
    const above = { leftPx: 0, topPx: 0, widthPx: field.widthPx, heightPx: abovePx };
    const below = { ...above, widthPx: planWidthPx, heightPx: field.heightPx - abovePx };
    return cubed(scaleFor(above, extent, elevationRoom)) * scaleFor(below, planExtent, planRoom);
  };
  const heights = [least, ...needed.filter((height) => height > least && height <= most).toSorted((a, b) => a - b)];
  return heights.reduce((best, height) => (drawn(height) > drawn(best) ? height : best));
}

/** The view a point of the field lies in, of the two one can draw on. */
export const viewAt = (views: LaidViews, { xPx, yPx }: ScreenPoint): "elevation" | "plan" | null => {
  if (inside(views.elevation.rect, xPx, yPx)) return "elevation";
  return inside(views.plan.rect, xPx, yPx) ? "plan" : null;
};

interface Extent {
  uLow: number;
  uHigh: number;
  vLow: number;
  vHigh: number;
}

/** An empty sheet has room for one 40 ft unit. */
const emptyExtent: Record<"plan" | "side", Extent> = {
  plan: { uLow: -6096, uHigh: 6096, vLow: -3000, vHigh: 3000 },
  side: { uLow: -6096, uHigh: 6096, vLow: 0, vHigh: 5792 },
};

export function extentOf(scheme: Scheme, projection: Projection): Extent {
  const points = pointsOf(scheme).map((point) => project(projection, point));
  if (points.length === 0) return emptyExtent[projection === "plan" ? "plan" : "side"];
  const us = points.map(({ uMm }) => uMm);
  const vs = points.map(({ vMm }) => vMm);
  const ground = projection === "plan" ? [] : [scheme.site.groundZUm / 1000];
  return {
    uLow: Math.min(...us),
    uHigh: Math.max(...us),
    vLow: Math.min(...vs, ...ground),
    vHigh: Math.max(...vs),
  };
}

/** Corners of the units, and ends of posts: a post may stand out beyond what it holds up. */
const pointsOf = (scheme: Scheme): PointMm[] => [
  ...scheme.containers.flatMap((unit) => solidCorners(placeContainer(unit))),
  ...postPoints(scheme),
];

const postPoints = ({ posts }: Scheme): PointMm[] =>
  posts.flatMap(({ xUm, yUm, baseZUm, topZUm }) =>
    [baseZUm, topZUm].map((zUm) => ({ xMm: xUm / 1000, yMm: yUm / 1000, zMm: zUm / 1000 })),
  );

type RoomPx = typeof elevationRoom;

function scaleFor(rect: RectPx, extent: Extent, room: RoomPx): number {
  const across = (rect.widthPx - room.leftPx - room.rightPx) / Math.max(1, (extent.uHigh - extent.uLow) / 1000);
  const up = (rect.heightPx - room.topPx - room.footPx) / Math.max(1, (extent.vHigh - extent.vLow) / 1000);
  return scales.find((scale) => scale <= Math.min(across, up)) ?? 1;
}

function standOnGround(rect: RectPx, extent: Extent, room: RoomPx): ViewTransform {
  const pxPerM = scaleFor(rect, extent, room);
  const middle = rect.leftPx + (room.leftPx + rect.widthPx - room.rightPx) / 2;
  return {
    originXPx: middle - ((extent.uLow + extent.uHigh) / 2 / 1000) * pxPerM,
    originYPx: rect.topPx + rect.heightPx - room.footPx + (extent.vLow / 1000) * pxPerM,
    pxPerM,
  };
}

function centred(rect: RectPx, extent: Extent, room: RoomPx): ViewTransform {
  const pxPerM = scaleFor(rect, extent, room);
  const middleX = rect.leftPx + (room.leftPx + rect.widthPx - room.rightPx) / 2;
  const middleY = rect.topPx + (room.topPx + rect.heightPx - room.footPx) / 2;
  return {
    originXPx: middleX - ((extent.uLow + extent.uHigh) / 2000) * pxPerM,
    originYPx: middleY + ((extent.vLow + extent.vHigh) / 2000) * pxPerM,
    pxPerM,
  };
}

/** What is drawn in the third place: the whole as seen from somewhere, or a section along a line. */
export interface ThirdView {
  picture?: EyePlace;
  section?: SectionLine | null;
}

/** Room round a section for its levels and heights, px. */
const sectionRoom = { leftPx: 40, rightPx: 62, topPx: 18, footPx: 66 };

/** A section at the largest scale of the list that its place has room for, its title under it. */
function sectionTransform(rect: RectPx, scheme: Scheme, line: SectionLine): ViewTransform {
  const extent = sectionExtent(sectionModel(scheme, line), scheme.site.groundZUm / 1000);
  return centred(rect, { uLow: extent.u0Mm, uHigh: extent.u1Mm, vLow: extent.z0Mm, vHigh: extent.z1Mm }, sectionRoom);
}

/** Most px a metre of the isometric: a single unit is not drawn larger than this. */
const mostIsometricPxPerM = 22;

/** The picture of the whole, as large as its outline allows as isometric and as seen now, its title under it. */
function isometricTransform(rect: RectPx, scheme: Scheme, picture: EyePlace): ViewTransform {
  const sizes = [isometricPlace, picture].map((place) => pictureSize(scheme, pictureEye(place)));
  const widthMm = Math.max(...sizes.map((size) => size.widthMm));
  const heightMm = Math.max(...sizes.map((size) => size.heightMm));
  const across = ((rect.widthPx - 70) * 1000) / Math.max(1, widthMm);
  const up = ((rect.heightPx - 66) * 1000) / Math.max(1, heightMm);
  return {
    originXPx: rect.leftPx + rect.widthPx / 2,
    originYPx: rect.topPx + (rect.heightPx - 46) / 2,
    pxPerM: Math.min(across, up, mostIsometricPxPerM),
  };
}

const cubed = (value: number) => value ** 3;

const inside = (rect: RectPx, xPx: number, yPx: number) =>
  xPx >= rect.leftPx && xPx <= rect.leftPx + rect.widthPx && yPx >= rect.topPx && yPx <= rect.topPx + rect.heightPx;
