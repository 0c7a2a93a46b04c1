import { Link } from "@tanstack/react-router";
import { Ruled } from "../../controls/Ruled.tsx";
import { Trouble } from "../../controls/Trouble.tsx";
import { useRevision } from "../../data/revision.ts";
import { useSeal } from "../../data/seal.ts";
import { useRoom } from "../../room/room-context.ts";
import { PageSheet } from "../../sheet/PageSheet.tsx";
import { ChecksSection } from "./ChecksSection.tsx";
import { HindrancesSection } from "./HindrancesSection.tsx";
import { IssueSection } from "./IssueSection.tsx";
import { MarksSection } from "./MarksSection.tsx";
import { MemorySection } from "./MemorySection.tsx";
import "../../controls/matter.css";
import "./seal.css";

/** Everything between the newest revision and its seal: what is in the way, checks, dispositions, values, the issue. */
export function SealPage() {
  const { project } = useRoom();
  const seal = useSeal(project.id);
  const letter = seal.data?.revision ?? null;
  const revision = useRevision(project.id, letter);
  if (seal.isError && seal.data === undefined) return <Trouble error={seal.error} again={() => void seal.refetch()} />;
  if (revision.isError && revision.data === undefined)
    return <Trouble error={revision.error} again={() => void revision.refetch()} />;
  if (seal.data === undefined || (letter !== null && revision.data === undefined))
    return <Ruled label="Fetching what lies before the seal" />;
  return (
    <PageSheet
      title={`${project.name}, check and seal`}
      caption={`${project.client} · ${project.place}`}
      heading={letter === null ? "Nothing to seal was sent yet" : `Revision ${letter}: check and seal`}
      way={
        <Link className="command" to="/projects/$projectId/sheet/$sheet" params={{ projectId: project.id, sheet: "3" }}>
          To the review
        </Link>
      }
    >
      <p>
        Nothing here seals. The engineer of record issues a revision for seal, seals it by their own means, and lays the
        sealed copy beside it.
      </p>
      {revision.data === undefined ? null : (
        <>
          <div className="page-columns">
            <HindrancesSection seal={seal.data} revision={revision.data} />
            <IssueSection seal={seal.data} revision={revision.data} />
          </div>
          <ChecksSection seal={seal.data} revision={revision.data} />
          <MarksSection seal={seal.data} revision={revision.data} />
          <MemorySection seal={seal.data} />
        </>
      )}
    </PageSheet>
  );
}
