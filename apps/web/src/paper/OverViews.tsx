import type { Scheme } from "@cornerway/schema";
import { lazy, Suspense, useSyncExternalStore } from "react";
import type { OtherHands as Hands } from "../drawing/others/other-hands.ts";
import { ChoosingBand } from "./ChoosingBand.tsx";
import { LiftedOpening } from "./LiftedOpening.tsx";
import { LiftedWay } from "./LiftedWay.tsx";
import { OwnRoot } from "./OwnRoot.tsx";
import type { SchemePaperProps } from "./paper-props.ts";

const AlignmentTicks = lazy(async () => ({
  default: (await import("../drawing/objects/AlignmentTicks.tsx")).AlignmentTicks,
}));
const OtherHands = lazy(async () => ({
  default: (await import("../drawing/others/OtherHands.tsx")).OtherHands,
}));

/**
 * What lies over all views: other hands, where fittings would land, how far what is lifted has gone, the opening being
 * shaped, the choosing band. It is a sheet of its own, so that what is under it is not painted anew when it changes.
 */
export function OverViews(props: SchemePaperProps & { planShown: boolean }) {
  const { field, others, aligning, band } = props;
  return (
    <svg className="paper-over" width={field.widthPx} height={field.heightPx} aria-hidden="true">
      {others === undefined ? null : <Others {...props} others={others} />}
      <OwnRoot>
        {aligning === undefined ? null : <AligningTicks {...props} aligning={aligning} />}
        <LiftedWay lift={props.lift} views={props.views} side={props.side} planShown={props.planShown} />
        {props.planShown ? null : (
          <LiftedOpening lift={props.lift} side={props.side} view={props.views.elevation.transform} />
        )}
      </OwnRoot>
      {band == null ? null : <ChoosingBand band={band} views={props.views} />}
    </svg>
  );
}

function Others({ views, side, scheme, others, planShown }: SchemePaperProps & { others: Hands; planShown: boolean }) {
  const hands = useSyncExternalStore(others.listen, others.now);
  if (hands.length === 0) return null;
  const shared = { scheme, hands };
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
