import { cutAboveMm, planModel, type PlanModel } from "@cornerway/engine";
import { atScale } from "../objects/at-scale.ts";
import { useMemo } from "react";
import { dash, ink } from "../../look/ink.ts";
import type { PlanViewProps } from "../contract.ts";
import { ElementTree } from "../ElementTree.tsx";
import { entryElement } from "../entry-element.ts";
import { Objects } from "../objects/Objects.tsx";
import { planEye } from "../objects/object-eye.ts";
import { useElementWords } from "../use-element-words.ts";
import { screenToSite } from "../view-transform.ts";
import { useUnits } from "../../units/use-units.ts";
import { framedPlan } from "./framed-plan.ts";
import { BrokenOutline } from "./BrokenOutline.tsx";
import { planWindow, withinWindow } from "./plan-window.ts";
import { PlanFrame } from "./PlanFrame.tsx";
import { PlanPads, PlanPosts } from "./PlanFootings.tsx";
import { PlanSigns } from "./PlanSigns.tsx";
import { PlanUnitDrawing } from "./PlanUnitDrawing.tsx";

const noLetters: readonly string[] = [];

/** One storey cut 1.2 m above its level and looked down on. */
export function PlanView(props: PlanViewProps) {
  const { scheme, transform: view, storey, selectedId = null, revisionLetters = noLetters, stringsWithin } = props;
  const model = useMemo(() => withinWindow(planModel(scheme, storey), planWindow(scheme, storey)), [scheme, storey]);
  const words = useElementWords(props);
  const { verdicts, nameOf } = words;
  const setting = {
    view,
    verdicts,
    nameOf,
    entryId: entryElement(shownIds(model), selectedId),
    selectedId,
    still: false,
  };
  const units = useUnits();
  const { outline, grid, strings, circlePlaces, circles } = useMemo(
    () => framedPlan(model, { scheme, view, revisionLetters, units, stringsWithin }),
    [model, scheme, view, revisionLetters, units, stringsWithin],
  );
  const frame =
    outline === null ? null : (
      <PlanFrame {...{ scheme, view, grid, outline, strings, circlePlaces }} seenFrom={props.seenFrom} />
    );
  // Looked into more closely, the grid's circles stand on the drawing and have to lie over it.
  const closer = props.seenFrom !== undefined;
  return (
    <g className="plan">
      {closer ? null : frame}
      <BrokenOutline
        units={model.below}
        view={view}
        stroke={ink.graphite}
        strokeWidth={0.7}
        strokeDasharray={dash.hidden}
      />
      <ElementTree
        label={`Plan, storey ${storey}`}
        locate={(_id, _kind, at) => ({ at: screenToSite(view, "plan", at, -(model.cutMm - cutAboveMm)) })}
        onElementPointerDown={props.onElementPointerDown}
        onElementFocus={props.onElementFocus}
      >
        <PlanPads model={model} {...setting} />
        {model.units.map((unit) => (
          <PlanUnitDrawing key={unit.container.id} unit={unit} {...setting} />
        ))}
        <PlanPosts model={model} {...setting} />
        <Objects objects={atScale(model.objects, view.pxPerM)} eye={planEye(view)} {...setting} />
      </ElementTree>
      <PlanSigns model={model} words={words} strings={strings} circles={circles} {...props} />
      {closer ? <g pointerEvents="none">{frame}</g> : null}
    </g>
  );
}

const shownIds = ({ units, posts, pads, objects }: PlanModel): string[] => [
  ...pads.map(({ id }) => id),
  ...posts.map(({ post }) => post.id),
  ...objects.map(({ object }) => object.id),
  ...units.flatMap(({ walls, container }) => [
    ...walls.flatMap(({ openings }) => openings.map(({ opening }) => opening.id)),
    container.id,
  ]),
];
