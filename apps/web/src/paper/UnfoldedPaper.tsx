import type { Assessment, Face, Scheme } from "@cornerway/schema";
import { useMemo, useRef } from "react";
import type { PointerEvent } from "react";
import type { PickedElement } from "../drawing/contract.ts";
import { unfoldedModel, siteUnderPaper, type UnfoldedModel } from "../drawing/unfolded/unfolded-model.ts";
import { UnfoldedView } from "../drawing/unfolded/UnfoldedView.tsx";
import { ViewTitle } from "../drawing/ViewTitle.tsx";
import { fromScreen, type ViewTransform } from "../drawing/view-transform.ts";
import type { Point } from "../hand/use-hand.ts";
import { PaperButton } from "./PaperButton.tsx";
import type { Field } from "./use-field.ts";
import "./paper.css";

export interface UnfoldedPaperProps {
  field: Field;
  scheme: Scheme;
  unitId: string;
  assessment: Assessment | null;
  chosenId: string | null;
  noteNumbers: ReadonlyMap<string, number>;
  answeredMarkIds: ReadonlySet<string>;
  inHand: boolean;
  onPress: (picked: PickedElement | null, point: Point) => void;
  onMove: (point: Point) => void;
  onDrop: () => void;
  onFocusElement: (id: string) => void;
  onFold: () => void;
}

const reachPx = 12;
const room = { leftPx: 26, rightPx: 46, topPx: 34, footPx: 96 };
const mostPxPerM = 70;

/** One unit laid open on the whole field: openings are chosen, dragged and cut on every face. */
export function UnfoldedPaper(props: UnfoldedPaperProps) {
  const { field, scheme, unitId } = props;
  const picked = useRef<PickedElement | null>(null);
  const onFace = useRef<Face | undefined>(undefined);
  const unit = scheme.containers.find(({ id }) => id === unitId);
  const model = useMemo(() => (unit === undefined ? null : unfoldedModel(scheme, unit)), [scheme, unit]);
  if (model === null) return null;
  const view = fitted(field, model);
  const point = (event: PointerEvent<SVGSVGElement>): Point | null => {
    const box = event.currentTarget.getBoundingClientRect();
    const at = fromScreen(view, { xPx: event.clientX - box.left, yPx: event.clientY - box.top });
    const found = siteUnderPaper(model, at, onFace.current);
    if (found === null) return null;
    return { at: found.at, projection: "south", reachMm: (reachPx * 1000) / view.pxPerM, also: event.shiftKey };
  };
  const titleAt = { xPx: 26, yPx: field.heightPx - 24 };
  return (
    <svg
      className={props.inHand ? "paper paper-in-hand" : "paper"}
      width={field.widthPx}
      height={field.heightPx}
      viewBox={`0 0 ${field.widthPx} ${field.heightPx}`}
      role={props.inHand ? "application" : "group"}
      aria-label="Drawing, one container unfolded"
      onPointerDown={(event) => {
        onFace.current = undefined;
        const under = picked.current;
        onFace.current = under?.face;
        const at = point(event);
        if (event.button === 0 && at !== null) {
          event.currentTarget.setPointerCapture(event.pointerId);
          // A unit laid open is not moved about here: pressed, it is only chosen, unless something is to be cut in it.
          props.onPress(under, at);
        }
        picked.current = null;
      }}
      onPointerMove={(event) => {
        const at = point(event);
        if (at !== null) props.onMove(at);
      }}
      onPointerUp={() => {
        onFace.current = undefined;
        props.onDrop();
      }}
    >
      <UnfoldedView
        model={model}
        scheme={scheme}
        assessment={props.assessment}
        transform={view}
        selectedId={props.chosenId}
        noteNumbers={props.noteNumbers}
        answeredMarkIds={props.answeredMarkIds}
        onElementPointerDown={(found) => {
          picked.current = found.kind === "opening" || props.inHand ? found : null;
        }}
        onElementFocus={props.onFocusElement}
      />
      <ViewTitle
        number={1}
        title={`${model.container.tag} unfolded`}
        remark={`1:${Math.round(5000 / view.pxPerM)} · every face from outside, dimensions from the fittings`}
        {...titleAt}
      />
      <PaperButton xPx={field.widthPx - 116} yPx={field.heightPx - 22} label="Fold it up" onPress={props.onFold} />
    </svg>
  );
}

function fitted(field: Field, { extent }: UnfoldedModel): ViewTransform {
  const across = (field.widthPx - room.leftPx - room.rightPx) / ((extent.u1Mm - extent.u0Mm) / 1000);
  const up = (field.heightPx - room.topPx - room.footPx) / ((extent.z1Mm - extent.z0Mm) / 1000);
  const pxPerM = Math.min(across, up, mostPxPerM);
  const middleX = room.leftPx + (field.widthPx - room.leftPx - room.rightPx) / 2;
  const middleY = room.topPx + (field.heightPx - room.topPx - room.footPx) / 2;
  return {
    originXPx: middleX - ((extent.u0Mm + extent.u1Mm) / 2000) * pxPerM,
    originYPx: middleY + ((extent.z0Mm + extent.z1Mm) / 2000) * pxPerM,
    pxPerM,
  };
}
