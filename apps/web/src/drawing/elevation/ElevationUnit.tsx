import type { ElevationFace, ElevationOpening } from "@cornerway/engine";
import { memo } from "react";
import { hatchFill } from "../../look/hatch.ts";
import { ink, verdictInk } from "../../look/ink.ts";
import { DrawnElement } from "../DrawnElement.tsx";
import { itemOf, type ElementSetting } from "../element-setting.ts";
import type { ElementVerdict } from "../marks/element-verdicts.ts";
import { CutStage } from "../objects/CutStage.tsx";
import { FramingDrawing } from "../objects/FramingDrawing.tsx";
import { rectToPx } from "../paper-to-px.ts";
import { rectPath } from "../px-path.ts";
import { sameDrawn } from "../same-drawn.ts";
import type { ViewTransform } from "../view-transform.ts";
import { OpeningDrawing } from "./OpeningDrawing.tsx";
import { OpeningHandles } from "./OpeningHandles.tsx";
import { UnitFace } from "./UnitFace.tsx";

/** One face of a unit with what is cut in it, as tree items. */
export function ElevationUnit({ face, ...setting }: { face: ElevationFace } & ElementSetting) {
  const { view, still } = setting;
  const id = face.container.id;
  return (
    <DrawnElement {...itemOf(setting, id, "container")} rect={rectToPx(view, face)}>
      <UnitFace face={face} view={view} />
      {face.openings.length > 0 && (
        <g role={still ? undefined : "group"}>
          {face.openings.map((place) => (
            <ElevationOpeningElement
              key={place.opening.id}
              place={place}
              beyond={face.beyond}
              along={face.along}
              {...setting}
            />
          ))}
        </g>
      )}
    </DrawnElement>
  );
}

function ElevationOpeningElement({
  place,
  beyond,
  along,
  ...setting
}: { place: ElevationOpening; beyond: boolean; along: 1 | -1 } & ElementSetting) {
  const { view, selectedId, verdicts, still } = setting;
  const { id } = place.opening;
  return (
    <DrawnElement {...itemOf(setting, id, "opening", 2)} rect={rectToPx(view, place)}>
      <OpeningFace place={place} view={view} beyond={beyond} verdict={verdicts.get(id)} />
      {selectedId === id && !still && <OpeningHandles rect={rectToPx(view, place)} along={along} />}
    </DrawnElement>
  );
}

type OpeningFaceProps = {
  place: ElevationOpening;
  view: ViewTransform;
  beyond: boolean;
  verdict: ElementVerdict | undefined;
};

const OpeningFace = memo(function OpeningFace({ place, view, beyond, verdict }: OpeningFaceProps) {
  const rect = rectToPx(view, place);
  const { use, framed, framing, cut } = place.opening;
  const hatched =
    !beyond && verdict !== undefined && verdict.verdict !== "works as built" && verdict.verdict !== "not checked";
  return (
    <>
      <OpeningDrawing use={use} rect={rect} pen={{ line: beyond ? ink.pencil : ink.ink, fill: ink.slip }} />
      {framed && !beyond && <path d={rectPath(rect)} fill="none" stroke={ink.prussian} strokeWidth={1.4} />}
      {framing !== undefined && !beyond && <FramingDrawing rect={rect} framing={framing} pxPerM={view.pxPerM} />}
      {cut !== undefined && !beyond && <CutStage rect={rect} cut={cut} />}
      {hatched && (
        <path
          d={rectPath(rect)}
          fill={hatchFill(verdict.verdict, "normal", verdict.screening ? "pencil" : "ink")}
          stroke={verdictInk[verdict.verdict]}
          strokeWidth={verdict.screening ? 1.1 : 1.5}
        />
      )}
    </>
  );
}, sameDrawn);
