import { hatchFill } from "../../look/hatch.ts";
import { Hexagon } from "../../look/Hexagon.tsx";
import { ink, verdictInk } from "../../look/ink.ts";
import { useUnits } from "../../units/use-units.ts";
import { DrawnElement } from "../DrawnElement.tsx";
import type { ElementSetting } from "../element-setting.ts";
import { OpeningDrawing } from "../elevation/OpeningDrawing.tsx";
import type { ElementVerdict } from "../marks/element-verdicts.ts";
import { rectToPx } from "../paper-to-px.ts";
import { linePath, px, rectPath, type RectPx } from "../px-path.ts";
import { FaceDimensionStrings } from "./FaceDimensionStrings.tsx";
import { FlatFittings } from "./FlatFittings.tsx";
import type { FlatFace, UnfoldedModel } from "./unfolded-model.ts";
import { faceDimensions } from "./unfolded-dimensions.ts";

type FlatFaceDrawingProps = ElementSetting & { flat: FlatFace; model: UnfoldedModel };

/** One face laid flat: outline, rails and posts, fittings, what is cut in it and its dimensions. */
export function FlatFaceDrawing({ flat, model, ...setting }: FlatFaceDrawingProps) {
  const { view, selectedId, entryId, nameOf } = setting;
  const units = useUnits();
  const rect = rectToPx(view, flat.outline);
  const dimensions = faceDimensions(flat, selectedId, units);
  return (
    <>
      <DrawnElement
        id={model.container.id}
        kind="container"
        {...nameOf(model.container.id)}
        level={1}
        selected={false}
        entry={false}
        rect={rect}
      >
        <FaceSheet flat={flat} rect={rect} sheet={rectToPx(view, flat.sheet)} />
        <FlatFittings flat={flat} placed={model.placed} view={view} />
      </DrawnElement>
      {flat.openings.map((place) => {
        const { id, tag } = place.opening;
        const hole = rectToPx(view, place);
        return (
          <DrawnElement
            key={id}
            id={id}
            kind="opening"
            {...nameOf(id)}
            level={1}
            selected={selectedId === id}
            entry={entryId === id}
            rect={hole}
          >
            <Hole place={place} rect={hole} upsideDown={flat.upsideDown} verdict={setting.verdicts.get(id)} />
            {hole.widthPx > 26 && hole.heightPx > 18 && (
              <Hexagon
                tag={tag}
                xPx={px(hole.xPx + hole.widthPx / 2)}
                yPx={px(hole.yPx + hole.heightPx / 2)}
                unchecked={(setting.verdicts.get(id)?.verdict ?? "not checked") === "not checked"}
              />
            )}
          </DrawnElement>
        );
      })}
      {dimensions !== null && <FaceDimensionStrings dimensions={dimensions} flat={flat} view={view} />}
    </>
  );
}

/** The sheet with its folds, the edges of rails and posts, the outline. */
function FaceSheet({ flat, rect, sheet }: { flat: FlatFace; rect: RectPx; sheet: RectPx }) {
  const right = sheet.xPx + sheet.widthPx;
  const foot = sheet.yPx + sheet.heightPx;
  const upright = flat.face !== "roof" && flat.face !== "floor";
  const pitchPx = foldsPx;
  const count = Math.floor(sheet.widthPx / pitchPx);
  const folds = Array.from({ length: count }, (_, at) => {
    const x = sheet.xPx + (at + 0.5) * pitchPx;
    return linePath(x, sheet.yPx, x, foot);
  });
  return (
    <>
      <path d={rectPath(rect)} className="face-paper" fill={ink.paper} />
      {upright ? <path d={folds.join("")} stroke={ink.slate} strokeWidth={0.45} strokeOpacity={0.5} /> : null}
      <path
        d={
          linePath(rect.xPx, sheet.yPx, rect.xPx + rect.widthPx, sheet.yPx) +
          linePath(rect.xPx, foot, rect.xPx + rect.widthPx, foot) +
          linePath(sheet.xPx, sheet.yPx, sheet.xPx, foot) +
          linePath(right, sheet.yPx, right, foot)
        }
        stroke={ink.ink}
        strokeWidth={0.8}
      />
      <path d={rectPath(rect)} fill="none" stroke={ink.ink} strokeWidth={1.8} />
    </>
  );
}

/** Folds are drawn evenly, to be seen as folded sheet; the true pitch is on the elevation. */
const foldsPx = 9;

type HoleProps = {
  place: FlatFace["openings"][number];
  rect: RectPx;
  upsideDown: boolean;
  verdict: ElementVerdict | undefined;
};

function Hole({ place, rect, upsideDown, verdict }: HoleProps) {
  const { use, framed } = place.opening;
  const hatched = verdict !== undefined && verdict.verdict !== "works as built" && verdict.verdict !== "not checked";
  const middle = `${px(rect.xPx + rect.widthPx / 2)} ${px(rect.yPx + rect.heightPx / 2)}`;
  return (
    <>
      <g transform={upsideDown ? `rotate(180 ${middle})` : undefined}>
        <OpeningDrawing use={use} rect={rect} pen={{ line: ink.ink, fill: ink.slip }} />
      </g>
      {framed && <path d={rectPath(rect)} fill="none" stroke={ink.prussian} strokeWidth={1.4} />}
      {hatched && (
        <path
          d={rectPath(rect)}
          fill={hatchFill(verdict.verdict, "normal", verdict.screening ? "pencil" : "ink")}
          stroke={verdictInk[verdict.verdict]}
          strokeWidth={1.1}
        />
      )}
    </>
  );
}
