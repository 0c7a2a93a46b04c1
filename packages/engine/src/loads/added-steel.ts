import type { Opening, PointMm, Scheme } from "@cornerway/schema";
import { steelKgPerMm3 } from "../catalog/materials.ts";
import { gravity } from "../catalog/gravity.ts";
import { findSection } from "../catalog/sections/find-section.ts";
import { frameTube, openingFrame } from "../catalog/sections/frame-tubes.ts";
import type { Section } from "../catalog/sections/section.ts";
import { faceFrame, pointOnFace } from "../geometry/face-frame.ts";
import { placeContainer, type PlacedContainer } from "../geometry/place.ts";
import { LastMade } from "../numerics/last-made.ts";
import { toMm } from "../units.ts";

/** Steel added to a scheme, at its centre of mass in plan; the frame of a wall bar by bar, where each bar weighs on it. */
export type AddedSteel = {
  readonly elementId: string;
  /** The unit it belongs to and travels with when lifted; absent for steel erected apart. */
  readonly containerId?: string;
  readonly weightN: number;
  readonly at: PointMm;
  /** The face it lies on, for the frame of a hatch. */
  readonly surface?: "floor" | "roof";
};

/** Posts, beams and the frames of openings by their sections; a section the catalogue lacks weighs as the frames' tube. */
export const addedSteel = (scheme: Scheme): readonly AddedSteel[] =>
  last.take(scheme.openings, [scheme.containers, scheme.posts, scheme.beams], () => [
    ...posts(scheme),
    ...beams(scheme),
    ...frames(scheme),
  ]);

const last = new LastMade<readonly AddedSteel[]>();

const posts = ({ posts: drawn }: Scheme): AddedSteel[] =>
  drawn.map(({ id, xUm, yUm, baseZUm, topZUm, section }) => ({
    elementId: id,
    weightN: weightN(named(section), toMm(topZUm - baseZUm)),
    at: { xMm: toMm(xUm), yMm: toMm(yUm), zMm: toMm(baseZUm + topZUm) / 2 },
  }));

const beams = ({ beams: drawn }: Scheme): AddedSteel[] =>
  drawn.map(({ id, from, to, section }) => {
    const [dx, dy, dz] = [toMm(to.xUm - from.xUm), toMm(to.yUm - from.yUm), toMm(to.zUm - from.zUm)];
    return {
      elementId: id,
      weightN: weightN(named(section), Math.sqrt(dx * dx + dy * dy + dz * dz)),
      at: {
        xMm: toMm(from.xUm + to.xUm) / 2,
        yMm: toMm(from.yUm + to.yUm) / 2,
        zMm: toMm(from.zUm + to.zUm) / 2,
      },
    };
  });

/** Two jambs, a header and a sill round every framed opening. */
const frames = ({ containers, openings }: Scheme): AddedSteel[] =>
  openings.flatMap((opening) => {
    const container = containers.find(({ id }) => id === opening.containerId);
    if (!opening.framed || container === undefined) return [];
    const bars = opening.face === "floor" || opening.face === "roof" ? hatchFrame : wallFrame;
    return bars(opening, placeContainer(container)).map((bar) => ({
      elementId: opening.id,
      containerId: opening.containerId,
      ...bar,
    }));
  });

type Bar = Pick<AddedSteel, "weightN" | "at" | "surface">;

/**
 * Bar by bar in the plane of the posts, where it stands in the wall: an even load is a half in the middle and a quarter at each end,
 * which bends what carries it as much, w L²/8. A jamb stands on the rail.
 */
function wallFrame(opening: Opening, placed: PlacedContainer): Bar[] {
  const { jamb, header, sill } = openingFrame(opening);
  const [from, wide] = [toMm(opening.offsetUm), toMm(opening.widthUm)];
  const [low, high] = [toMm(opening.sillUm), toMm(opening.heightUm)];
  const face = faceFrame(placed, opening.face);
  const behindMm = toPostAxisMm(placed, opening.face);
  const at = (uMm: number, vMm: number): PointMm => {
    const { xMm, yMm, zMm } = pointOnFace(face, uMm, vMm);
    return { xMm: xMm - face.normal.xMm * behindMm, yMm: yMm - face.normal.yMm * behindMm, zMm };
  };
  const level = (section: Section, vMm: number): Bar[] =>
    ([0, 0.5, 1] as const).map((share) => ({
      weightN: weightN(section, wide) * (share === 0.5 ? 0.5 : 0.25),
      at: at(from + share * wide, vMm),
    }));
  const jambs = [from, from + wide].map((uMm): Bar => ({ weightN: weightN(jamb, high), at: at(uMm, low) }));
  return [...jambs, ...level(header, low + high), ...level(sill, low)];
}

function toPostAxisMm({ dimensions }: PlacedContainer, face: Opening["face"]): number {
  const { lengthMm, widthMm, holeSpacingLengthwiseMm, holeSpacingCrosswiseMm } = dimensions;
  return (
    (face === "left" || face === "right" ? widthMm - holeSpacingCrosswiseMm : lengthMm - holeSpacingLengthwiseMm) / 2
  );
}

/** In the middle of the hatch, from where it goes to both rails. */
function hatchFrame(opening: Opening, placed: PlacedContainer): Bar[] {
  const { jamb, header, sill } = openingFrame(opening);
  const [wide, high] = [toMm(opening.widthUm), toMm(opening.heightUm)];
  return [
    {
      weightN: 2 * weightN(jamb, high) + weightN(header, wide) + weightN(sill, wide),
      ...((opening.face === "floor" || opening.face === "roof") && { surface: opening.face }),
      at: pointOnFace(
        faceFrame(placed, opening.face),
        toMm(opening.offsetUm) + wide / 2,
        toMm(opening.sillUm) + high / 2,
      ),
    },
  ];
}

const named = (section: string): Section => findSection(section) ?? frameTube;

const weightN = ({ areaMm2 }: Section, lengthMm: number): number => areaMm2 * lengthMm * steelKgPerMm3 * gravity.value;
