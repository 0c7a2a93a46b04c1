import type { RunForces } from "@cornerway/engine";
import { elementNames, figuresIn, inTags, runWords, type Scheme } from "@cornerway/schema";
import { useMemo } from "react";
import { Slip } from "../sheet/Slip.tsx";
import { useUnits } from "../units/use-units.ts";
import { listOf } from "../wording/list-of.ts";
import { namesIn } from "../wording/name-of.ts";
import { Reactions } from "./Reactions.tsx";
import type { Forces, ForcesShown } from "./use-forces.ts";
import "./forces.css";

export interface ForcesSlipProps {
  shown: ForcesShown;
  deflected: boolean;
  onDeflected: (drawn: boolean) => void;
}

/** Under which sum the strokes are drawn, and what else may be seen of it. */
export function ForcesSlip({ shown: { told, stand, choose }, ...drawing }: ForcesSlipProps) {
  if (told === null) return null;
  if (told.why !== null)
    return (
      <Slip label="Where the load goes">
        <p>The forces could not be worked out: {told.why}</p>
      </Slip>
    );
  return (
    <Slip label="Where the load goes">
      <RunChoice told={told} onChoose={choose} />
      {stand ? null : (
        <p className="forces-waits" role="status">
          Being solved. What is drawn in pencil is of the answer before.
        </p>
      )}
      {told.forces === null ? (
        <p>Nothing makes it stand under this sum: no path is drawn.</p>
      ) : (
        <OfRun forces={told.forces} scheme={told.scheme} {...drawing} />
      )}
    </Slip>
  );
}

function RunChoice({ told: { run, runs, scheme }, onChoose }: { told: Forces; onChoose: (run: string) => void }) {
  const words = useMemo(() => {
    const names = elementNames(scheme);
    return new Map(runs.map((each) => [each, runWords(inTags(each, names))]));
  }, [runs, scheme]);
  return (
    <label className="forces-run">
      Stroke width is force in
      <select value={run} onChange={({ target }) => onChoose(target.value)}>
        {runs.map((each, n) => (
          <option key={each} value={each}>
            {n === 0 ? `${words.get(each) ?? each}: governs` : words.get(each)}
          </option>
        ))}
      </select>
    </label>
  );
}

type OfRunProps = Omit<ForcesSlipProps, "shown"> & { forces: RunForces; scheme: Scheme };

function OfRun({ forces, scheme, deflected, onDeflected }: OfRunProps) {
  const units = useUnits();
  const { force, small } = figuresIn(units);
  const nameOf = namesIn(scheme);
  const { largest } = forces.deflected;
  return (
    <>
      {forces.held.length === 0 ? null : (
        <p>
          It stands only if {listOf(forces.held.map(nameOf))} {forces.held.length === 1 ? "is" : "are"} held by
          connections that are not drawn.
        </p>
      )}
      <p className="forces-fine">
        {forces.strands.length === 0
          ? "Nothing leaves the corners."
          : `Each strand carries about ${force(forces.shareKn)}.`}{" "}
        Screening, {forces.assumptions}.
      </p>
      <details className="forces-more">
        <summary>Deflected shape, reactions</summary>
        <label className="forces-deflected">
          <input type="checkbox" checked={deflected} onChange={({ target }) => onDeflected(target.checked)} />
          <span>
            Draw the deflected shape
            {largest === null ? "" : `; at most ${small(largest.mm)}, on ${nameOf(largest.ownerId)}`}. Each side says
            how much larger it is drawn.
          </span>
        </label>
        <Reactions reactions={forces.reactions} nameOf={nameOf} units={units} />
      </details>
    </>
  );
}
