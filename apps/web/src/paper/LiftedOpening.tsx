import { lazy, Suspense, useSyncExternalStore } from "react";
import type { Side } from "../drawing/contract.ts";
import type { ViewTransform } from "../drawing/view-transform.ts";
import type { Carried, Lift } from "../hand/lift.ts";

const HeldOpening = lazy(async () => ({ default: (await import("../drawing/elevation/HeldOpening.tsx")).HeldOpening }));

type LiftedOpeningProps = { lift: Lift; side: Side; view: ViewTransform };

/** The opening whose edges are in hand, drawn on the elevation where they are while the hand moves. */
export function LiftedOpening({ lift, side, view }: LiftedOpeningProps) {
  const carried = useSyncExternalStore(lift.listen, lift.now);
  const opening = carried === null ? undefined : openingInHand(carried);
  const unit = carried?.scheme.containers.find(({ id }) => id === opening?.containerId);
  if (opening === undefined || unit === undefined) return null;
  return (
    <Suspense fallback={null}>
      <HeldOpening opening={opening} unit={unit} side={side} view={view} />
    </Suspense>
  );
}

/** The opening being shaped or cut, as it is now. */
function openingInHand({ held, scheme }: Carried) {
  if (held.kind !== "edges" && held.kind !== "cut") return undefined;
  const [cut] = held.operations.flatMap((each) => (each.kind === "opening.cut" ? [each.opening.id] : []));
  const id = held.kind === "edges" ? held.id : cut;
  return scheme.openings.find((opening) => opening.id === id);
}
