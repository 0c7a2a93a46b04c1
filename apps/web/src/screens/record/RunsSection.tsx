import { engineVersion } from "@cornerway/engine";
import { may, type RecordedRun, type Revision } from "@cornerway/schema";
import { Command } from "../../controls/Command.tsx";
import { dayAndTimeOf } from "../../controls/calendar.ts";
import { Refused } from "../../controls/Refused.tsx";
import { useAssessAgain, useRuns } from "../../data/assessment-run.ts";
import { verdictWords } from "../../look/verdict-class.ts";
import { useRoom } from "../../room/room-context.ts";
import { differenceLines } from "../../wording/difference-lines.ts";

/** Every run of the engine on the newest revision, and what a newer engine finds otherwise. */
export function RunsSection({ revision }: { revision: Revision }) {
  const { project } = useRoom();
  const { letter, scheme } = revision;
  const runs = useRuns(project.id, letter);
  const again = useAssessAgain(project.id, letter);
  const last = runs.data?.at(-1);
  const newer = last !== undefined && last.engineVersion !== engineVersion;
  const tags = new Map(scheme.containers.map(({ id, tag }) => [id, tag]));
  return (
    <section>
      <h2 className="caption">What the engine said of revision {letter}</h2>
      {runs.data === undefined ? null : <RunList runs={runs.data} nameOf={(id) => tags.get(id) ?? id} />}
      {newer && (
        <p>
          This page has engine {engineVersion}, the last run was by {last.engineVersion}. Judged again, what it finds
          otherwise stands here, and the earlier run is kept.
        </p>
      )}
      {newer && may(project.roles, "run-assessment") && (
        <Command quiet onPress={() => again.mutate()} asleepBecause={again.isPending ? "It is under way." : undefined}>
          {`Judge revision ${letter} again`}
        </Command>
      )}
      <Refused error={runs.error ?? again.error} />
      <p>
        An old revision in an archive: <code>npx cornerway rerun archive.zip</code>.
      </p>
    </section>
  );
}

/** One line for each run, and below it what it says otherwise than the one before. */
export const RunList = ({ runs, nameOf }: { runs: readonly RecordedRun[]; nameOf: (id: string) => string }) => (
  <ol className="record-runs">
    {runs.map(({ attempt, engineVersion: by, doneAt, verdict, resultDigest, difference }) => (
      <li key={attempt} value={attempt}>
        Engine {by}, {dayAndTimeOf(doneAt)}: {resultDigest === null ? "cannot be read here" : verdictWords(verdict)}
        {difference === null ? null : (
          <ul>
            {differenceLines(difference, nameOf).map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        )}
      </li>
    ))}
  </ol>
);
