import { onPicture, pictureEye, seenOnIsometric, type EyePlace, type IsoPoint } from "@cornerway/engine";
import type { Scheme } from "@cornerway/schema";
import { useDeferredValue, useMemo } from "react";
import { hatchFill } from "../../look/hatch.ts";
import { dash, ink } from "../../look/ink.ts";
import { useUnits } from "../../units/use-units.ts";
import { Cloud } from "../cloud/Cloud.tsx";
import { schemeChanges } from "../elevation/scheme-changes.ts";
import { atScale } from "../objects/at-scale.ts";
import type { ObjectEye } from "../objects/object-eye.ts";
import { objectInk } from "../objects/object-ink.ts";
import { asProposed, InkPaths } from "../objects/Objects.tsx";
import { boundsOf } from "../objects/px-shapes.ts";
import { inset, polygonPath, type RectPx } from "../px-path.ts";
import type { ScreenPoint, ViewTransform } from "../view-transform.ts";
import { isoToPx } from "./iso-to-px.ts";
import { pictureOf } from "./picture-of.ts";

type ProposedIsometricProps = { before: Scheme; after: Scheme; eye: EyePlace; view: ViewTransform };

/**
 * What a request would draw, on the picture of the whole: outlines dashed, steel with its paired hatch, inside the
 * engineer's cloud. Drawn over what stands before it: whoever is asked sees all of it.
 */
export function ProposedIsometric({ before, after: asked, eye: place, view }: ProposedIsometricProps) {
  const system = useUnits();
  const after = useDeferredValue(asked); // while it is drawn by hand the picture of it follows when there is time
  const { outlines, steel, added, around } = useMemo(() => {
    const changes = schemeChanges(before, after);
    const touched = (id: string) => changes.added.has(id) || changes.changed.has(id);
    const { middle } = pictureOf(before, place);
    const toPx = (point: IsoPoint) => isoToPx(view, middle, point);
    const { outlines: lines, steel: faces } = proposedFaces(after, place, touched, toPx);
    const eye = pictureEye(place);
    const objectEye: ObjectEye = { kind: "isometric", pxPerM: view.pxPerM, toPx: (at) => toPx(onPicture(eye, at)) };
    const objects = atScale(seenOnIsometric(after, eye), view.pxPerM)
      .filter(({ object }) => touched(object.id))
      .map(({ object, hidden }) => ({ id: object.id, ...objectInk(object, objectEye, hidden, system) }));
    const corners = [...lines.flat(), ...faces.flat(), ...objects.flatMap(({ rect }) => cornersOf(rect))];
    return {
      ...{ outlines: lines, steel: faces, added: objects },
      around: corners.length === 0 ? null : inset(boundsOf(corners), -14),
    };
  }, [before, after, place, view, system]);
  return (
    <g className="proposed" pointerEvents="none">
      {steel.map((outline, index) => (
        <path
          key={index}
          d={polygonPath(outline)}
          fill={hatchFill("works with steel", "small")}
          stroke={ink.prussian}
          strokeWidth={1.1}
          strokeDasharray="4 2"
        />
      ))}
      {outlines.map((outline, index) => (
        <path
          key={index}
          d={polygonPath(outline)}
          fill="none"
          stroke={ink.prussian}
          strokeWidth={1.2}
          strokeDasharray={dash.proposed}
        />
      ))}
      {added.map(({ id, paths }) => (
        <InkPaths key={id} paths={asProposed(paths)} />
      ))}
      {around !== null && <Cloud rect={around} />}
    </g>
  );
}

/** Outlines of units, openings and pads that are new or altered, and the faces of such steel, px. */
function proposedFaces(
  after: Scheme,
  place: EyePlace,
  touched: (id: string) => boolean,
  toPx: (point: IsoPoint) => ScreenPoint,
): { outlines: ScreenPoint[][]; steel: ScreenPoint[][] } {
  const { things } = pictureOf(after, place);
  const outlines = things.flatMap((thing): ScreenPoint[][] => {
    if (thing.kind !== "unit") return thing.kind === "pad" && touched(thing.id) ? [thing.silhouette.map(toPx)] : [];
    const openings = thing.faces
      .flatMap((face) => face.openings)
      .filter(({ opening }) => touched(opening.id))
      .map(({ outline }) => outline.map(toPx));
    return touched(thing.container.id) ? [thing.silhouette.map(toPx), ...openings] : openings;
  });
  const steel = things.flatMap((thing) =>
    thing.kind === "unit" || thing.kind === "pad" || !touched(thing.id)
      ? []
      : thing.faces.map(({ outline }) => outline.map(toPx)),
  );
  return { outlines, steel };
}

const cornersOf = ({ xPx, yPx, widthPx, heightPx }: RectPx): ScreenPoint[] => [
  { xPx, yPx },
  { xPx: xPx + widthPx, yPx: yPx + heightPx },
];
