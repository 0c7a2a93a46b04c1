import {
  isometricPlace,
  onPicture,
  pictureEye,
  seenOnIsometric,
  type IsoAdded,
  type IsoFace,
  type IsoPoint,
  type IsoUnit,
} from "@cornerway/engine";
import { eyeCompass } from "./eye-words.ts";
import { isoToPx } from "./iso-to-px.ts";
import { pictureOf } from "./picture-of.ts";
import { atScale } from "../objects/at-scale.ts";
import type { Container } from "@cornerway/schema";
import { memo, useMemo } from "react";
import { hatchFill, pencilFill } from "../../look/hatch.ts";
import { ink, verdictInk } from "../../look/ink.ts";
import type { IsometricViewProps, LayerPlace } from "../contract.ts";
import { DrawnElement } from "../DrawnElement.tsx";
import { ElementTree } from "../ElementTree.tsx";
import { itemOf } from "../element-setting.ts";
import { entryElement } from "../entry-element.ts";
import { LayerOn } from "../LayerOn.tsx";
import type { ElementVerdict } from "../marks/element-verdicts.ts";
import { Objects } from "../objects/Objects.tsx";
import { polygonPath, polylinePath, type RectPx } from "../px-path.ts";
import { sameDrawn } from "../same-drawn.ts";
import { useElementWords } from "../use-element-words.ts";
import type { ScreenPoint, ViewTransform } from "../view-transform.ts";

/** The whole from above, drawn far to near so that each thing hides what it stands before, shaded away from the sun. */
export function IsometricView(props: IsometricViewProps) {
  const { scheme, transform: view, selectedId, eye: place = isometricPlace } = props;
  const eye = useMemo(() => pictureEye(place), [place]);
  const model = useMemo(() => pictureOf(scheme, place), [scheme, place]);
  const objects = useMemo(() => seenOnIsometric(scheme, eye), [scheme, eye]);
  const { verdicts, nameOf } = useElementWords(props);
  const toPx = (point: IsoPoint) => isoToPx(view, model.middle, point);
  const entryId = entryElement([...objects.map(({ object }) => object.id), ...model.things.map(idOf)], selectedId);
  const layer = props.assessment === null ? undefined : props.layer;
  const placeOn = (unit: Container): LayerPlace => ({
    ...{ view: "picture", unit, eye, transform: view, scheme },
    toPx: (at) => toPx(onPicture(eye, at)),
  });
  const setting = { nameOf, entryId, selectedId: selectedId ?? null, still: false };
  return (
    <g className="isometric">
      <path
        d={model.shadows.map((outline) => polygonPath(outline.map(toPx))).join("")}
        fill={pencilFill.open}
        fillRule="nonzero"
        pointerEvents="none"
      />
      <ElementTree
        label={`From the ${eyeCompass(place)}`}
        locate={(id) => ({ at: placeOf(scheme, id) })}
        onElementPointerDown={props.onElementPointerDown}
        onElementFocus={props.onElementFocus}
      >
        {model.things.map((thing) => {
          const id = idOf(thing);
          const outline = polygonPath(thing.silhouette.map(toPx));
          return (
            <DrawnElement
              key={id}
              {...itemOf(setting, id, thing.kind === "unit" ? "container" : thing.kind)}
              rect={boundsOf(thing.silhouette.map(toPx))}
              outline={outline}
            >
              {thing.kind === "unit" ? (
                <>
                  <IsoUnitDrawing
                    unit={thing}
                    middle={model.middle}
                    view={view}
                    verdicts={verdictsOf(thing, verdicts)}
                  />
                  <LayerOn layer={layer} place={placeOn(thing.container)} />
                </>
              ) : (
                <AddedDrawing added={thing} middle={model.middle} view={view} />
              )}
            </DrawnElement>
          );
        })}
        <Objects
          objects={atScale(objects, view.pxPerM)}
          eye={{ kind: "isometric", pxPerM: view.pxPerM, toPx: (at) => toPx(onPicture(eye, at)) }}
          {...setting}
        />
      </ElementTree>
    </g>
  );
}

const idOf = (thing: IsoAdded | ({ kind: "unit" } & IsoUnit)): string =>
  thing.kind === "unit" ? thing.container.id : thing.id;

/** An added post, beam, seat or pad: steel in prussian, concrete in pencil. */
const AddedDrawing = memo(function AddedDrawing({
  added,
  middle,
  view,
}: {
  added: IsoAdded;
  middle: IsoPoint;
  view: ViewTransform;
}) {
  const line = added.kind === "pad" ? ink.graphite : ink.prussian;
  const outlineOf = (points: readonly IsoPoint[]) => polygonPath(points.map((point) => isoToPx(view, middle, point)));
  return added.faces.map(({ outline, shaded }, index) => (
    <path
      key={index}
      d={outlineOf(outline)}
      fill={shaded && added.kind !== "pad" ? line : ink.paper}
      stroke={line}
      strokeWidth={0.8}
      strokeLinejoin="round"
    />
  ));
}, sameDrawn);

type IsoUnitDrawingProps = {
  unit: IsoUnit;
  middle: IsoPoint;
  view: ViewTransform;
  verdicts: readonly (ElementVerdict | null)[];
};

const IsoUnitDrawing = memo(function IsoUnitDrawing({ unit, middle, view, verdicts }: IsoUnitDrawingProps) {
  const toPx = (point: IsoPoint) => isoToPx(view, middle, point);
  const silhouette = polygonPath(unit.silhouette.map(toPx));
  return (
    <>
      <path className="face-paper" d={silhouette} fill={ink.paper} />
      {unit.faces.map((face) => (
        <IsoFaceDrawing key={face.face} face={face} toPx={toPx} verdicts={verdicts} unit={unit} />
      ))}
      <path d={unit.roofShadows.map((outline) => polygonPath(outline.map(toPx))).join("")} fill={pencilFill.open} />
      <path d={silhouette} fill="none" stroke={ink.ink} strokeWidth={1.5} strokeLinejoin="round" />
    </>
  );
}, sameDrawn);

type IsoFaceDrawingProps = {
  face: IsoFace;
  toPx: (point: IsoPoint) => ScreenPoint;
  unit: IsoUnit;
  verdicts: readonly (ElementVerdict | null)[];
};

function IsoFaceDrawing({ face, toPx, unit, verdicts }: IsoFaceDrawingProps) {
  const outline = polygonPath(face.outline.map(toPx));
  const openings = openingsOf(unit);
  return (
    <>
      {face.shaded && <path d={outline} fill={pencilFill.close} />}
      <path
        d={face.folds.map((fold) => polylinePath(fold.map(toPx))).join("")}
        stroke={ink.slate}
        strokeWidth={0.4}
        strokeOpacity={0.75}
      />
      {face.openings.map(({ opening, outline: hole, mullions }) => {
        const verdict = verdicts[openings.indexOf(opening.id)];
        const hatched = verdict != null && verdict.verdict !== "works as built" && verdict.verdict !== "not checked";
        const open = opening.use === "passage" || opening.use === "open-wall";
        return (
          <g key={opening.id}>
            <path
              d={polygonPath(hole.map(toPx))}
              fill={open ? ink.shade : ink.slip}
              stroke={opening.framing === undefined ? ink.ink : ink.prussian}
              strokeWidth={opening.framing === undefined ? 0.8 : 1.4}
              strokeLinejoin="round"
            />
            {open && <path d={polygonPath(hole.map(toPx))} fill={pencilFill.open} />}
            <path
              d={mullions.map((line) => polylinePath(line.map(toPx))).join("")}
              stroke={ink.ink}
              strokeWidth={0.5}
            />
            {hatched && (
              <path
                d={polygonPath(hole.map(toPx))}
                fill={hatchFill(verdict.verdict, "small", verdict.screening ? "pencil" : "ink")}
                stroke={verdictInk[verdict.verdict]}
                strokeWidth={0.8}
              />
            )}
          </g>
        );
      })}
      <path d={outline} fill="none" stroke={ink.ink} strokeWidth={1} strokeLinejoin="round" />
    </>
  );
}

const openingsOf = ({ faces }: IsoUnit): string[] =>
  faces.flatMap(({ openings }) => openings.map(({ opening }) => opening.id));

const verdictsOf = (unit: IsoUnit, verdicts: ReadonlyMap<string, ElementVerdict>) =>
  openingsOf(unit).map((id) => verdicts.get(id) ?? null);

function placeOf(scheme: IsometricViewProps["scheme"], id: string) {
  const unit = scheme.containers.find((container) => container.id === id);
  return { xMm: (unit?.xUm ?? 0) / 1000, yMm: (unit?.yUm ?? 0) / 1000, zMm: (unit?.zUm ?? 0) / 1000 };
}

function boundsOf(points: readonly ScreenPoint[]): RectPx {
  const left = Math.min(...points.map(({ xPx }) => xPx));
  const top = Math.min(...points.map(({ yPx }) => yPx));
  return {
    xPx: left,
    yPx: top,
    widthPx: Math.max(...points.map(({ xPx }) => xPx)) - left,
    heightPx: Math.max(...points.map(({ yPx }) => yPx)) - top,
  };
}
