import { lazy, memo, Suspense, useCallback, useDeferredValue, useLayoutEffect, useMemo, useRef, useState } from "react";
import type { ViewProps } from "../drawing/contract.ts";
import { ElevationView } from "../drawing/elevation/ElevationView.tsx";
import { PlanView } from "../drawing/plan/PlanView.tsx";
import { planStringsWithin, type LaidView } from "./lay-views.ts";
import { isPlain, type Lens } from "./lens.ts";
import { OverViews } from "./OverViews.tsx";
import type { SchemePaperProps } from "./paper-props.ts";
import { PaperTitles } from "./PaperTitles.tsx";
import { useLiftedShift } from "./use-lifted-shift.ts";
import { usePaperPointer } from "./use-paper-pointer.ts";
import { useRested } from "./use-rested.ts";
import { WithinView } from "./WithinView.tsx";
import "./paper.css";

/** Elevation, plan and isometric on one field; presses and moves come out as places in the site frame. */
export function SchemePaper(props: SchemePaperProps) {
  const { field, views, side, inHand } = props;
  const paper = useRef<SVGSVGElement>(null);
  const { pick, on } = usePaperPointer(paper, props);
  const [planWanted, setPlanWanted] = useState(false);
  const planShown = views.oneView && planWanted;
  const shared = {
    scheme: props.scheme,
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
    onElementFocus: useSame(props.onFocusElement),
  };
  const lifted = useRef<SVGSVGElement>(null);
  useLiftedShift(paper, lifted, props);
  const calm = useCalm(props);
  return (
    <>
      <svg
        ref={paper}
        className={inHand ? "paper paper-in-hand" : "paper"}
        width={field.widthPx}
        height={field.heightPx}
        viewBox={`0 0 ${field.widthPx} ${field.heightPx}`}
        role={inHand ? "application" : "group"}
        aria-label={inHand ? "Drawing, tool in hand: arrows move, Enter sets, Escape lets go" : "Drawing"}
        {...on}
      >
        {props.isometric && !views.oneView ? (
          <Suspense fallback={null}>
            <ThirdView {...props} shared={shared} calm={calm} />
          </Suspense>
        ) : null}
        {views.oneView && !planShown ? null : <PlanPlace {...props} shared={shared} />}
        {planShown ? null : (
          <WithinView name="elevation" view={views.elevation} lens={props.looking.lenses.elevation}>
            <CalmElevation
              {...shared}
              transform={views.elevation.transform}
              side={side}
              storey={props.storey}
              figures
              levelLinesFromPx={-66}
              levelLinesToPx={field.widthPx - 24}
              seenFrom={seenFrom(views.elevation, props.looking.lenses.elevation)}
            />
          </WithinView>
        )}
        <PaperTitles {...props} planShown={planShown} onPlan={setPlanWanted} />
      </svg>
      <svg ref={lifted} className="paper-lifted" width={field.widthPx} height={field.heightPx} aria-hidden="true" />
      <OverViews {...props} planShown={planShown} />
    </>
  );
}

/** The picture follows where the hand rests; the views one draws on never wait for it. */
function useCalm({ scheme, rested, assessment }: SchemePaperProps) {
  const calmScheme = useDeferredValue(rested);
  const lastAssessment = useDeferredValue(assessment);
  return { scheme: calmScheme, assessment: useRested(lastAssessment, scheme !== rested) };
}

/** The plan, with the line of a section where one is cut. */
function PlanPlace({ views, looking, storey, section, shared, ...props }: SchemePaperProps & { shared: SharedProps }) {
  const { plan, oneView } = views;
  const { topPx, heightPx } = plan.rect;
  const stringsWithin = useMemo(() => planStringsWithin({ topPx, heightPx }), [topPx, heightPx]);
  return (
    <WithinView name="plan" view={plan} lens={looking.lenses.plan}>
      <CalmPlan
        {...shared}
        transform={plan.transform}
        storey={storey}
        seenFrom={seenFrom(plan, looking.lenses.plan)}
        stringsWithin={stringsWithin}
      />
      {section === null || !props.isometric || oneView ? null : (
        <Suspense fallback={null}>
          <SectionMark line={section} view={plan.transform} onLine={props.onSection} />
        </Suspense>
      )}
    </WithinView>
  );
}

type SharedProps = Omit<ViewProps, "transform">;

/** Where a view looked into more closely begins; nothing where the whole of it is seen. */
const seenFrom = ({ rect }: LaidView, lens: Lens) => (isPlain(lens) ? undefined : rect);

/** A function that stays the same and does what the latest one does, so that what is given it need not be drawn anew. */
function useSame<Given extends unknown[]>(latest: (...given: Given) => void): (...given: Given) => void {
  const does = useRef(latest);
  useLayoutEffect(() => {
    does.current = latest;
  });
  return useCallback((...given: Given) => does.current(...given), []);
}

const ThirdView = lazy(async () => ({ default: (await import("./ThirdView.tsx")).ThirdView }));
const CalmPlan = memo(PlanView);
const CalmElevation = memo(ElevationView);
const SectionMark = lazy(async () => ({ default: (await import("../drawing/section/SectionMark.tsx")).SectionMark }));
