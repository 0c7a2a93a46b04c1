import type { Container, Opening, PointMm, Scheme } from "@cornerway/schema";
import { faceFrame, pointOnFace } from "../geometry/face-frame.ts";
import { placeContainer, type PlacedContainer } from "../geometry/place.ts";
import type { SideFace } from "./elevation-faces.ts";
import { convexHull, holdsAll } from "./convex-hull.ts";
import { drawingOrder } from "./drawing-order.ts";
import { groundShadow, roofShadows, standing, type Standing } from "./iso-shadows.ts";
import { dot, isometricEye, onPicture, type PictureEye, type IsoPoint } from "./picture-eye.ts";
import { addedSolids, type AddedSolid } from "./added-solids.ts";
import { outlineBounds } from "./outline-bounds.ts";
import { facesOf, type Solid } from "./solid.ts";

export type IsoFace = {
  face: SideFace | "roof";
  outline: readonly IsoPoint[];
  /** Away from the sun, which stands in the south-west. */
  shaded: boolean;
  folds: readonly (readonly [IsoPoint, IsoPoint])[];
  openings: readonly {
    opening: Opening;
    outline: readonly IsoPoint[];
    mullions: readonly (readonly [IsoPoint, IsoPoint])[];
  }[];
};

export type IsoUnit = {
  container: Container;
  silhouette: readonly IsoPoint[];
  faces: readonly IsoFace[];
  /** Shadows of higher units on the roof. */
  roofShadows: readonly (readonly IsoPoint[])[];
};

/** An added post, beam, seat or pad: the sides of it that face the eye. */
export type IsoAdded = {
  id: string;
  kind: AddedSolid["kind"];
  silhouette: readonly IsoPoint[];
  faces: readonly { outline: readonly IsoPoint[]; shaded: boolean }[];
};

export type IsoThing = ({ kind: "unit" } & IsoUnit) | IsoAdded;

export type IsometricModel = {
  /** All that is drawn, farthest first: each hides what it stands before. */
  things: readonly IsoThing[];
  /** The units among them, farthest first. */
  units: readonly IsoUnit[];
  /** Shadows on the ground, as outlines. */
  shadows: readonly (readonly IsoPoint[])[];
  middle: IsoPoint;
};

/** The building as a picture without vanishing point, from the south-east and above unless another eye is given. */
export function isometricModel(scheme: Scheme, eye: PictureEye = isometricEye): IsometricModel {
  const stands = scheme.containers.map((container) => standing(placeContainer(container)));
  const solids: PictureSolid[] = [...stands.map(unitSolid), ...addedSolids(scheme)];
  const drawn = drawingOrder(solids, eye).map((solid): IsoThing => {
    if (solid.kind !== "unit") return addedOf(solid, eye);
    const openings = scheme.openings.filter(({ containerId }) => containerId === solid.id);
    return { kind: "unit", ...unitOf(solid.stands, stands, openings, eye) };
  });
  const things = drawn.filter((thing, at) => thing.kind === "unit" || !isHidden(thing, drawn.slice(at + 1)));
  const units = things.filter((thing) => thing.kind === "unit");
  const ground = scheme.site.groundZUm / 1000;
  return {
    things,
    units,
    shadows: stands.map((unit) => groundShadow(unit, ground, eye)),
    middle: middleOf(units.flatMap(({ silhouette }) => silhouette)),
  };
}

/** True when a single nearer thing covers the whole of it. */
const isHidden = ({ silhouette }: IsoThing, nearer: readonly IsoThing[]): boolean =>
  nearer.some((other) => holdsAll(other.silhouette, silhouette));

type PictureSolid = (Solid & { kind: "unit"; stands: Standing }) | AddedSolid;

const unitSolid = (stands: Standing): PictureSolid => ({
  kind: "unit",
  id: stands.unit.id,
  corners: stands.corners,
  stands,
});

function addedOf(solid: AddedSolid, eye: PictureEye): IsoAdded {
  return {
    id: solid.id,
    kind: solid.kind,
    silhouette: convexHull(solid.corners.map((at) => onPicture(eye, at))),
    faces: facesOf(solid)
      .filter(({ normal }) => facesEye(normal, eye))
      .map(({ outline, normal }) => ({
        outline: outline.map((at) => onPicture(eye, at)),
        shaded: normal.zMm < leastUpwards && !facesSun(normal),
      })),
  };
}

/** Steeper than this a side takes the light from above whatever way it faces. */
const leastUpwards = 0.5;

/** Turned to the eye by more than a sliver. */
const facesEye = (normal: PointMm, eye: PictureEye): boolean => dot(normal, eye.towards) > 0.05;
/** Towards the sun in plan: south and west. */
const facesSun = (normal: PointMm): boolean => -normal.xMm * 0.55 - normal.yMm > 0.2;

const sideFaces: readonly SideFace[] = ["left", "right", "front", "door"];

function unitOf(stands: Standing, all: readonly Standing[], openings: readonly Opening[], eye: PictureEye): IsoUnit {
  const { unit: placed, corners } = stands;
  const shown = sideFaces.filter((face) => facesEye(faceFrame(placed, face).normal, eye));
  const faces = [...shown, "roof" as const].map((face) =>
    faceOf(
      placed,
      face,
      openings.filter((opening) => opening.face === face),
      eye,
    ),
  );
  return {
    container: placed.container,
    silhouette: convexHull(corners.map((at) => onPicture(eye, at))),
    faces,
    roofShadows: roofShadows(stands, all, eye),
  };
}

function faceOf(
  placed: PlacedContainer,
  face: IsoFace["face"],
  openings: readonly Opening[],
  eye: PictureEye,
): IsoFace {
  const frame = faceFrame(placed, face);
  const { u1, v1 } = placed.dimensions.face(face);
  const at = (u: number, v: number) => onPicture(eye, pointOnFace(frame, u, v));
  const quad = (u0: number, u9: number, v0: number, v9: number) => [at(u0, v0), at(u9, v0), at(u9, v9), at(u0, v9)];
  return {
    face,
    outline: quad(0, u1, 0, v1),
    shaded: face !== "roof" && !facesSun(frame.normal),
    folds: face === "roof" ? [] : foldsOf(placed, face, at, openings),
    openings: openings.map((opening) => {
      const [u, v, w, h] = [
        opening.offsetUm / 1000,
        opening.sillUm / 1000,
        opening.widthUm / 1000,
        opening.heightUm / 1000,
      ];
      const parts = opening.use === "window" || opening.use === "door" ? Math.max(1, Math.round(w / 950)) : 1;
      const mullions = Array.from({ length: parts - 1 }, (_, index) => {
        const across = u + ((index + 1) * w) / parts;
        return [at(across, v), at(across, v + h)] as const;
      });
      return { opening, outline: quad(u, u + w, v, v + h), mullions };
    }),
  };
}

type At = (u: number, v: number) => IsoPoint;

function foldsOf(
  placed: PlacedContainer,
  face: SideFace,
  at: At,
  openings: readonly Opening[],
): [IsoPoint, IsoPoint][] {
  const zone = placed.dimensions.sheetZone(face);
  const long = face === "left" || face === "right";
  const pitch = (long ? placed.dimensions.corrugationPitchMm.side : placed.dimensions.corrugationPitchMm.end) * 1.5;
  const folds: [IsoPoint, IsoPoint][] = [];
  for (let u = zone.u0 + pitch / 2; u < zone.u1; u += pitch) {
    const cut = openings.filter(
      ({ offsetUm, widthUm }) => u > offsetUm / 1000 - 40 && u < (offsetUm + widthUm) / 1000 + 40,
    );
    const foot = Math.min(zone.v1, ...cut.map(({ sillUm }) => sillUm / 1000));
    const head = Math.max(zone.v0, ...cut.map(({ sillUm, heightUm }) => (sillUm + heightUm) / 1000));
    if (cut.length === 0) folds.push([at(u, zone.v0), at(u, zone.v1)]);
    else {
      if (foot > zone.v0 + 120) folds.push([at(u, zone.v0), at(u, foot)]);
      if (head < zone.v1 - 120) folds.push([at(u, head), at(u, zone.v1)]);
    }
  }
  return folds;
}

function middleOf(points: readonly IsoPoint[]): IsoPoint {
  const { left, right, top, foot } = outlineBounds(points);
  return { rightMm: (left + right) / 2, downMm: (top + foot) / 2 };
}
