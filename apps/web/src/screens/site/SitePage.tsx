import { siteItemKinds, type SiteNow } from "@cornerway/schema";
import { Link } from "@tanstack/react-router";
import { Ruled } from "../../controls/Ruled.tsx";
import { Trouble } from "../../controls/Trouble.tsx";
import { useRevision } from "../../data/revision.ts";
import { useSite } from "../../data/site.ts";
import { useRoom } from "../../room/room-context.ts";
import { PageSheet } from "../../sheet/PageSheet.tsx";
import { namesIn } from "../../wording/name-of.ts";
import { builtWords } from "../../wording/site-words.ts";
import { FirstBuilt } from "./FirstBuilt.tsx";
import { KindSection } from "./KindSection.tsx";
import "../../controls/matter.css";
import "./site.css";

/** What is built of the revision that is issued or stamped, item by item. Made for a phone first: it is used standing. */
export function SitePage() {
  const { project } = useRoom();
  const site = useSite(project.id);
  const letter = site.data?.revision ?? null;
  const revision = useRevision(project.id, letter);
  if (site.isError && site.data === undefined) return <Trouble error={site.error} again={() => void site.refetch()} />;
  if (revision.isError && revision.data === undefined)
    return <Trouble error={revision.error} again={() => void revision.refetch()} />;
  if (site.data === undefined || (letter !== null && revision.data === undefined))
    return <Ruled label="Fetching the site" />;
  const params = { projectId: project.id };
  const nameOf = namesIn(revision.data?.scheme ?? null);
  return (
    <PageSheet
      title={`${project.name}, site`}
      caption={`${project.client} · ${project.place}`}
      heading={
        letter === null ? builtWords["nothing to build from"] : `Revision ${letter}: ${builtWords[site.data.built]}`
      }
      way={
        <>
          <Link className="command command-quiet" to="/projects/$projectId/survey" params={params}>
            To the survey
          </Link>
          <Link className="command" to="/projects/$projectId" params={params}>
            To the sheets
          </Link>
        </>
      }
    >
      <p>{leadWords(site.data)}</p>
      {letter === null ? <FirstBuilt /> : null}
      {siteItemKinds.map((kind) => (
        <KindSection
          key={kind}
          kind={kind}
          items={site.data.items.filter(({ item }) => item.kind === kind)}
          revision={letter ?? ""}
          nameOf={nameOf}
        />
      ))}
    </PageSheet>
  );
}

function leadWords({ revision, by, built, items }: SiteNow): string {
  if (revision === null)
    return "A revision is built from once the engineer has issued it for seal, or stamped it so that work goes on.";
  const closed = items.filter(({ waitsFor }) => waitsFor === null).length;
  const how = by === "issued for seal" ? "issued for seal" : "stamped by the engineer";
  const otherwise =
    built === "not built as drawn"
      ? " What was found of what stands otherwise is stale until it is made as drawn, drawn as it stands, or accepted by the engineer."
      : "";
  return `It is ${how}. ${closed} of ${items.length} items are closed. Each is closed by whoever has looked at it, with a photo.${otherwise}`;
}
