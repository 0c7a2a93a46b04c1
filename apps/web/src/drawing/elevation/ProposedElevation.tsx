import { elevationModel } from "@cornerway/engine";
import { useMemo } from "react";
import type { Scheme, UnitSystem } from "@cornerway/schema";
import { hatchFill } from "../../look/hatch.ts";
import { Hexagon } from "../../look/Hexagon.tsx";
import { dash, ink } from "../../look/ink.ts";
import { Cloud } from "../cloud/Cloud.tsx";
import type { Side } from "../contract.ts";
import { PadSection } from "../ground/PadSection.tsx";
import { elevationEye } from "../objects/object-eye.ts";
import { objectInk } from "../objects/object-ink.ts";
import { asProposed, InkPaths } from "../objects/Objects.tsx";
import { rectToPx } from "../paper-to-px.ts";
import { inset, rectPath, type RectPx } from "../px-path.ts";
import type { ViewTransform } from "../view-transform.ts";
import { useUnits } from "../../units/use-units.ts";
import { tagSpots } from "./elevation-labels.ts";
import { schemeChanges, type SchemeChanges } from "./scheme-changes.ts";

type ProposedElevationProps = { before: Scheme; after: Scheme; side: Side; view: ViewTransform };

/** What a request would draw: steel dashed with its paired hatch, units and openings dashed, inside the engineer's cloud. */
export function ProposedElevation({ before, after, side, view }: ProposedElevationProps) {
  const units = useUnits();
  const { steel, outlines, pads, added, around, tags } = useMemo(
    () => proposedParts(before, after, side, view, units),
    [before, after, side, view, units],
  );
  const tagHeight = ({ xPx, yPx, widthPx, heightPx }: RectPx): number => {
    const free = tagShares
      .map((share) => yPx + heightPx * share)
      .find((y) => tags.every((tag) => Math.hypot(tag.xPx - xPx - widthPx / 2, tag.yPx - y) > 30));
    return free ?? yPx + heightPx * 0.36;
  };
  return (
    <g className="proposed">
      {pads.map(({ id, rect }) => (
        <PadSection key={id} rect={rect} seed={id} proposed />
      ))}
      {outlines.map(({ id, rect }) => (
        <path
          key={id}
          d={rectPath(rect)}
          fill="none"
          stroke={ink.prussian}
          strokeWidth={1.3}
          strokeDasharray={dash.proposed}
        />
      ))}
      {steel.map(({ id, tag, rect }) => (
        <g key={id}>
          <path d={rectPath(rect)} fill={ink.paper} fillOpacity={0.8} />
          <path
            d={rectPath(rect)}
            fill={hatchFill("works with steel", "small")}
            stroke={ink.prussian}
            strokeWidth={1.2}
            strokeDasharray={dash.proposed}
          />
          <Hexagon tag={tag} xPx={rect.xPx + rect.widthPx / 2} yPx={tagHeight(rect)} colour={ink.prussian} />
        </g>
      ))}
      {added.map(({ id, paths }) => (
        <InkPaths key={id} paths={asProposed(paths)} />
      ))}
      {around !== null && <Cloud rect={around} />}
    </g>
  );
}

/** Heights along a proposed post at which its tag may stand, best first. */
const tagShares = [0.36, 0.62, 0.24, 0.74, 0.12, 0.86];

type Part = { id: string; tag: string; rect: RectPx };

function proposedParts(before: Scheme, after: Scheme, side: Side, view: ViewTransform, units: UnitSystem) {
  const changes = schemeChanges(before, after);
  const model = elevationModel(after, side);
  const touched = touches(changes);
  const steel = model.posts
    .filter(({ post }) => touched(post.id))
    .map((place): Part => ({ id: place.post.id, tag: place.post.tag, rect: rectToPx(view, place) }));
  const pads = model.pads
    .filter(({ pad }) => touched(pad.id))
    .map((place): Part => ({ id: place.pad.id, tag: place.pad.tag, rect: rectToPx(view, place) }));
  const outlines = model.faces.flatMap((face): Part[] => [
    ...(touched(face.container.id)
      ? [{ id: face.container.id, tag: face.container.tag, rect: rectToPx(view, face) }]
      : []),
    ...face.openings
      .filter(({ opening }) => touched(opening.id))
      .map((place) => ({ id: place.opening.id, tag: place.opening.tag, rect: rectToPx(view, place) })),
  ]);
  const eye = elevationEye(side, view);
  const added = model.objects
    .filter(({ object }) => touched(object.id))
    .map(({ object, hidden }) => ({ id: object.id, ...objectInk(object, eye, hidden, units) }));
  const tags = tagSpots(model, view);
  const around = bounds([...steel, ...pads, ...outlines, ...added].map(({ rect }) => rect));
  return { steel, pads, outlines, added, tags, around };
}

const touches =
  ({ added, changed }: SchemeChanges) =>
  (id: string): boolean =>
    added.has(id) || changed.has(id);

/** The cloud's rectangle: everything it speaks of with 14 px of air. */
function bounds(rects: readonly RectPx[]): RectPx | null {
  if (rects.length === 0) return null;
  const left = Math.min(...rects.map(({ xPx }) => xPx));
  const top = Math.min(...rects.map(({ yPx }) => yPx));
  const right = Math.max(...rects.map(({ xPx, widthPx }) => xPx + widthPx));
  const bottom = Math.max(...rects.map(({ yPx, heightPx }) => yPx + heightPx));
  return inset({ xPx: left, yPx: top, widthPx: right - left, heightPx: bottom - top }, -14);
}
