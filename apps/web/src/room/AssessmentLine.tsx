import { may, type AssessmentRun, type Project } from "@cornerway/schema";
import { Command } from "../controls/Command.tsx";
import { useAssessAgain, useAssessmentRun, useStopAssessment } from "../data/assessment-run.ts";
import "./assessment-line.css";

/** How the service's check of a revision goes, while it is under way or when it went wrong; nothing once it is done. */
export function AssessmentLine({ project, letter }: { project: Project; letter: string }) {
  const { data: run } = useAssessmentRun(project.id, letter);
  const again = useAssessAgain(project.id, letter);
  const stop = useStopAssessment(project.id, letter);
  if (run === undefined || run.state === "done") return null;
  const mayRun = may(project.roles, "run-assessment");
  const failed = run.state === "failed";
  const wrong = again.error ?? stop.error;
  return (
    <div className="assessment-line" role="status">
      <p>{runSentence(run)}</p>
      {mayRun && failed ? <Command onPress={() => again.mutate()}>Check it again</Command> : null}
      {mayRun && run.state === "waiting" ? (
        <Command quiet onPress={() => stop.mutate()}>
          Stop the check
        </Command>
      ) : null}
      {wrong === null ? null : <p>{wrong.message}</p>}
    </div>
  );
}

/** Where the check stands, in a sentence. */
export function runSentence({ letter, state, startedAt, steps, leftMs, why }: AssessmentRun): string {
  if (state === "failed") return `Revision ${letter} could not be checked: ${why ?? "the reason is not known"}.`;
  if (state === "unreadable")
    return `Revision ${letter} was checked by a newer engine; its answer cannot be read here.`;
  if (startedAt === null) return `Revision ${letter} waits to be checked.`;
  const left = leftMs === null ? "" : `, about ${Math.ceil(leftMs / 1000)} s left`;
  return `Revision ${letter} is being checked: ${steps.done} of ${steps.of} steps${left}.`;
}
