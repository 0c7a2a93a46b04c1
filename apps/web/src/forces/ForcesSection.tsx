import type { RunForces } from "@cornerway/engine";
import { elementNames, figuresIn, inTags, runWords, type Scheme } from "@cornerway/schema";
import { useId, useMemo } from "react";
import { useUnits } from "../units/use-units.ts";
import { listOf } from "../wording/list-of.ts";
import { namesIn } from "../wording/name-of.ts";
import { Reactions } from "./Reactions.tsx";
import type { Forces, ForcesShown } from "./use-forces.ts";
import "./forces.css";

export interface ForcesSectionProps {
  shown: ForcesShown;
  deflected: boolean;
  onDeflected: (drawn: boolean) => void;
}

/** Under which sum the strokes are drawn, and what else may be seen of it. */
export function ForcesSection({ shown: { told, stand, choose }, ...drawing }: ForcesSectionProps) {
  if (told === null) return null;
  return (
    <section className="forces" aria-label="Where the load goes">
      {told.why === null ? (
        <>
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
        </>
      ) : (
        <p>The forces could not be worked out: {told.why}</p>
      )}
    </section>
  );
}

/** The sum in full, however long its words, over the list it is chosen from. */
function RunChoice({ told: { run, runs, scheme }, onChoose }: { told: Forces; onChoose: (run: string) => void }) {
  const id = useId();
  const words = useMemo(() => {
    const names = elementNames(scheme);
    return new Map(
      runs.map((each, n) => {
        const said = runWords(inTags(each, names));
        return [each, n === 0 ? `${said}: governs` : said];
      }),
    );
  }, [runs, scheme]);
  return (
    <>
      <h3 className="caption" id={id}>
        Stroke width is force in
      </h3>
      <div className="forces-run">
        <span aria-hidden="true">{words.get(run)}</span>
        <select aria-labelledby={id} value={run} onChange={({ target }) => onChoose(target.value)}>
          {runs.map((each) => (
            <option key={each} value={each}>
              {words.get(each)}
            </option>
          ))}
        </select>
      </div>
    </>
  );
}

type OfRunProps = Omit<ForcesSectionProps, "shown"> & { forces: RunForces; scheme: Scheme };

function OfRun({ forces, scheme, deflected, onDeflected }: OfRunProps) {
  const units = useUnits();
  const { force, small } = figuresIn(units);
  const nameOf = namesIn(scheme);
  const { largest } = forces.deflected;
  return (
    <>
      <p className="forces-fine">
        {forces.strands.length === 0
          ? "Nothing leaves the corners."
          : `Each strand carries about ${force(forces.shareKn)}.`}{" "}
        {forces.held.length === 0
          ? ""
          : `It stands only if ${listOf(forces.held.map(nameOf))} ${forces.held.length === 1 ? "is" : "are"} held by connections that are not drawn. `}
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
