import type { PlanModel } from "@cornerway/engine";
import { useMemo } from "react";
import { hatchFill } from "../../look/hatch.ts";
import { dash, verdictInk } from "../../look/ink.ts";
import type { LayerPlace, PlanViewProps } from "../contract.ts";
import type { DimensionStrings } from "../dimension/strings.ts";
import { Lettering } from "../label/Lettering.tsx";
import type { BoxPx } from "../label/place-labels.ts";
import { polygonPath } from "../px-path.ts";
import type { ElementWords } from "../use-element-words.ts";
import { useUnits } from "../../units/use-units.ts";
import { toScreen, type ViewPoint } from "../view-transform.ts";
import { LayerOn } from "../LayerOn.tsx";
import { BrokenOutline } from "./BrokenOutline.tsx";
import { PlanProposed } from "./PlanProposed.tsx";
import { planHatches } from "./plan-hatches.ts";
import { overheadInk, planLabels } from "./plan-labels.ts";

/** What lies over a storey, what the marks say of it, and names. Nothing here takes the pointer. */
export function PlanSigns({
  model,
  words,
  strings,
  circles,
  ...props
}: PlanViewProps & {
  model: PlanModel;
  words: ElementWords;
  strings: DimensionStrings;
  circles: readonly BoxPx[];
}) {
  const { scheme, transform: view, storey, proposed } = props;
  const assessment = props.linesOnly === true ? null : props.assessment;
  const { answered, verdicts } = words;
  const units = useUnits();
  const { cutMm } = model;
  const layer = props.linesOnly !== true && assessment === null ? undefined : props.layer;
  const place = useMemo((): LayerPlace => ({ view: "plan", cutMm, transform: view, scheme }), [cutMm, view, scheme]);
  const labels = useMemo(
    () =>
      planLabels(model, view, verdicts, units, {
        strings,
        circles,
        inked: layer?.covers(place),
        figures: layer?.figures(place, units),
      }),
    [model, view, verdicts, units, strings, circles, layer, place],
  );
  const hatches = useMemo(() => planHatches(assessment?.marks ?? [], model), [assessment, model]);
  const outlinePx = (outline: readonly ViewPoint[]) => polygonPath(outline.map((point) => toScreen(view, point)));
  return (
    <g pointerEvents="none">
      {hatches.map(({ key, markId, verdict, outline }) => (
        <path
          key={key}
          d={outlinePx(outline)}
          fill={hatchFill(verdict, "small", answered.has(markId) ? "ink" : "pencil")}
          stroke={verdictInk[verdict]}
          strokeWidth={0.75}
        />
      ))}
      {model.overhead.map((unit) => (
        <BrokenOutline
          key={unit.container.id}
          of={unit.container.id}
          units={[unit]}
          view={view}
          stroke={overheadInk(verdicts.get(unit.container.id)?.verdict)}
          strokeWidth={1.2}
          strokeDasharray={dash.overhead}
        />
      ))}
      <LayerOn layer={layer} place={place} />
      {proposed !== undefined && <PlanProposed before={scheme} after={proposed} storey={storey} view={view} />}
      {labels.map(({ key, of, text, spot, sizePx, colour, fontWeight }) => (
        <Lettering
          key={key}
          of={of}
          text={text}
          spot={spot}
          sizePx={sizePx}
          colour={colour}
          fontWeight={fontWeight}
          trackingEm={0.04}
        />
      ))}
    </g>
  );
}
