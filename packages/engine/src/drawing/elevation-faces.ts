import type { Container, Face, Opening, Scheme } from "@cornerway/schema";
import { faceFrame, pointOnFace } from "../geometry/face-frame.ts";
import { placeContainer, type PlacedContainer } from "../geometry/place.ts";
import { storeysOf } from "../geometry/storeys.ts";
import type { Side } from "./side.ts";
import { project } from "./projection.ts";
import type { PaperRect } from "./corrugation.ts";

export type ElevationOpening = PaperRect & { opening: Opening };

/** One face of a unit as an elevation shows it: its outline on paper and what is cut in it. */
export type ElevationFace = PaperRect & {
  container: Container;
  placed: PlacedContainer;
  face: SideFace;
  /** Distance from the eye of the face's middle and of its nearest corner, mm, on the site's axis. */
  depthMm: number;
  nearestMm: number;
  /** 1 where offsets run to the right on paper, −1 where they run to the left. */
  along: 1 | -1;
  /** Paper length over true length: 1 for a face square to the view. */
  squeeze: number;
  /** Set back behind the front of its storey: drawn lighter, without tags. */
  beyond: boolean;
  openings: readonly ElevationOpening[];
};

export type SideFace = Extract<Face, "left" | "right" | "front" | "door">;
const sideFaces: readonly SideFace[] = ["left", "right", "front", "door"];

/** Farther behind the front of its storey than this, a face is beyond, mm. */
const beyondMm = 900;
/** Faces turned further away than this show as a line, not as a face (share of their length seen). */
const leastSqueeze = 0.03;

/**
 * Every face turned to the side looked at, farthest first, so that nearer ones are drawn over it. One that a single
 * nearer face covers whole is left out.
 */
export function elevationFaces(scheme: Scheme, side: Side): ElevationFace[] {
  const openings = openingsByUnit(scheme);
  const faces = scheme.containers.flatMap((container) =>
    facesTowards(container, side, openings.get(container.id) ?? []),
  );
  const front = frontByUnit(scheme, faces);
  const nearerLast = faces
    .map((face) => ({ ...face, beyond: face.nearestMm > (front.get(face.container.id) ?? face.nearestMm) + beyondMm }))
    .toSorted(
      (a, b) => b.nearestMm - a.nearestMm || b.depthMm - a.depthMm || (a.container.id < b.container.id ? -1 : 1),
    );
  return nearerLast.filter((face, at) => !nearerLast.slice(at + 1).some((nearer) => covers(nearer, face)));
}

const covers = (nearer: ElevationFace, face: ElevationFace): boolean =>
  nearer.nearestMm < face.nearestMm - 1 &&
  nearer.u0Mm <= face.u0Mm + 1 &&
  nearer.u1Mm >= face.u1Mm - 1 &&
  nearer.z0Mm <= face.z0Mm + 1 &&
  nearer.z1Mm >= face.z1Mm - 1;

function facesTowards(container: Container, side: Side, openings: readonly Opening[]): ElevationFace[] {
  const placed = placeContainer(container);
  return sideFaces.flatMap((face) => {
    const frame = faceFrame(placed, face);
    if (project(side, frame.normal).depthMm > -leastSqueeze) return [];
    const lengthMm = placed.dimensions.face(face).u1;
    const start = project(side, frame.origin);
    const end = project(side, pointOnFace(frame, lengthMm, 0));
    const along = end.uMm >= start.uMm ? 1 : -1;
    const squeeze = Math.abs(end.uMm - start.uMm) / lengthMm;
    return [
      {
        container,
        placed,
        face,
        u0Mm: Math.min(start.uMm, end.uMm),
        u1Mm: Math.max(start.uMm, end.uMm),
        z0Mm: placed.baseZMm,
        z1Mm: placed.topZMm,
        depthMm: (start.depthMm + end.depthMm) / 2,
        nearestMm: Math.min(start.depthMm, end.depthMm),
        along,
        squeeze,
        beyond: false,
        openings: openings
          .filter((opening) => opening.face === face)
          .map((opening) => openingOnPaper(opening, start.uMm, along * squeeze, placed.baseZMm)),
      } satisfies ElevationFace,
    ];
  });
}

function openingOnPaper(opening: Opening, startMm: number, perMm: number, baseMm: number): ElevationOpening {
  const from = startMm + (opening.offsetUm / 1000) * perMm;
  const to = startMm + ((opening.offsetUm + opening.widthUm) / 1000) * perMm;
  const z0Mm = baseMm + opening.sillUm / 1000;
  return { opening, u0Mm: Math.min(from, to), u1Mm: Math.max(from, to), z0Mm, z1Mm: z0Mm + opening.heightUm / 1000 };
}

function openingsByUnit(scheme: Scheme): Map<string, Opening[]> {
  const byUnit = new Map<string, Opening[]>();
  for (const opening of scheme.openings)
    byUnit.set(opening.containerId, [...(byUnit.get(opening.containerId) ?? []), opening]);
  return byUnit;
}

/** The nearest face of each unit's storey. */
function frontByUnit(scheme: Scheme, faces: readonly ElevationFace[]): Map<string, number> {
  const nearest = new Map<string, number>();
  for (const { container, nearestMm } of faces)
    nearest.set(container.id, Math.min(nearestMm, nearest.get(container.id) ?? nearestMm));
  const front = new Map<string, number>();
  for (const { containerIds } of storeysOf(scheme)) {
    const least = Math.min(...containerIds.map((id) => nearest.get(id) ?? Infinity));
    for (const id of containerIds) front.set(id, least);
  }
  return front;
}

/** A length along the face, from the edge its offsets start at, as u on paper. */
export const onPaper = (face: ElevationFace, offsetMm: number): number =>
  (face.along === 1 ? face.u0Mm : face.u1Mm) + face.along * face.squeeze * offsetMm;
