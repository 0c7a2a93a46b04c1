import type { Operation, Scheme } from "@cornerway/schema";
import { lazy, Suspense, useState } from "react";
import { Ruled } from "../../controls/Ruled.tsx";
import { namesIn } from "../../wording/name-of.ts";
import "./adding.css";

const AddSeat = lazy(() => import("./AddSeat.tsx"));
const AddTie = lazy(() => import("./AddTie.tsx"));
const AddLock = lazy(() => import("./AddLock.tsx"));
const AddLoad = lazy(() => import("./AddLoad.tsx"));
const AddUse = lazy(() => import("./AddUse.tsx"));
const AddFound = lazy(() => import("./AddFound.tsx"));
const AddBeam = lazy(() => import("./AddBeam.tsx"));
const LayOut = lazy(() => import("./LayOut.tsx"));

const toUnit = ["Seat", "Tie", "Lock", "Load", "Use", "Steel found", "Beam", "Lay out"] as const;
type Addable = (typeof toUnit)[number];

export interface AddingProps {
  scheme: Scheme;
  ids: readonly string[];
  onDraw: (operations: Operation[]) => void;
  /** Takes a beam in hand, to be drawn by two presses. */
  onBeamByHand: () => void;
}

/** What can be added to the thing touched, or done with all that is chosen: a row of words, one of them open. */
export function Adding({ scheme, ids, onDraw, onBeamByHand }: AddingProps) {
  const [open, setOpen] = useState<Addable | null>(null);
  const offered = offeredTo(scheme, ids);
  if (offered.length === 0) return null;
  const shown = open !== null && offered.includes(open) ? open : null;
  return (
    <div className="adding">
      <div className="adding-row" role="group" aria-label="Add">
        {offered.map((name) => (
          <button
            key={name}
            type="button"
            aria-expanded={shown === name}
            onClick={() => setOpen(shown === name ? null : name)}
          >
            {name}
          </button>
        ))}
      </div>
      {shown === null ? null : (
        <Suspense fallback={<Ruled label="Laying the slip out" lines={2} />}>
          <AddingForm scheme={scheme} ids={ids} what={shown} onDraw={onDraw} onBeamByHand={onBeamByHand} />
        </Suspense>
      )}
    </div>
  );
}

function offeredTo(scheme: Scheme, ids: readonly string[]): readonly Addable[] {
  const [only] = ids;
  if (ids.length !== 1 || only === undefined) return ids.length > 1 ? ["Lay out"] : [];
  if (scheme.containers.some(({ id }) => id === only)) return toUnit;
  if (scheme.posts.some(({ id }) => id === only)) return ["Beam", "Steel found", "Lay out"];
  if (scheme.beams.some(({ id }) => id === only)) return ["Steel found", "Lay out"];
  return scheme.pads.some(({ id }) => id === only) ? ["Lay out"] : [];
}

function AddingForm({ scheme, ids, what, onDraw, onBeamByHand }: AddingProps & { what: Addable }) {
  const [only = ""] = ids;
  const name = ids.length > 1 ? `these ${ids.length}` : namesIn(scheme)(only);
  const unit = scheme.containers.find(({ id }) => id === only);
  const toIt = unit === undefined ? null : { scheme, unit, onDraw };
  switch (what) {
    case "Seat":
      return toIt === null ? null : <AddSeat {...toIt} />;
    case "Tie":
      return toIt === null ? null : <AddTie {...toIt} />;
    case "Lock":
      return toIt === null ? null : <AddLock {...toIt} />;
    case "Load":
      return toIt === null ? null : <AddLoad {...toIt} />;
    case "Use":
      return toIt === null ? null : <AddUse {...toIt} />;
    case "Steel found":
      return <AddFound key={only} scheme={scheme} elementId={only} name={name} onDraw={onDraw} />;
    case "Beam":
      return <AddBeam scheme={scheme} elementId={only} onDraw={onDraw} onByHand={onBeamByHand} />;
    case "Lay out":
      return <LayOut key={ids.join()} scheme={scheme} ids={ids} name={name} onDraw={onDraw} />;
  }
}
