import type { Assessment, PointMm, Scheme } from "@cornerway/schema";
import { memo, useCallback, useDeferredValue, useRef, useState } from "react";
import type { PointerEvent } from "react";
import { storeysOf } from "@cornerway/engine";
import type { PickedElement, Side, ViewLayer } from "../drawing/contract.ts";
import { AlignmentTicks } from "../drawing/objects/AlignmentTicks.tsx";
import { ElevationView } from "../drawing/elevation/ElevationView.tsx";
import { IsometricView } from "../drawing/isometric/IsometricView.tsx";
import { PlanView } from "../drawing/plan/PlanView.tsx";
import { ViewTitle } from "../drawing/ViewTitle.tsx";
import { screenToSite, type Projection } from "../drawing/view-transform.ts";
import type { Point } from "../hand/use-hand.ts";
import { viewAt } from "./lay-views.ts";
import type { LaidView, LaidViews, RectPx } from "./lay-views.ts";
import type { Field } from "./use-field.ts";
import { ChoosingBand } from "./ChoosingBand.tsx";
import { SideChoice } from "./SideChoice.tsx";
import "./paper.css";

export interface SchemePaperProps {
  field: Field;
  views: LaidViews;
  scheme: Scheme;
  assessment: Assessment | null;
  side: Side;
  storey: number;
  chosenId: string | null;
  noteNumbers: ReadonlyMap<string, number>;
  answeredMarkIds: ReadonlySet<string>;
  revisionLetters: readonly string[];
  proposed?: Scheme | undefined;
  ghost?: Scheme | undefined;
  waiting?: boolean;
  /** Inked on elevation and plan. */
  layer?: ViewLayer | undefined;
  /** Said after the name of the elevation: "proposed", "not checked". */
  remark?: string | undefined;
  isometric: boolean;
  /** True while a tool is in hand: the paper takes the keys itself. */
  inHand: boolean;
  /** The one chosen unit, and the scheme it stood in before it was taken up: where its fittings would land is shown. */
  aligning?: { unitId: string; stood: Scheme } | undefined;
  /** The band being drawn round what is to be chosen. */
  band?: { projection: Projection; from: PointMm; to: PointMm } | null;
  onPress: (picked: PickedElement | null, point: Point) => void;
  onMove: (point: Point) => void;
  onDrop: () => void;
  onFocusElement: (id: string) => void;
  onSide: (side: Side) => void;
}

/** Pointer reach of snapping, px on the paper. */
const reachPx = 12;

/** Elevation, plan and isometric on one field; presses and moves come out as places in the site frame. */
export function SchemePaper(props: SchemePaperProps) {
  const { field, views, scheme, side, storey } = props;
  const picked = useRef<PickedElement | null>(null);
  const [planWanted, setPlanWanted] = useState(false);
  const planShown = views.oneView && planWanted;
  const pick = useCallback((found: PickedElement) => {
    picked.current = found;
  }, []);
  const levelMm = storeysOf(scheme)[storey]?.levelMm ?? scheme.site.groundZUm / 1000;
  const point = (event: PointerEvent<SVGSVGElement>) => pointOf(event, views, side, levelMm);
  const shared = {
    scheme,
    assessment: props.assessment,
    selectedId: props.chosenId,
    noteNumbers: props.noteNumbers,
    answeredMarkIds: props.answeredMarkIds,
    revisionLetters: props.revisionLetters,
    proposed: props.proposed,
    ghost: props.ghost,
    waiting: props.waiting,
    layer: props.layer,
    onElementPointerDown: pick,
    onElementFocus: props.onFocusElement,
  };
  // The isometric follows a drag when there is time; the view in hand never waits for it.
  const calmScheme = useDeferredValue(scheme);
  const calmAssessment = useDeferredValue(props.assessment);
  return (
    <svg
      className={props.inHand ? "paper paper-in-hand" : "paper"}
      width={field.widthPx}
      height={field.heightPx}
      viewBox={`0 0 ${field.widthPx} ${field.heightPx}`}
      role={props.inHand ? "application" : "group"}
      aria-label={props.inHand ? "Drawing, tool in hand: arrows move, Enter sets, Escape lets go" : "Drawing"}
      onPointerDown={(event) => {
        const at = point(event);
        if (at !== null && event.button === 0) {
          event.currentTarget.setPointerCapture(event.pointerId);
          props.onPress(picked.current, at);
        }
        picked.current = null;
      }}
      onPointerMove={(event) => {
        const at = point(event);
        if (at !== null) props.onMove(at);
      }}
      onPointerUp={props.onDrop}
    >
      {props.isometric && !views.oneView ? (
        <CalmIsometric
          {...shared}
          scheme={calmScheme}
          assessment={calmAssessment}
          transform={views.isometric.transform}
        />
      ) : null}
      {views.oneView && !planShown ? null : <PlanView {...shared} transform={views.plan.transform} storey={storey} />}
      {planShown ? null : (
        <ElevationView
          {...shared}
          transform={views.elevation.transform}
          side={side}
          figures
          levelLinesFromPx={-66}
          levelLinesToPx={field.widthPx - 24}
        />
      )}
      <PaperTitles {...props} planShown={planShown} onPlan={setPlanWanted} />
      {props.aligning === undefined ? null : <AligningTicks {...props} aligning={props.aligning} />}
      {props.band == null ? null : <ChoosingBand band={props.band} views={views} />}
    </svg>
  );
}

const CalmIsometric = memo(IsometricView);

function AligningTicks({
  views,
  side,
  scheme,
  aligning: { unitId, stood },
}: SchemePaperProps & { aligning: { unitId: string; stood: Scheme } }) {
  const shared = { stood, shown: scheme, unitId };
  return (
    <>
      <AlignmentTicks {...shared} projection={side} view={views.elevation.transform} />
      {views.oneView ? null : <AlignmentTicks {...shared} projection="plan" view={views.plan.transform} />}
    </>
  );
}

type PaperTitlesProps = SchemePaperProps & { planShown: boolean; onPlan: (shown: boolean) => void };

function PaperTitles({ onSide, planShown, onPlan, ...props }: PaperTitlesProps) {
  const { views, side, storey, scheme, remark, assessment, isometric: shown } = props;
  const storeyName = (storeysOf(scheme)[storey]?.name ?? "Ground").toLowerCase();
  const planTitle = `plan, ${storeyName} floor`;
  const { elevation, plan, isometric, oneView } = views;
  const stroke = assessment === null ? "not checked" : "stroke width is force, by statics alone";
  return (
    <>
      <ViewTitle
        number={1}
        title={planShown ? planTitle : `${side} elevation${remark === undefined ? "" : `, ${remark}`}`}
        remark={oneView ? scaleOf(planShown ? plan : elevation) : `${scaleOf(elevation)} · ${stroke}`}
        {...titlePlace(elevation.rect)}
      />
      <SideChoice
        xPx={elevation.rect.leftPx + elevation.rect.widthPx - (oneView ? 234 : 196)}
        yPx={titlePlace(elevation.rect).yPx + 15}
        side={planShown ? null : side}
        onSide={(to) => {
          onPlan(false);
          onSide(to);
        }}
        onPlan={oneView ? () => onPlan(true) : undefined}
      />
      {oneView ? null : <ViewTitle number={2} title={planTitle} remark={scaleOf(plan)} {...titlePlace(plan.rect)} />}
      {shown && !oneView ? (
        <ViewTitle number={3} title="isometric" remark="not to scale" {...titlePlace(isometric.rect)} />
      ) : null}
    </>
  );
}

/** 50 px a metre is 1:100 on the sheet. */
const scaleOf = ({ transform }: LaidView) => `1:${Math.round(5000 / transform.pxPerM)}`;

const titlePlace = ({ leftPx, topPx, heightPx }: RectPx) => ({ xPx: leftPx + 26, yPx: topPx + heightPx - 24 });

function pointOf(event: PointerEvent<SVGSVGElement>, views: LaidViews, side: Side, levelMm: number): Point | null {
  const box = event.currentTarget.getBoundingClientRect();
  const at = { xPx: event.clientX - box.left, yPx: event.clientY - box.top };
  const view = viewAt(views, at);
  if (view === null) return null;
  const projection = view === "plan" ? "plan" : side;
  const { transform } = views[view];
  return {
    projection,
    at: screenToSite(transform, projection, at, view === "plan" ? -levelMm : 0),
    reachMm: (reachPx * 1000) / transform.pxPerM,
    also: event.shiftKey,
  };
}
