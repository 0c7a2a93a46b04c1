import { useMemo } from "react";
import { hatchFill } from "../../look/hatch.ts";
import { dash, ink, verdictInk } from "../../look/ink.ts";
import type { PlanViewProps } from "../contract.ts";
import { DrawnElement } from "../DrawnElement.tsx";
import { ElementTree } from "../ElementTree.tsx";
import { elementNamer } from "../element-namer.ts";
import { sectionWidthMm } from "../elevation/elevation-posts.ts";
import type { ElementSetting } from "../elevation/ElevationUnit.tsx";
import { Lettering } from "../label/Lettering.tsx";
import { elementVerdicts } from "../marks/element-verdicts.ts";
import { polygonPath, rectPath, type RectPx } from "../px-path.ts";
import { screenToSite, toScreen } from "../view-transform.ts";
import { PlanFrame } from "./PlanFrame.tsx";
import { PlanProposed } from "./PlanProposed.tsx";
import { boundsPx, PlanUnitDrawing } from "./PlanUnitDrawing.tsx";
import { planHatches } from "./plan-hatches.ts";
import { overheadInk, planLabels } from "./plan-labels.ts";
import { cutAboveMm, planModel, type PlanModel, type PlanUnit } from "./plan-model.ts";

const noneAnswered: ReadonlySet<string> = new Set();
const noNumbers: ReadonlyMap<string, number> = new Map();
const noLetters: readonly string[] = [];

/** One storey cut 1.2 m above its level and looked down on. */
export function PlanView(props: PlanViewProps) {
  const { scheme, assessment, transform: view, storey, bare = false, revisionLetters = noLetters } = props;
  const answered = props.answeredMarkIds ?? noneAnswered;
  const model = useMemo(() => planModel(scheme, storey), [scheme, storey]);
  const verdicts = useMemo(() => elementVerdicts(assessment, answered), [assessment, answered]);
  const nameOf = useMemo(
    () => elementNamer(scheme, verdicts, props.noteNumbers ?? noNumbers),
    [scheme, verdicts, props.noteNumbers],
  );
  const labels = useMemo(() => planLabels(model, view, verdicts), [model, view, verdicts]);
  const hatches = useMemo(() => planHatches(assessment?.marks ?? [], model), [assessment, model]);
  const entryId = props.selectedId ?? model.units[0]?.container.id ?? null;
  const setting: ElementSetting = {
    view,
    verdicts,
    nameOf,
    entryId,
    selectedId: props.selectedId ?? null,
    still: bare,
  };
  const outlinePx = (unit: PlanUnit) => polygonPath(unit.outline.map((point) => toScreen(view, point)));
  return (
    <g className="plan">
      {!bare && <PlanFrame scheme={scheme} view={view} revisionLetters={revisionLetters} />}
      <path
        d={model.below.map(outlinePx).join("")}
        fill="none"
        stroke={ink.graphite}
        strokeWidth={0.7}
        strokeDasharray={dash.hidden}
        pointerEvents="none"
      />
      <ElementTree
        label={`Plan, storey ${storey}`}
        still={bare}
        locate={(_id, _kind, at) => ({ at: screenToSite(view, "plan", at, -(model.cutMm - cutAboveMm)) })}
        onElementPointerDown={props.onElementPointerDown}
        onElementFocus={props.onElementFocus}
      >
        <PlanPads model={model} {...setting} />
        {model.units.map((unit) => (
          <PlanUnitDrawing key={unit.container.id} unit={unit} {...setting} />
        ))}
        <PlanPosts model={model} {...setting} />
      </ElementTree>
      <g pointerEvents="none">
        {hatches.map(({ key, markId, verdict, outline }) => (
          <path
            key={key}
            d={polygonPath(outline.map((point) => toScreen(view, point)))}
            fill={hatchFill(verdict, "small", answered.has(markId) ? "ink" : "pencil")}
            stroke={verdictInk[verdict]}
            strokeWidth={0.75}
          />
        ))}
        {model.overhead.map((unit) => (
          <path
            key={unit.container.id}
            d={outlinePx(unit)}
            fill="none"
            stroke={overheadInk(verdicts.get(unit.container.id)?.verdict)}
            strokeWidth={1.2}
            strokeDasharray={dash.overhead}
          />
        ))}
        {props.proposed !== undefined && (
          <PlanProposed before={scheme} after={props.proposed} storey={storey} view={view} />
        )}
        {labels.map(({ key, text, spot, sizePx, colour, fontWeight }) => (
          <Lettering
            key={key}
            text={text}
            spot={spot}
            sizePx={sizePx}
            colour={colour}
            fontWeight={fontWeight}
            trackingEm={0.04}
          />
        ))}
      </g>
    </g>
  );
}

function PlanPads({ model, view, nameOf, selectedId, entryId, still }: { model: PlanModel } & ElementSetting) {
  return model.pads.map(({ id, xUm, yUm, lengthUm, widthUm }) => {
    const half = { u: lengthUm / 2000, v: widthUm / 2000 };
    const rect = boundsPx(
      [
        { uMm: xUm / 1000 - half.u, vMm: yUm / 1000 - half.v },
        { uMm: xUm / 1000 + half.u, vMm: yUm / 1000 + half.v },
      ],
      view,
    );
    return (
      <DrawnElement
        key={id}
        id={id}
        kind="pad"
        {...nameOf(id)}
        level={1}
        selected={selectedId === id}
        entry={entryId === id}
        rect={rect}
        still={still}
      >
        <path d={rectPath(rect)} fill="none" stroke={ink.graphite} strokeWidth={0.6} strokeDasharray="3 2" />
      </DrawnElement>
    );
  });
}

/** Added posts cut through: the section in prussian. */
function PlanPosts({ model, view, nameOf, selectedId, entryId, still }: { model: PlanModel } & ElementSetting) {
  return model.posts.map(({ post, at }) => {
    const { xPx, yPx } = toScreen(view, at);
    const size = Math.max(5, (sectionWidthMm(post.section) * view.pxPerM) / 1000);
    const rect: RectPx = { xPx: xPx - size / 2, yPx: yPx - size / 2, widthPx: size, heightPx: size };
    return (
      <DrawnElement
        key={post.id}
        id={post.id}
        kind="post"
        {...nameOf(post.id)}
        level={1}
        selected={selectedId === post.id}
        entry={entryId === post.id}
        rect={rect}
        still={still}
      >
        <path d={rectPath(rect)} fill={ink.prussian} />
      </DrawnElement>
    );
  });
}
