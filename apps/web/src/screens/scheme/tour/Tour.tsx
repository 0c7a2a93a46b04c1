import { useEffect, useState } from "react";
import type { DraftSnapshot } from "../../../data/draft/draft-store.ts";
import { Command } from "../../../controls/Command.tsx";
import { useRoom, whyNot } from "../../../room/room-context.ts";
import { Slip } from "../../../sheet/Slip.tsx";
import { tourSeen } from "./tour-seen.ts";
import { tourSteps, type TourState } from "./tour-steps.ts";
import "./tour.css";

/** The first steps of whoever draws here first: one slip at a time, each going on by itself once it is done. */
export function Tour({ draft, noteChosen }: { draft: DraftSnapshot; noteChosen: boolean }) {
  const { project, me } = useRoom();
  const [away, putAway] = useState(() => tourSeen.by(me.id) || draft.scheme.containers.length > 0);
  if (away || whyNot(project, "draw") !== undefined) return null;
  const end = () => {
    tourSeen.put(me.id);
    putAway(true);
  };
  const state = { scheme: draft.scheme, noteChosen, canRedo: draft.canRedo, revision: project.revision };
  return <Steps state={state} onEnd={end} />;
}

function Steps({ state, onEnd }: { state: TourState; onEnd: () => void }) {
  const { say } = useRoom();
  const [at, setAt] = useState(0);
  const [begun, begin] = useState(state);
  const step = tourSteps[at];
  const done = step?.isDone(state, begun) ?? false;
  const go = () => {
    begin(state);
    setAt(at + 1);
  };
  if (done && at < tourSteps.length - 1) go();
  useEffect(() => {
    if (step !== undefined && at > 0) say(`Next: ${step.heading}. ${step.sentence}`);
  }, [say, step, at]);
  if (step === undefined) return null;
  const last = at === tourSteps.length - 1;
  return (
    <Slip label={`First steps, ${at + 1} of ${tourSteps.length}`}>
      <h3 className="tour-heading">{step.heading}</h3>
      <p>{step.sentence}</p>
      <ol className="tour-marks" aria-hidden="true">
        {tourSteps.map(({ heading }, index) => (
          <li key={heading} className={index < at ? "tour-done" : index === at ? "tour-here" : undefined} />
        ))}
      </ol>
      <div className="twin-row">
        {last ? (
          <Command next onPress={onEnd}>
            I know the way now
          </Command>
        ) : (
          <>
            <Command onPress={go}>Leave this one out</Command>
            <Command quiet onPress={onEnd}>
              Put the first steps away
            </Command>
          </>
        )}
      </div>
    </Slip>
  );
}
