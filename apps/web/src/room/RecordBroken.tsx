import { dayAndTimeOf } from "../controls/calendar.ts";
import { Command } from "../controls/Command.tsx";
import { useGoOnFrom, useHeadFinding } from "../data/kept-head.ts";
import "./record-broken.css";

/** Said over every sheet when the record does not continue what this browser knew of it; nothing as long as it does. */
export function RecordBroken({ projectId, lineHolds }: { projectId: string; lineHolds: boolean }) {
  const { data: finding } = useHeadFinding(projectId, lineHolds);
  const goOn = useGoOnFrom();
  if (finding?.is !== "broken") return null;
  const { kept, present } = finding;
  return (
    <section className="record-broken" role="alert" aria-label="The record is not the one this browser knew">
      <h2>The record is not the one this browser knew</h2>
      <p>
        On {dayAndTimeOf(kept.time)} this browser kept the head over entries 1 to {kept.number}. The record it is shown
        now does not continue it: something up to entry {kept.number} was altered or taken away, or an older copy of the
        record was put back.
      </p>
      <p>
        Do not answer, stamp or build from it. Tell the owner and whoever runs the service, and give them both heads. A
        bundle saved earlier shows which entries are others now.
      </p>
      <dl>
        <dt>Kept here</dt>
        <dd className="digest">
          {kept.number}:{kept.head}
        </dd>
        <dt>Shown now</dt>
        <dd className="digest">
          {present.number}:{present.head}
        </dd>
      </dl>
      <Command onPress={() => goOn.mutate(present)}>I know why: go on from the record shown now</Command>
    </section>
  );
}
