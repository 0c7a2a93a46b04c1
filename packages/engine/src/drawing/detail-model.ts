import type { Opening, Post, Scheme, Seat } from "@cornerway/schema";
import { statedPostPlate } from "../catalog/stated-post-plate.ts";
import { weldLegMm } from "../cost/weld-length.ts";
import { sectionSizeMm } from "../catalog/section-size.ts";
import { findSection } from "../catalog/sections/find-section.ts";
import { openingFrame } from "../catalog/sections/frame-tubes.ts";
import type { Section } from "../catalog/sections/section.ts";
import { placeContainer, toLocal, type PlacedContainer } from "../geometry/place.ts";
import type { Detail, DetailPart } from "./detail.ts";
import { padDetail } from "./pad-detail.ts";

/** What is shown of a member that runs on, mm. */
const shownMm = 420;

/** The details of one element, from its own data: none for an element that has no steel of its own. */
export function detailsOf(scheme: Scheme, id: string): Detail[] {
  const post = scheme.posts.find((each) => each.id === id);
  if (post !== undefined) return [headOf(scheme, post), footOf(scheme, post)];
  const pad = scheme.pads.find((each) => each.id === id);
  if (pad !== undefined) return padDetail(scheme, pad);
  const seat = scheme.seats.find((each) => each.id === id);
  if (seat !== undefined) return seatDetail(scheme, seat);
  const opening = scheme.openings.find((each) => each.id === id);
  return opening?.framed === true ? openingDetails(scheme, opening) : [];
}

/** A section cut along its length: its two walls where it is a tube, else the whole of it. */
function shaft(name: string, from: number, to: number): DetailPart[] {
  const { widthMm } = sectionSizeMm(name);
  const section = findSection(name);
  const part = (u0Mm: number, u1Mm: number): DetailPart => ({
    ...{ what: "added steel", name, u0Mm, u1Mm, z0Mm: from, z1Mm: to },
  });
  if (section?.kind !== "tube") return [part(-widthMm / 2, widthMm / 2)];
  const { wallMm } = section;
  return [part(-widthMm / 2, wallMm - widthMm / 2), part(widthMm / 2 - wallMm, widthMm / 2)];
}

/** A member within this much over a head is held by it, mm. */
const heldWithinMm = 400;

function headOf(scheme: Scheme, post: Post): Detail {
  const [x, y, top] = [post.xUm / 1000, post.yUm / 1000, post.topZUm / 1000];
  const over = scheme.containers
    .map(placeContainer)
    .filter((unit) => unit.baseZMm >= top - 1 && unit.baseZMm < top + heldWithinMm && isOver(unit, x, y))
    .toSorted((a, b) => a.baseZMm - b.baseZMm)[0];
  const held = over === undefined ? [] : [bottomRail(over, over.baseZMm - top)];
  const [rail] = held;
  const { widthMm } = sectionSizeMm(post.section);
  const { thicknessMm } = statedPostPlate;
  // Under what bears on it: the post is as long as drawn, its plate within that.
  const plate = rail === undefined ? [] : [postPlate(widthMm, -thicknessMm)];
  const headMm = plate[0]?.z0Mm ?? 0;
  return {
    ...{ subject: "head of post", tag: post.tag },
    parts: [...shaft(post.section, -shownMm, headMm), ...plate, ...held],
    welds: plate.map(({ z0Mm }) => ({ uMm: widthMm / 2, zMm: z0Mm, legMm: weldLegMm })),
    heights: rail === undefined || rail.z0Mm <= 0 ? [] : [{ fromMm: 0, toMm: rail.z0Mm, atMm: rail.u1Mm }],
  };
}

function footOf(scheme: Scheme, post: Post): Detail {
  const base = post.baseZUm / 1000;
  const pad = scheme.pads.find(
    ({ xUm, yUm, lengthUm, widthUm, topZUm }) =>
      Math.abs(xUm - post.xUm) * 2 <= lengthUm && Math.abs(yUm - post.yUm) * 2 <= widthUm && topZUm <= post.baseZUm,
  );
  const half = pad === undefined ? 0 : Math.min(pad.lengthUm / 2000, shownMm);
  const top = pad === undefined ? 0 : pad.topZUm / 1000 - base;
  const under: DetailPart[] =
    pad === undefined
      ? []
      : [{ what: "concrete", name: pad.tag, u0Mm: -half, u1Mm: half, z0Mm: top - pad.depthUm / 1000, z1Mm: top }];
  const { widthMm } = sectionSizeMm(post.section);
  const plate = pad === undefined ? [] : [postPlate(widthMm, top)];
  const foot = plate[0]?.z1Mm ?? 0;
  return {
    ...{ subject: "foot of post", tag: post.tag },
    parts: [...under, ...shaft(post.section, foot, shownMm), ...plate],
    welds: plate.map(({ z1Mm }) => ({ uMm: widthMm / 2, zMm: z1Mm, legMm: weldLegMm })),
    heights: under.map(({ z0Mm, z1Mm, u1Mm }) => ({ fromMm: z0Mm, toMm: z1Mm, atMm: u1Mm })),
  };
}

/** The plate at either end of a post from its underside, as stated and checked, since plates are not drawn. */
function postPlate(postWidthMm: number, footMm: number): DetailPart {
  const { outstandMm, thicknessMm } = statedPostPlate;
  const half = postWidthMm / 2 + outstandMm;
  const wide = Math.round(2 * half);
  return {
    ...{ what: "plate", name: `stated plate ${wide}×${wide}×${thicknessMm}` },
    ...{ u0Mm: -half, u1Mm: half, z0Mm: footMm, z1Mm: footMm + thicknessMm },
  };
}

function seatDetail(scheme: Scheme, seat: Seat): Detail[] {
  const units = new Map(scheme.containers.map((unit) => [unit.id, placeContainer(unit)]));
  const [lower, upper] = [units.get(seat.lowerId), units.get(seat.upperId)];
  if (upper === undefined) return [];
  const packingMm = seat.packingUm / 1000;
  const lowerTop = lower === undefined ? null : lower.topZMm - lower.dimensions.proudOfRoofMm;
  const upperFoot = lowerTop === null ? packingMm : upper.baseZMm - lowerTop;
  const half = seat.widthUm / 2000;
  const plate = { u0Mm: -half, u1Mm: half, z0Mm: 0, z1Mm: packingMm };
  return [
    {
      ...{ subject: "seat", tag: seat.tag },
      parts: [
        ...(lower === undefined ? [] : [topRail(lower)]),
        { what: "plate", name: seat.tag, ...plate },
        bottomRail(upper, upperFoot),
      ],
      welds: seat.heldDown ? [{ uMm: half, zMm: packingMm, legMm: weldLegMm }] : [],
      heights: packingMm > 0 ? [{ fromMm: 0, toMm: packingMm, atMm: half }] : [],
    },
  ];
}

function openingDetails(scheme: Scheme, opening: Opening): Detail[] {
  const frame = openingFrame(opening);
  const holder = scheme.containers.find(({ id }) => id === opening.containerId);
  if (holder === undefined || opening.face === "roof" || opening.face === "floor") return [];
  const unit = placeContainer(holder);
  const zone = unit.dimensions.sheetZone(opening.face);
  const [sill, head] = [opening.sillUm / 1000, (opening.sillUm + opening.heightUm) / 1000];
  const { topRailDepthMm, topRailWidthMm, bottomRailDepthMm, bottomRailWidthMm } = unit.dimensions;
  const railOver = zone.v1 - head;
  const header = cutAcross(frame.header, 1);
  const headDetail: Detail = {
    ...{ subject: "head of opening", tag: opening.tag },
    parts: [
      ...header,
      ...(railOver > nearMm ? [] : [member("top rail", topRailWidthMm, railOver, railOver + topRailDepthMm)]),
    ],
    welds: [],
    heights: [{ fromMm: 0, toMm: railOver, atMm: topRailWidthMm / 2 }].filter(({ toMm }) => toMm > 0 && toMm <= nearMm),
  };
  const railUnder = zone.v0 - sill;
  // Where there is no room for a sill over the bottom rail, the rail is it.
  if (-railUnder < sectionDepthMm(frame.sill)) return [headDetail];
  return [
    headDetail,
    {
      ...{ subject: "sill of opening", tag: opening.tag },
      parts: [
        ...cutAcross(frame.sill, -1),
        ...(-railUnder > nearMm
          ? []
          : [member("bottom rail", bottomRailWidthMm, railUnder - bottomRailDepthMm, railUnder)]),
      ],
      welds: [],
      heights: [{ fromMm: railUnder, toMm: 0, atMm: bottomRailWidthMm / 2 }].filter(
        ({ fromMm }) => fromMm < 0 && -fromMm <= nearMm,
      ),
    },
  ];
}

/** A rail farther from the frame of an opening than this is no part of its detail, mm. */
const nearMm = 250;

const sectionDepthMm = (section: Section): number =>
  section.kind === "tube" ? section.depthMm : sectionSizeMm(section.name).depthMm;

/** A section cut across, its edge towards the opening at z = 0: walls of a tube, else the whole of it. */
function cutAcross(section: Section, up: 1 | -1): DetailPart[] {
  const { name } = section;
  const { depthMm, widthMm } = section.kind === "tube" ? section : sectionSizeMm(name);
  const [z0Mm, z1Mm] = up === 1 ? [0, depthMm] : [-depthMm, 0];
  const part = (u0Mm: number, u1Mm: number, low: number, high: number): DetailPart => ({
    ...{ what: "added steel", name, u0Mm, u1Mm, z0Mm: low, z1Mm: high },
  });
  const half = widthMm / 2;
  if (section.kind !== "tube") return [part(-half, half, z0Mm, z1Mm)];
  const { wallMm } = section;
  return [
    part(-half, wallMm - half, z0Mm, z1Mm),
    part(half - wallMm, half, z0Mm, z1Mm),
    part(-half, half, z0Mm, z0Mm + wallMm),
    part(-half, half, z1Mm - wallMm, z1Mm),
  ];
}

const member = (name: string, wideMm: number, z0Mm: number, z1Mm: number): DetailPart => ({
  ...{ what: "container steel", name, u0Mm: -wideMm / 2, u1Mm: wideMm / 2, z0Mm, z1Mm },
});

function bottomRail({ dimensions }: PlacedContainer, footMm: number): DetailPart {
  const low = footMm + dimensions.baseAboveFittingMm;
  return member("bottom rail", dimensions.bottomRailWidthMm, low, low + dimensions.bottomRailDepthMm);
}

const topRail = ({ dimensions }: PlacedContainer): DetailPart =>
  member("top rail", dimensions.topRailWidthMm, -dimensions.topRailDepthMm, 0);

/** True where a place in plan lies under a unit or at its edge. */
function isOver(unit: PlacedContainer, xMm: number, yMm: number): boolean {
  const local = toLocal(unit.frame, { xMm, yMm, zMm: 0 });
  const { lengthMm, widthMm } = unit.dimensions;
  return Math.abs(local.xMm) <= lengthMm / 2 + edgeMm && Math.abs(local.yMm) <= widthMm / 2 + edgeMm;
}

/** A post may stand with its axis this far outside what it holds, mm: half a common section. */
const edgeMm = 60;
