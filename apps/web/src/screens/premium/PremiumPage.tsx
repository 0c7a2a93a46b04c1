import { may } from "@cornerway/schema";
import { Link } from "@tanstack/react-router";
import { useState } from "react";
import { Ruled } from "../../controls/Ruled.tsx";
import { PersonField } from "../../controls/PersonField.tsx";
import { useRevisions } from "../../data/revision.ts";
import { useRoom, whyNot } from "../../room/room-context.ts";
import { PageSheet } from "../../sheet/PageSheet.tsx";
import { DraftPremium } from "./DraftPremium.tsx";
import { OfRevision } from "./OfRevision.tsx";
import "../../prices/prices.css";
import "./premium.css";

const ofDraft = "the draft";

/** What a revision, or the draft, costs above the plain stack: line by line, by unit and by mark. */
export function PremiumPage() {
  const { project, draft } = useRoom();
  const revisions = useRevisions(project.id);
  const [chosen, choose] = useState<string | null>(null);
  const hidden = whyNot(project, "read-prices");
  if (hidden === undefined && revisions.isPending) return <Ruled label="Fetching the revisions" />;
  const letters = (revisions.data ?? []).toSorted((a, b) => (a.sentAt < b.sentAt ? 1 : -1)).map(({ letter }) => letter);
  const seesDraft = draft !== null && may(project.roles, "read-draft");
  const shown = chosen ?? letters[0] ?? (seesDraft ? ofDraft : null);
  return (
    <PageSheet
      title={`${project.name}, premium`}
      caption={`${project.client} · ${project.place}`}
      heading={`${project.name}: premium over the plain stack`}
      way={
        <>
          <Link
            className="command command-quiet"
            to="/projects/$projectId/alternatives"
            params={{ projectId: project.id }}
          >
            Alternatives
          </Link>
          <Link
            className="command command-quiet"
            to="/projects/$projectId/cost-book"
            params={{ projectId: project.id }}
          >
            Cost book
          </Link>
          <Link className="command" to="/projects/$projectId" params={{ projectId: project.id }}>
            To the sheets
          </Link>
        </>
      }
    >
      {hidden === undefined ? null : <p>{hidden}</p>}
      {hidden === undefined && shown === null ? <p>It is counted when the first revision is sent.</p> : null}
      {hidden === undefined && shown !== null ? (
        <>
          <PersonField label="Counted for">
            {(bound) => (
              <select
                {...bound}
                className="premium-choice"
                value={shown}
                onChange={({ target }) => choose(target.value)}
              >
                {letters.map((letter) => (
                  <option key={letter} value={letter}>
                    revision {letter}
                  </option>
                ))}
                {seesDraft ? <option value={ofDraft}>{ofDraft}, as it is now</option> : null}
              </select>
            )}
          </PersonField>
          {shown === ofDraft && draft !== null ? (
            <DraftPremium store={draft} />
          ) : (
            <OfRevision key={shown} letter={shown} earlier={letters.slice(letters.indexOf(shown) + 1)} />
          )}
        </>
      ) : null}
    </PageSheet>
  );
}
