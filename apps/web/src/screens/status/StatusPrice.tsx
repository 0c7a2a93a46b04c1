import type { Revision } from "@cornerway/schema";
import { useRevisionPremium } from "../../data/premium.ts";
import { RevisionPrice } from "../../prices/RevisionPrice.tsx";
import { useRoom, whyNot } from "../../room/room-context.ts";

/** What the last revision costs, or why no figure stands here. */
export function StatusPrice({ revision, earlier }: { revision: Revision | null; earlier: string | null }) {
  const { project } = useRoom();
  const priced = useRevisionPremium(project, revision?.letter ?? null);
  const hidden = whyNot(project, "read-prices");
  if (hidden !== undefined) return <p>{hidden}</p>;
  if (revision === null) return <p>It is counted when the first revision is sent.</p>;
  if (priced.data === undefined)
    return <p>{priced.isError ? `It cannot be counted now: ${priced.error.message}` : "It is being counted."}</p>;
  return <RevisionPrice priced={priced.data} scheme={revision.scheme} earlier={earlier} />;
}
