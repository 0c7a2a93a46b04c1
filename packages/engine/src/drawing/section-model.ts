import type { Face, Opening, Pad, Post, Scheme } from "@cornerway/schema";
import { faceFrame, pointOnFace } from "../geometry/face-frame.ts";
import { placeContainer, solidCorners, type PlacedContainer } from "../geometry/place.ts";
import { padOutline } from "./pad-outline.ts";
import type { PaperRect } from "./corrugation.ts";
import { sectionWidthMm } from "./elevation-posts.ts";
import { lineOf, seenFrom, type PlanPoint, type SectionLine, type SectionPlane, type Seen } from "./section-line.ts";

/** A wall where the line passes through it: its place on paper and what is cut out of it there. */
export type SectionWall = {
  readonly face: Face;
  readonly uMm: number;
  readonly openings: readonly { readonly opening: Opening; readonly z0Mm: number; readonly z1Mm: number }[];
};

/** A unit where the line cuts it, mm: u to the right on paper, z up. */
export type SectionCut = PaperRect & {
  readonly placed: PlacedContainer;
  /** Upper side of the floor's frame and underside of the roof's rails. */
  readonly floorMm: number;
  readonly ceilingMm: number;
  readonly walls: readonly SectionWall[];
};

/** Something the line does not cut and that stands beyond it. */
export type SectionBeyond = PaperRect & { readonly placed: PlacedContainer; readonly awayMm: number };

export type SectionModel = {
  readonly line: SectionLine;
  /** Lowest first. */
  readonly cuts: readonly SectionCut[];
  /** Farthest first. */
  readonly beyond: readonly SectionBeyond[];
  /** Posts the line passes through, and pads under it. */
  readonly posts: readonly (PaperRect & { readonly post: Post })[];
  readonly pads: readonly (PaperRect & { readonly pad: Pad })[];
};

/** What a line cuts and what stands beyond it. Looking west, north is to the right; looking north, east is. */
export function sectionModel(scheme: Scheme, along: SectionPlane | SectionLine): SectionModel {
  const line = "axis" in along ? lineOf(along) : along;
  const seen = seenFrom(line);
  const placed = scheme.containers.map(placeContainer);
  const cuts = placed.flatMap((unit) => cutOf(unit, scheme.openings, seen));
  const isCut = new Set(cuts.map(({ placed: unit }) => unit.id));
  return {
    line,
    cuts: cuts.toSorted((a, b) => a.z0Mm - b.z0Mm || a.u0Mm - b.u0Mm),
    beyond: placed
      .filter(({ id }) => !isCut.has(id))
      .flatMap((unit) => beyondOf(unit, seen))
      .toSorted((a, b) => b.awayMm - a.awayMm || (a.placed.id < b.placed.id ? -1 : 1)),
    posts: scheme.posts.flatMap((post) => postOf(post, seen)),
    pads: scheme.pads.flatMap((pad) => padOf(pad, seen)),
  };
}

/** The plane that cuts most units; of several the one nearest to the middle of the building. */
export function fullestPlane(scheme: Scheme, axis: SectionPlane["axis"]): SectionPlane | undefined {
  const corners = scheme.containers.map((container) => solidCorners(placeContainer(container)).slice(0, 4));
  const spans = corners.map((each) => rangeOf(each.map((at) => (axis === "x" ? at.xMm : at.yMm))));
  if (spans.length === 0) return undefined;
  const whole = rangeOf(spans.flatMap(({ least, most }) => [least, most]));
  const middle = (whole.least + whole.most) / 2;
  const tried = spans.map(({ least, most }) => (least + most) / 2);
  const cutBy = (at: number) => spans.filter(({ least, most }) => at > least && at < most).length;
  const best = tried.reduce((kept, at) => {
    const gain = cutBy(at) - cutBy(kept);
    return gain > 0 || (gain === 0 && Math.abs(at - middle) < Math.abs(kept - middle)) ? at : kept;
  });
  return { axis, atMm: best };
}

/** Where an outline in plan is crossed by the line, as places along it. */
function crossings(outline: readonly PlanPoint[], seen: Seen): number[] {
  const places = outline.map(seen);
  return places.flatMap((a, index) => {
    const b = places[(index + 1) % places.length] ?? a;
    return a.away < 0 === b.away < 0 ? [] : [a.u + ((b.u - a.u) * -a.away) / (b.away - a.away)];
  });
}

function cutOf(placed: PlacedContainer, openings: readonly Opening[], seen: Seen): SectionCut[] {
  const { dimensions, baseZMm, topZMm } = placed;
  const crossed = crossings(solidCorners(placed).slice(0, 4), seen);
  if (crossed.length < 2) return [];
  const { least, most } = rangeOf(crossed);
  const own = openings.filter(({ containerId }) => containerId === placed.id);
  return [
    {
      ...{ placed, u0Mm: least, u1Mm: most, z0Mm: baseZMm, z1Mm: topZMm },
      floorMm: baseZMm + dimensions.baseAboveFittingMm + dimensions.bottomRailDepthMm,
      ceilingMm: topZMm - dimensions.proudOfRoofMm - dimensions.topRailDepthMm,
      walls: wallFaces.flatMap((face) => wallOf(placed, face, own, seen)),
    },
  ];
}

const wallFaces: readonly Face[] = ["right", "door", "left", "front"];

function wallOf(placed: PlacedContainer, face: Face, openings: readonly Opening[], seen: Seen): SectionWall[] {
  const frame = faceFrame(placed, face);
  const lengthMm = placed.dimensions.face(face).u1;
  const [a, b] = [seen(frame.origin), seen(pointOnFace(frame, lengthMm, 0))];
  if (a.away < 0 === b.away < 0) return [];
  const share = -a.away / (b.away - a.away);
  const atMm = share * lengthMm;
  return [
    {
      face,
      uMm: a.u + (b.u - a.u) * share,
      openings: openings
        .filter((cut) => cut.face === face && atMm > cut.offsetUm / 1000 && atMm < (cut.offsetUm + cut.widthUm) / 1000)
        .map((opening) => ({
          opening,
          z0Mm: placed.baseZMm + opening.sillUm / 1000,
          z1Mm: placed.baseZMm + (opening.sillUm + opening.heightUm) / 1000,
        })),
    },
  ];
}

function beyondOf(placed: PlacedContainer, seen: Seen): SectionBeyond[] {
  const places = solidCorners(placed).slice(0, 4).map(seen);
  const awayMm = Math.min(...places.map(({ away }) => away));
  if (awayMm < 0) return [];
  const { least, most } = rangeOf(places.map(({ u }) => u));
  return [{ placed, awayMm, u0Mm: least, u1Mm: most, z0Mm: placed.baseZMm, z1Mm: placed.topZMm }];
}

function postOf(post: Post, seen: Seen): (PaperRect & { post: Post })[] {
  const { u, away } = seen({ xMm: post.xUm / 1000, yMm: post.yUm / 1000 });
  const half = sectionWidthMm(post.section) / 2;
  if (Math.abs(away) > half) return [];
  return [{ post, u0Mm: u - half, u1Mm: u + half, z0Mm: post.baseZUm / 1000, z1Mm: post.topZUm / 1000 }];
}

function padOf(pad: Pad, seen: Seen): (PaperRect & { pad: Pad })[] {
  const crossed = crossings(
    padOutline(pad).map(({ uMm, vMm }) => ({ xMm: uMm, yMm: vMm })),
    seen,
  );
  if (crossed.length < 2) return [];
  const { least, most } = rangeOf(crossed);
  return [{ pad, u0Mm: least, u1Mm: most, z0Mm: (pad.topZUm - pad.depthUm) / 1000, z1Mm: pad.topZUm / 1000 }];
}

const rangeOf = (values: readonly number[]): { least: number; most: number } => ({
  least: Math.min(...values),
  most: Math.max(...values),
});
