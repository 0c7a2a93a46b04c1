import { Link } from "@tanstack/react-router";
import { Ruled } from "../../controls/Ruled.tsx";
import { Trouble } from "../../controls/Trouble.tsx";
import { useSurvey } from "../../data/survey.ts";
import { useRoom, whyNot } from "../../room/room-context.ts";
import { PageSheet } from "../../sheet/PageSheet.tsx";
import { FirstSurvey } from "./FirstSurvey.tsx";
import { LimitsSection } from "./LimitsSection.tsx";
import { OfferForm } from "./OfferForm.tsx";
import { SurveyedItem } from "./SurveyedItem.tsx";
import "../../controls/matter.css";
import "./survey.css";

/** The containers offered for the building: their numbers, plates, damage and thickness, and where each goes. */
export function SurveyPage() {
  const { project } = useRoom();
  const survey = useSurvey(project.id);
  if (survey.isError && survey.data === undefined)
    return <Trouble error={survey.error} again={() => void survey.refetch()} />;
  if (survey.data === undefined) return <Ruled label="Fetching the survey" />;
  const { containers, revision } = survey.data;
  const params = { projectId: project.id };
  return (
    <PageSheet
      title={`${project.name}, survey`}
      caption={`${project.client} · ${project.place}`}
      heading={headingOf(containers.length, containers.filter(({ state }) => state === "accepted").length)}
      way={
        <>
          <Link className="command command-quiet" to="/projects/$projectId/site" params={params}>
            To the site
          </Link>
          <Link className="command" to="/projects/$projectId" params={params}>
            To the sheets
          </Link>
        </>
      }
    >
      <p>
        Plate facts are taken before the plate is painted over or removed. What was measured takes the place of what is
        assumed once the architect assigns the container and sends a revision.
      </p>
      <section aria-labelledby="survey-containers">
        <h2 className="caption" id="survey-containers">
          Containers
        </h2>
        {containers.length === 0 ? <p>No container was offered yet.</p> : null}
        {containers.map((each) => (
          <SurveyedItem key={each.container.id} now={each} revision={revision} />
        ))}
        {whyNot(project, "survey-container") === undefined ? <OfferForm /> : null}
      </section>
      {containers.length === 0 ? <FirstSurvey /> : null}
      <LimitsSection survey={survey.data} />
    </PageSheet>
  );
}

const headingOf = (count: number, accepted: number): string =>
  count === 0 ? "No container is surveyed yet" : `${accepted} of ${count} containers accepted`;
