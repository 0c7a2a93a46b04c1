import { containerNumberWords, lastInspection, type SurveyedContainerNow, type SurveyStep } from "@cornerway/schema";
import { dayAndTimeOf } from "../../controls/calendar.ts";
import { PhotoStrip } from "../../photos/PhotoStrip.tsx";
import { useRoom, whyNot } from "../../room/room-context.ts";
import { useUnits } from "../../units/use-units.ts";
import { gaugeLength } from "../../wording/millimetres.ts";
import { departureWords, stateWords, surveyStepSentence } from "../../wording/survey-words.ts";
import { FindingsTable } from "./FindingsTable.tsx";
import { InspectionForm } from "./InspectionForm.tsx";
import { JudgementForm } from "./JudgementForm.tsx";
import { PlateTable } from "./PlateTable.tsx";
import { PositionForm } from "./PositionForm.tsx";
import { typeWords } from "./type-words.ts";

/** One container: how it stands, what was found of it, and what may be done about it now. */
export function SurveyedItem({ now, revision }: { now: SurveyedContainerNow; revision: string | null }) {
  const { project } = useRoom();
  const units = useUnits();
  const { container, state, position, departures } = now;
  const inspection = lastInspection(container);
  const may = (act: "survey-container" | "judge-container" | "assign-container") => whyNot(project, act) === undefined;
  return (
    <details className="matter surveyed" open={state !== "accepted" || departures.length > 0}>
      <summary>
        {container.number}. {containerNumberWords(container.containerNumber)}, {stateWords[state]}
        {position === null ? "" : `, in the place of ${position.tag}`}
      </summary>
      <p className="note-grey">
        {typeWords(container.type)}. Offered by {container.author.name}, {dayAndTimeOf(container.offeredAt)}.
      </p>
      {departures.length === 0 ? null : (
        <p className="matter-stale">
          What revision {revision} says of its place is stale:{" "}
          {departures.map((each) => departureWords(each, (um) => gaugeLength(um, units))).join("; ")}.
        </p>
      )}
      {inspection === undefined ? null : (
        <>
          <PlateTable inspection={inspection} />
          <FindingsTable findings={now.findings} />
          <PhotoStrip photos={inspection.photos} />
        </>
      )}
      <ol className="survey-steps">
        {container.steps.map((step) => (
          <StepLine key={step.id} step={step} containerNumber={container.containerNumber} />
        ))}
      </ol>
      {may("judge-container") && inspection !== undefined ? <JudgementForm now={now} /> : null}
      {may("assign-container") ? <PositionForm now={now} /> : null}
      {may("survey-container") ? <InspectionForm container={container} /> : null}
    </details>
  );
}

function StepLine({ step, containerNumber }: { step: SurveyStep; containerNumber: string }) {
  return (
    <li className={`said-by-person hand-${step.by.role}`}>
      {surveyStepSentence({ kind: "container followed", containerId: "", containerNumber, step })}{" "}
      <small className="lettered">
        {step.by.name}, {dayAndTimeOf(step.at)}
      </small>
    </li>
  );
}
