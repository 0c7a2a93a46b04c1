import type { PointMm, Scheme } from "@cornerway/schema";
import { steelKgPerMm3 } from "../catalog/materials.ts";
import { gravity } from "../catalog/gravity.ts";
import { findSection } from "../catalog/sections/find-section.ts";
import { frameTube, openingFrame } from "../catalog/sections/frame-tubes.ts";
import type { Section } from "../catalog/sections/section.ts";
import { faceFrame, pointOnFace } from "../geometry/face-frame.ts";
import { placeContainer } from "../geometry/place.ts";
import { toMm } from "../units.ts";

/** Steel added to a scheme, at its centre of mass. */
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
export const addedSteel = (scheme: Scheme): AddedSteel[] => [...posts(scheme), ...beams(scheme), ...frames(scheme)];

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

/** Two jambs, a header and a sill round every framed opening, in the middle of it. */
const frames = ({ containers, openings }: Scheme): AddedSteel[] =>
  openings.flatMap((opening) => {
    const container = containers.find(({ id }) => id === opening.containerId);
    if (!opening.framed || container === undefined) return [];
    const { jamb, header, sill } = openingFrame(opening);
    const [wide, high] = [toMm(opening.widthUm), toMm(opening.heightUm)];
    const bars = 2 * weightN(jamb, high) + weightN(header, wide) + weightN(sill, wide);
    const face = faceFrame(placeContainer(container), opening.face);
    return [
      {
        elementId: opening.id,
        containerId: opening.containerId,
        weightN: bars,
        ...((opening.face === "floor" || opening.face === "roof") && { surface: opening.face }),
        at: pointOnFace(face, toMm(opening.offsetUm) + wide / 2, toMm(opening.sillUm) + high / 2),
      },
    ];
  });

const named = (section: string): Section => findSection(section) ?? frameTube;

const weightN = ({ areaMm2 }: Section, lengthMm: number): number => areaMm2 * lengthMm * steelKgPerMm3 * gravity.value;
