import type { Container, PointMm } from "@cornerway/schema";
import type { PlacedStrand } from "../flow/run-forces.ts";
import type { SolvedStretch } from "../flow/solved-path.ts";
import { faceFrame } from "../geometry/face-frame.ts";
import { placeContainer, toLocal, type PlacedContainer } from "../geometry/place.ts";
import type { ElevationFace, SideFace } from "./elevation-faces.ts";
import { dot, type PictureEye } from "./picture-eye.ts";
import { seenFrom } from "./section-line.ts";
import type { SectionCut, SectionModel } from "./section-model.ts";

/** Strands in the sheets of the faces at the front of an elevation. */
export function strandsOnElevation(strands: readonly PlacedStrand[], faces: readonly ElevationFace[]): PlacedStrand[] {
  const shown = new Set(faces.filter(({ beyond }) => !beyond).map(({ container, face }) => `${container.id} ${face}`));
  return strands.filter(({ unitId, wall }) => shown.has(`${unitId} ${wall}`));
}

/** What a view shows of the path: strands, and uprights that carry strokes of their own. */
export type SeenPath = { readonly strands: readonly PlacedStrand[]; readonly uprights: readonly SolvedStretch[] };
type WholePath = { readonly strands: readonly PlacedStrand[]; readonly path: readonly SolvedStretch[] };

/** On one unit of a picture: the sheets turned to the eye, and the corner posts at their edges. */
export function pathOnPicture({ strands, path }: WholePath, container: Container, eye: PictureEye): SeenPath {
  const unit = placeContainer(container);
  const shown = sideFaces.filter((face) => dot(faceFrame(unit, face).normal, eye.towards) > FACES_EYE);
  return {
    strands: strands.filter(({ unitId, wall }) => unitId === unit.id && shown.includes(wall)),
    uprights: cornerPostsOf(unit, path).filter(({ from }) => facesAt(unit, from).some((face) => shown.includes(face))),
  };
}

/** In a section: the far walls of the units it cuts, seen from inside. */
export function pathInSection({ strands, path }: WholePath, { cuts, line }: SectionModel): SeenPath {
  const place = seenFrom(line);
  const beyond = ({ xMm, yMm }: PointMm): boolean => place({ xMm, yMm }).away > 0;
  const isCutIn = ({ walls }: SectionCut, wall: SideFace): boolean => walls.some(({ face }) => face === wall);
  return {
    strands: strands.filter(({ unitId, wall, points }) => {
      const cut = cuts.find(({ placed }) => placed.id === unitId);
      return cut !== undefined && !isCutIn(cut, wall) && points.every(beyond);
    }),
    uprights: cuts.flatMap(({ placed }) => cornerPostsOf(placed, path).filter(({ from }) => beyond(from))),
  };
}

const sideFaces: readonly SideFace[] = ["right", "door", "left", "front"];
/** Turned to the eye by more than a sliver, as faces of a picture are. */
const FACES_EYE = 0.05;

const cornerPostsOf = ({ id }: PlacedContainer, path: readonly SolvedStretch[]): SolvedStretch[] =>
  path.filter(({ elementId, via }) => elementId === id && via === "corner post");

/** The two faces that meet at the corner a place is nearest to. */
function facesAt({ frame }: PlacedContainer, at: PointMm): SideFace[] {
  const local = toLocal(frame, at);
  return [local.xMm < 0 ? "front" : "door", local.yMm < 0 ? "right" : "left"];
}

/** Where load goes through a level: downwards positive, kN. */
export type Crossing = {
  readonly id: string;
  readonly elementId: string;
  readonly at: PointMm;
  readonly forceKn: number;
};

/**
 * What goes through one level of the site, mm: strands where they cross it, and uprights that stand through it with the
 * force they carry there. Together they carry what stands above, but for what runs down a post as strand.
 */
export function crossingsAt(zMm: number, strands: readonly PlacedStrand[], path: readonly SolvedStretch[]): Crossing[] {
  return [...path.flatMap((stretch) => uprightAt(zMm, stretch)), ...strands.flatMap((strand) => strandAt(zMm, strand))];
}

function uprightAt(zMm: number, { id, elementId, via, from, to, alongKn }: SolvedStretch): Crossing[] {
  if ((via !== "corner post" && via !== "added post") || from.zMm <= zMm || to.zMm > zMm) return [];
  return [{ id, elementId, at: { ...from, zMm }, forceKn: forceAt(zMm, alongKn) }];
}

/** Between two heights the force changes evenly. */
function forceAt(zMm: number, alongKn: SolvedStretch["alongKn"]): number {
  const below = alongKn.find((each) => each.zMm <= zMm);
  const above = alongKn.findLast((each) => each.zMm > zMm);
  if (below === undefined || above === undefined) return (below ?? above)?.forceKn ?? 0;
  return above.forceKn + ((below.forceKn - above.forceKn) * (above.zMm - zMm)) / (above.zMm - below.zMm);
}

function strandAt(zMm: number, { id, unitId, forceKn, points }: PlacedStrand): Crossing[] {
  return points.slice(1).flatMap((to, n): Crossing[] => {
    const from = points[n] ?? to;
    const down = from.zMm > zMm && to.zMm <= zMm;
    if (!down && !(from.zMm <= zMm && to.zMm > zMm)) return [];
    const share = (from.zMm - zMm) / (from.zMm - to.zMm);
    const at = {
      xMm: from.xMm + (to.xMm - from.xMm) * share,
      yMm: from.yMm + (to.yMm - from.yMm) * share,
      zMm,
    };
    return [{ id: `${id} at ${n}`, elementId: unitId, at, forceKn: down ? forceKn : -forceKn }];
  });
}
