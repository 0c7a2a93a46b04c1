import type { Scheme } from "@cornerway/schema";
import {
  lazy,
  memo,
  Suspense,
  useCallback,
  useDeferredValue,
  useLayoutEffect,
  useRef,
  useState,
  useSyncExternalStore,
} from "react";
import type { PointerEvent } from "react";
import { storeysOf } from "@cornerway/engine";
import type { PickedElement, Side } from "../drawing/contract.ts";
import { ElevationView } from "../drawing/elevation/ElevationView.tsx";
import { IsometricView } from "../drawing/isometric/IsometricView.tsx";
import type { OtherHand } from "../drawing/others/other-hands.ts";
import { PlanView } from "../drawing/plan/PlanView.tsx";
import { screenToSite } from "../drawing/view-transform.ts";
import type { Point } from "../hand/use-hand.ts";
import { viewAt } from "./lay-views.ts";
import { isPlain, type Lens } from "./lens.ts";
import { useOrbitPointer } from "./use-orbit-pointer.ts";
import { useLensPointer } from "./use-lens-pointer.ts";
import { WithinView } from "./WithinView.tsx";
import type { LaidView, LaidViews } from "./lay-views.ts";
import { ChoosingBand } from "./ChoosingBand.tsx";
import type { SchemePaperProps } from "./paper-props.ts";
import { PaperTitles } from "./PaperTitles.tsx";
import { LiftedWay } from "./LiftedWay.tsx";
import { showsDetails } from "./shows-details.ts";
import { useLiftedShift } from "./use-lifted-shift.ts";
import { useRested } from "./use-rested.ts";
import "./paper.css";

/** Pointer reach of snapping, px on the paper. */
const reachPx = 12;

/** Elevation, plan and isometric on one field; presses and moves come out as places in the site frame. */
export function SchemePaper(props: SchemePaperProps) {
  const { field, views, scheme, side, storey, section } = props;
  const picked = useRef<PickedElement | null>(null);
  const paper = useRef<SVGSVGElement>(null);
  const orbit = useOrbitPointer(paper, views, props.onPicture);
  const lens = useLensPointer(paper, views, props.looking, props.onCancel);
  const [planWanted, setPlanWanted] = useState(false);
  const planShown = views.oneView && planWanted;
  const pick = useCallback((found: PickedElement) => {
    picked.current = found;
  }, []);
  const levelMm = storeysOf(scheme)[storey]?.levelMm ?? scheme.site.groundZUm / 1000;
  const point = (event: PointerEvent<SVGSVGElement>) => pointOf(event, views, side, levelMm);
  const { lenses } = props.looking;
  const details = showsDetails(props) ? props.details : null;
  const turns = props.isometric && section === null && details === null;
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
    onElementFocus: useSame(props.onFocusElement),
  };
  useLiftedShift(paper, props);
  // The picture follows where the hand rests; the views one draws on never wait for it.
  const calmScheme = useDeferredValue(props.rested);
  const lastAssessment = useDeferredValue(props.assessment);
  const calmAssessment = useRested(lastAssessment, scheme !== props.rested);
  return (
    <svg
      ref={paper}
      className={props.inHand ? "paper paper-in-hand" : "paper"}
      width={field.widthPx}
      height={field.heightPx}
      viewBox={`0 0 ${field.widthPx} ${field.heightPx}`}
      role={props.inHand ? "application" : "group"}
      aria-label={props.inHand ? "Drawing, tool in hand: arrows move, Enter sets, Escape lets go" : "Drawing"}
      onPointerDown={(event) => {
        if (lens.down(event) || (turns && orbit.down(event))) return;
        const at = point(event);
        if (at !== null && event.button === 0) {
          event.currentTarget.setPointerCapture(event.pointerId);
          props.onPress(picked.current, at);
        }
        picked.current = null;
      }}
      onPointerMove={(event) => {
        if (lens.move(event) || orbit.move(event)) return;
        const at = point(event);
        if (at !== null) props.onMove(at);
      }}
      onPointerUp={(event) => {
        if (lens.up(event)) return;
        const orbited = orbit.up();
        if (orbited === "pressed" && picked.current !== null) props.onFocusElement(picked.current.id);
        if (orbited === null) props.onDrop();
        picked.current = null;
      }}
      onPointerCancel={lens.up}
    >
      {props.isometric && !views.oneView ? (
        <WithinView name="isometric" view={views.isometric} lens={lenses.isometric}>
          {details !== null ? (
            <Suspense fallback={null}>
              <DetailsView details={details} room={views.isometric.rect} firstNumber={3} />
            </Suspense>
          ) : section === null ? (
            <CalmIsometric
              {...shared}
              scheme={calmScheme}
              assessment={calmAssessment}
              transform={views.isometric.transform}
              eye={props.picture}
            />
          ) : (
            <Suspense fallback={null}>
              <CalmSection
                scheme={calmScheme}
                line={section}
                transform={views.isometric.transform}
                layer={props.assessment === null ? undefined : props.layer}
              />
            </Suspense>
          )}
        </WithinView>
      ) : null}
      {views.oneView && !planShown ? null : (
        <WithinView name="plan" view={views.plan} lens={lenses.plan}>
          <CalmPlan
            {...shared}
            transform={views.plan.transform}
            storey={storey}
            seenFrom={seenFrom(views.plan, lenses.plan)}
          />
          {section === null || !props.isometric || views.oneView ? null : (
            <Suspense fallback={null}>
              <SectionMark line={section} view={views.plan.transform} onLine={props.onSection} />
            </Suspense>
          )}
        </WithinView>
      )}
      {planShown ? null : (
        <WithinView name="elevation" view={views.elevation} lens={lenses.elevation}>
          <CalmElevation
            {...shared}
            transform={views.elevation.transform}
            side={side}
            storey={storey}
            figures
            levelLinesFromPx={-66}
            levelLinesToPx={field.widthPx - 24}
            seenFrom={seenFrom(views.elevation, lenses.elevation)}
          />
        </WithinView>
      )}
      <PaperTitles {...props} planShown={planShown} onPlan={setPlanWanted} />
      {props.others === undefined || props.others.length === 0 ? null : (
        <Others {...props} others={props.others} planShown={planShown} />
      )}
      {props.aligning === undefined ? null : <AligningTicks {...props} aligning={props.aligning} />}
      <LiftedWay lift={props.lift} views={views} side={side} planShown={planShown} />
      {props.band == null ? null : <ChoosingBand band={props.band} views={views} />}
    </svg>
  );
}

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

const CalmIsometric = memo(IsometricView);
const CalmPlan = memo(PlanView);
const CalmElevation = memo(ElevationView);
const CalmSection = lazy(async () => ({
  default: memo((await import("../drawing/section/SectionView.tsx")).SectionView),
}));
const AlignmentTicks = lazy(async () => ({
  default: (await import("../drawing/objects/AlignmentTicks.tsx")).AlignmentTicks,
}));
const OtherHands = lazy(async () => ({
  default: (await import("../drawing/others/OtherHands.tsx")).OtherHands,
}));
const DetailsView = lazy(async () => ({ default: (await import("../drawing/details/DetailsView.tsx")).DetailsView }));
const SectionMark = lazy(async () => ({ default: (await import("../drawing/section/SectionMark.tsx")).SectionMark }));

function Others({
  views,
  side,
  scheme,
  others,
  planShown,
}: SchemePaperProps & { others: readonly OtherHand[]; planShown: boolean }) {
  const shared = { scheme, hands: others };
  return (
    <Suspense fallback={null}>
      {planShown ? null : <OtherHands {...shared} projection={side} view={views.elevation.transform} />}
      {views.oneView && !planShown ? null : <OtherHands {...shared} projection="plan" view={views.plan.transform} />}
    </Suspense>
  );
}

function AligningTicks({
  views,
  side,
  scheme,
  lift,
  aligning: { unitId, stood },
}: SchemePaperProps & { aligning: { unitId: string; stood: Scheme } }) {
  const carried = useSyncExternalStore(lift.listen, lift.now);
  const shared = { stood, shown: carried?.scheme ?? scheme, unitId };
  return (
    <Suspense fallback={null}>
      <AlignmentTicks {...shared} projection={side} view={views.elevation.transform} />
      {views.oneView ? null : <AlignmentTicks {...shared} projection="plan" view={views.plan.transform} />}
    </Suspense>
  );
}

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
