import { Link } from "@tanstack/react-router";
import { useSets } from "../../data/permit-set.ts";
import { useRoom } from "../../room/room-context.ts";
import { PageSheet } from "../../sheet/PageSheet.tsx";
import { FirstSet } from "./FirstSet.tsx";
import { PlanCheckSection } from "./PlanCheckSection.tsx";
import { SetsSection } from "./SetsSection.tsx";
import "./permit-set.css";

/** The printed set of a revision, and the comments of the authority that it answers. */
export function PermitSetPage() {
  const { project } = useRoom();
  const sets = useSets(project.id);
  const params = { projectId: project.id };
  return (
    <PageSheet
      title={`${project.name}, permit set`}
      caption={`${project.client} · ${project.place}`}
      heading={`${project.name}: permit set`}
      way={
        <>
          <Link className="command command-quiet" to="/projects/$projectId/seal" params={params}>
            On the way to the seal
          </Link>
          <Link className="command" to="/projects/$projectId" params={params}>
            To the sheets
          </Link>
        </>
      }
    >
      <div className="page-columns">
        <SetsSection />
        <PlanCheckSection />
      </div>
      {sets.data?.length === 0 ? <FirstSet /> : null}
    </PageSheet>
  );
}
