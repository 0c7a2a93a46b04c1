import type { ProjectPeople } from "@cornerway/schema";
import { Link, useParams } from "@tanstack/react-router";
import { Refused } from "../../controls/Refused.tsx";
import { Ruled } from "../../controls/Ruled.tsx";
import { Trouble } from "../../controls/Trouble.tsx";
import { isProblem } from "../../data/http.ts";
import { usePeople, usePeopleAct } from "../../data/people.ts";
import { useProjects } from "../../data/project.ts";
import { useSession } from "../../data/session.ts";
import { PageSheet } from "../../sheet/PageSheet.tsx";
import { InvitationTable } from "./InvitationTable.tsx";
import { InviteForm } from "./InviteForm.tsx";
import { MayTables } from "./MayTables.tsx";
import { MemberTable } from "./MemberTable.tsx";
import { NotYours } from "./NotYours.tsx";
import { ReaderLinksSection } from "./ReaderLinksSection.tsx";
import { WebhooksSection } from "./WebhooksSection.tsx";
import "./people.css";

/** Who has a part in a project, since when, and what each part may do and see. */
export function PeoplePage() {
  const { projectId } = useParams({ from: "/projects/$projectId/people" });
  const people = usePeople(projectId);
  if (people.isPending) return <Ruled label="Fetching who has a part" />;
  if (people.isError && (isProblem(people.error, "not-found") || isProblem(people.error, "role-refused")))
    return <NotYours />;
  if (people.isError && people.data === undefined)
    return <Trouble error={people.error} again={() => void people.refetch()} />;
  return <People projectId={projectId} people={people.data} error={people.error} />;
}

function People({ projectId, people, error }: { projectId: string; people: ProjectPeople; error: unknown }) {
  const act = usePeopleAct(projectId);
  const session = useSession();
  const hasPart = useProjects().data?.some(({ id }) => id === projectId) ?? false;
  const { project, members, invitations, acts } = people;
  return (
    <PageSheet
      title={`${project.name}, people`}
      caption={project.place}
      heading={`${project.name}: who has a part`}
      way={
        hasPart ? (
          <Link className="command" to="/projects/$projectId" params={{ projectId }}>
            To the sheets
          </Link>
        ) : (
          <Link className="command" to="/">
            To the desk
          </Link>
        )
      }
    >
      <Refused error={act.error ?? error} />
      <MemberTable members={members} acts={acts} meId={session.data?.person.id ?? ""} onAct={act.mutate} />
      {acts.includes("invite") && (
        <div className="page-columns">
          <InviteForm projectId={projectId} />
          <InvitationTable
            invitations={invitations}
            onWithdraw={(invitationId) => act.mutate({ act: "withdraw", invitationId })}
          />
        </div>
      )}
      {acts.includes("invite") && <ReaderLinksSection projectId={projectId} links={people.readerLinks} />}
      <WebhooksSection projectId={projectId} />
      <MayTables />
    </PageSheet>
  );
}
