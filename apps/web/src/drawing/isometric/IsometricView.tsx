import {
  seenOnIsometric,
  isometricModel,
  type IsoFace,
  type IsoUnit,
  isoPoint,
  type IsoPoint,
} from "@cornerway/engine";
import { isoToPx } from "./iso-to-px.ts";
import { atScale } from "../objects/at-scale.ts";
import { memo, useMemo } from "react";
import { hatchFill, pencilFill } from "../../look/hatch.ts";
import { ink, verdictInk } from "../../look/ink.ts";
import type { IsometricViewProps } from "../contract.ts";
import { DrawnElement } from "../DrawnElement.tsx";
import { ElementTree } from "../ElementTree.tsx";
import { itemOf } from "../element-setting.ts";
import { entryElement } from "../entry-element.ts";
import type { ElementVerdict } from "../marks/element-verdicts.ts";
import { Objects } from "../objects/Objects.tsx";
import { polygonPath, polylinePath, type RectPx } from "../px-path.ts";
import { sameDrawn } from "../same-drawn.ts";
import { useElementWords } from "../use-element-words.ts";
import type { ScreenPoint, ViewTransform } from "../view-transform.ts";

/** The whole from the south-east and above, shaded on the sides away from the sun. Not to scale with the other views. */
export function IsometricView(props: IsometricViewProps) {
  const { scheme, transform: view, selectedId } = props;
  const model = useMemo(() => isometricModel(scheme), [scheme]);
  const objects = useMemo(() => seenOnIsometric(scheme), [scheme]);
  const { verdicts, nameOf } = useElementWords(props);
  const toPx = (point: IsoPoint) => isoToPx(view, model.middle, point);
  const entryId = entryElement(
    [...objects.map(({ object }) => object.id), ...model.units.map(({ container }) => container.id)],
    selectedId,
  );
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
        label="From the south-east"
        locate={(id) => ({ at: placeOf(scheme, id) })}
        onElementPointerDown={props.onElementPointerDown}
        onElementFocus={props.onElementFocus}
      >
        {model.units.map((unit) => {
          const { id } = unit.container;
          return (
            <DrawnElement
              key={id}
              {...itemOf(setting, id, "container")}
              rect={boundsOf(unit.silhouette.map(toPx))}
              outline={polygonPath(unit.silhouette.map(toPx))}
            >
              <IsoUnitDrawing unit={unit} middle={model.middle} view={view} verdicts={verdictsOf(unit, verdicts)} />
            </DrawnElement>
          );
        })}
        <Objects
          objects={atScale(objects, view.pxPerM)}
          eye={{ kind: "isometric", pxPerM: view.pxPerM, toPx: (at) => toPx(isoPoint(at)) }}
          {...setting}
        />
      </ElementTree>
    </g>
  );
}

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
        opacity={0.75}
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
