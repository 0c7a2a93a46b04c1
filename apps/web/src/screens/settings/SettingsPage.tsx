import { Link } from "@tanstack/react-router";
import { lazy, Suspense } from "react";
import { Ruled } from "../../controls/Ruled.tsx";
import { useDraft } from "../../data/draft/use-draft.ts";
import type { DraftStore } from "../../data/draft/draft-store.ts";
import { useRevision } from "../../data/revision.ts";
import { useRoom, whyNot } from "../../room/room-context.ts";
import { PageSheet } from "../../sheet/PageSheet.tsx";
import { UnitsField } from "../../units/UnitsField.tsx";
import { AuthoritySection } from "./AuthoritySection.tsx";
import { KeepSection } from "./KeepSection.tsx";
import { ProjectWords } from "./ProjectWords.tsx";
import { SiteForm } from "./SiteForm.tsx";
import "./settings.css";

const BasisForm = lazy(() => import("../../twin/BasisForm.tsx"));

/** What holds for the whole project: its site, the code edition, the units one reads in. */
export function SettingsPage() {
  const { project, draft } = useRoom();
  return (
    <PageSheet
      title={`${project.name}, settings`}
      caption={`${project.client} · ${project.place}`}
      heading={`${project.name}: site and units`}
      way={
        <>
          <Link
            className="command command-quiet"
            to="/projects/$projectId/cost-book"
            params={{ projectId: project.id }}
          >
            Cost book
          </Link>
          <Link className="command command-quiet" to="/help">
            How to read the sheets
          </Link>
          <Link className="command" to="/projects/$projectId" params={{ projectId: project.id }}>
            To the sheets
          </Link>
        </>
      }
    >
      <div className="page-run settings">
        <section>
          <h2 className="caption">The site, as drawn</h2>
          {draft === null ? <SiteOfRevision /> : <SiteOfDraft store={draft} />}
        </section>
        <section>
          <h2 className="caption">For you alone</h2>
          <UnitsField />
          <p>
            Every number of every sheet is shown in these, and typed in either. They are kept for you in this browser
            and change nothing for others.
          </p>
        </section>
        <section>
          <h2 className="caption">The project</h2>
          <ProjectWords project={project} />
        </section>
        <KeepSection project={project} newest={project.revision} />
        <AuthoritySection />
      </div>
      <section className="settings settings-basis">
        <h2 className="caption">Design basis</h2>
        {draft === null ? (
          <p>The basis is seen with the draft, and in each revision sent.</p>
        ) : (
          <BasisOfDraft store={draft} />
        )}
      </section>
    </PageSheet>
  );
}

function SiteOfDraft({ store }: { store: DraftStore }) {
  const { project, say } = useRoom();
  const { scheme } = useDraft(store);
  return (
    <SiteForm
      site={scheme.site}
      asleepBecause={whyNot(project, "draw")}
      onSite={(site) => {
        store.draw([{ kind: "site.change", site }]);
        say("The site is drawn so.");
      }}
    />
  );
}

function BasisOfDraft({ store }: { store: DraftStore }) {
  const { project, say } = useRoom();
  const { scheme } = useDraft(store);
  return (
    <Suspense fallback={<Ruled label="Laying the form out" />}>
      {whyNot(project, "make-request") === undefined ? (
        <p>How sheet walls count is the engineer’s to choose: by a change request on sheet 3, Review.</p>
      ) : null}
      <BasisForm
        basis={scheme.basis}
        edition={scheme.site.edition}
        asleepBecause={whyNot(project, "draw")}
        onDraw={(operations) => {
          store.draw(operations);
          say("The design basis is changed.");
        }}
      />
    </Suspense>
  );
}

/** Whoever sees no draft sees the site of the last revision. */
function SiteOfRevision() {
  const { project } = useRoom();
  const revision = useRevision(project.id, project.revision);
  if (project.revision === null) return <p>No revision was sent yet; its site is shown here once there is one.</p>;
  if (revision.data === undefined)
    return <p>{revision.isError ? revision.error.message : "The revision is on its way."}</p>;
  return (
    <SiteForm
      site={revision.data.scheme.site}
      asleepBecause={`Only the architect draws. This is the site of revision ${project.revision}.`}
      onSite={() => undefined}
    />
  );
}
