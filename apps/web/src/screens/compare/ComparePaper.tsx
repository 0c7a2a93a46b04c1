import type { Assessment, Pair, Scheme } from "@cornerway/schema";
import { useMemo, useRef } from "react";
import { storeysOf } from "@cornerway/engine";
import { cloudLayer, type ViewClouds } from "../../drawing/compare/cloud-layer.tsx";
import { Deltas } from "../../drawing/compare/CloudMarks.tsx";
import type { Side } from "../../drawing/contract.ts";
import { ElevationView } from "../../drawing/elevation/ElevationView.tsx";
import { GhostPlan } from "../../drawing/plan/GhostPlan.tsx";
import { PlanView } from "../../drawing/plan/PlanView.tsx";
import { ViewTitle } from "../../drawing/ViewTitle.tsx";
import { planStringsWithin, titleRisePx, type LaidView, type LaidViews } from "../../paper/lay-views.ts";
import { SideChoice } from "../../paper/SideChoice.tsx";
import type { Field } from "../../paper/use-field.ts";
import "../../paper/paper.css";

export interface ComparePaperProps {
  field: Field;
  views: LaidViews;
  letters: Pair<string>;
  schemes: Pair<Scheme>;
  assessments: Pair<Assessment | null>;
  side: Side;
  storey: number;
  /** How much of the later one is seen, 0 to 1: at 0 the former stands alone. */
  share: number;
  marks: ViewClouds;
  revisionLetters: readonly string[];
  chosenId: string | null;
  chosenNumber: number | null;
  onChoose: (id: string | null) => void;
  onSide: (side: Side) => void;
}

/** The later revision in ink over the former dashed in pencil, with clouds round what changed. */
export function ComparePaper(props: ComparePaperProps) {
  const { field, share, marks, letters, views } = props;
  const pressed = useRef<string | null>(null);
  return (
    <svg
      className="paper"
      width={field.widthPx}
      height={field.heightPx}
      viewBox={`0 0 ${field.widthPx} ${field.heightPx}`}
      role="group"
      aria-label={share === 0 ? `Drawing, revision ${letters.before} alone` : "Drawing"}
      onPointerDown={() => {
        props.onChoose(pressed.current);
        pressed.current = null;
      }}
    >
      {share < 1 ? <FormerAlone {...props} /> : null}
      {share > 0 ? (
        <g opacity={share}>
          <Later {...props} onPressed={(id) => (pressed.current = id)} />
          <Deltas marks={marks.elevation} letter={letters.after} />
          {views.oneView ? null : <Deltas marks={marks.plan} letter={letters.after} />}
        </g>
      ) : null}
      <Titles {...props} />
    </svg>
  );
}

const levelLines = (field: Field) => ({ levelLinesFromPx: -66, levelLinesToPx: field.widthPx - 24 });

function Later({ onPressed, ...props }: ComparePaperProps & { onPressed: (id: string) => void }) {
  const { views, schemes, assessments, storey, field, marks, chosenNumber } = props;
  const layer = useMemo(() => cloudLayer(marks, chosenNumber), [marks, chosenNumber]);
  const shared = {
    layer,
    scheme: schemes.after,
    assessment: assessments.after,
    linesOnly: true,
    selectedId: props.chosenId,
    revisionLetters: props.revisionLetters,
    onElementPointerDown: ({ id }: { id: string }) => onPressed(id),
    onElementFocus: props.onChoose,
  };
  return (
    <>
      {views.oneView ? null : (
        <>
          <GhostPlan scheme={schemes.before} like={schemes.after} storey={storey} view={views.plan.transform} />
          <PlanView
            {...shared}
            transform={views.plan.transform}
            storey={storey}
            stringsWithin={planStringsWithin(views.plan.rect)}
          />
        </>
      )}
      <ElevationView
        {...shared}
        transform={views.elevation.transform}
        side={props.side}
        ghost={schemes.before}
        {...levelLines(field)}
      />
    </>
  );
}

/** The former revision in ink, as much as the later one is drawn aside; only looked at. */
function FormerAlone({ views, schemes, assessments, side, storey, share, field, revisionLetters }: ComparePaperProps) {
  const shared = { scheme: schemes.before, assessment: assessments.before, linesOnly: true, revisionLetters };
  const top = Math.max(0, storeysOf(schemes.before).length - 1);
  return (
    <g opacity={1 - share} aria-hidden={share > 0 || undefined}>
      {views.oneView ? null : (
        <PlanView
          {...shared}
          transform={views.plan.transform}
          storey={Math.min(storey, top)}
          stringsWithin={planStringsWithin(views.plan.rect)}
        />
      )}
      <ElevationView
        {...shared}
        transform={views.elevation.transform}
        side={side}
        bare={share > 0}
        {...levelLines(field)}
      />
    </g>
  );
}

function Titles({ views, letters, side, storey, schemes, share, onSide }: ComparePaperProps) {
  const { elevation, plan, oneView } = views;
  const { before, after } = letters;
  const which = share === 0 ? `${before} alone` : `${before} under ${after}`;
  const inks =
    elevation.rect.widthPx < wordsFromPx
      ? "yellow is what changed"
      : `ink is ${after} · dashed pencil is ${before} · yellow pencil is what changed`;
  const storeyName = (storeysOf(schemes.after)[storey]?.name ?? "Ground").toLowerCase();
  const remark = share === 0 || oneView ? scaleOf(elevation) : `${scaleOf(elevation)} · ${inks}`;
  return (
    <>
      <ViewTitle number={1} title={`${side} elevation, ${which}`} remark={remark} {...titlePlace(elevation)} />
      <SideChoice
        xPx={elevation.rect.leftPx + elevation.rect.widthPx - (oneView ? 234 : 196)}
        yPx={titlePlace(elevation).yPx + 15}
        side={side}
        onSide={onSide}
      />
      {oneView ? null : (
        <ViewTitle number={2} title={`plan, ${storeyName} floor`} remark={scaleOf(plan)} {...titlePlace(plan)} />
      )}
    </>
  );
}

/** A narrower field has no room for all inks in words beside the choice of sides, px. */
const wordsFromPx = 700;

/** 50 px a metre is 1:100 on the sheet. */
const scaleOf = ({ transform }: LaidView) => `1:${Math.round(5000 / transform.pxPerM)}`;

const titlePlace = ({ rect: { leftPx, topPx, heightPx } }: LaidView) => ({
  xPx: leftPx + 26,
  yPx: topPx + heightPx - titleRisePx,
});
