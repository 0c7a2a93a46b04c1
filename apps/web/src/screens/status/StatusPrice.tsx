import type { Revision } from "@cornerway/schema";
import { useRevisionPremium } from "../../data/premium.ts";
import { RevisionPrice } from "../../prices/RevisionPrice.tsx";
import "../../controls/ruled.css";
import { useRoom, whyNot } from "../../room/room-context.ts";

/** What the last revision costs, or why no figure stands here. */
export function StatusPrice({ revision, earlier }: { revision: Revision | null; earlier: string | null }) {
  const { project } = useRoom();
  const priced = useRevisionPremium(project, revision?.letter ?? null);
  const hidden = whyNot(project, "read-prices");
  if (hidden !== undefined) return <p>{hidden}</p>;
  if (revision === null) return <p>It is counted when the first revision is sent.</p>;
  if (priced.isError && priced.data === undefined) return <p>It cannot be counted now: {priced.error.message}</p>;
  if (priced.data === undefined) return <BeingCounted />;
  return <RevisionPrice priced={priced.data} scheme={revision.scheme} earlier={earlier} />;
}

/** The place of the sum and its parts is kept, ruled, while they are counted. */
const BeingCounted = () => (
  <div className="status-counted" role="status">
    <p className="price-small">It is being counted.</p>
    {Array.from({ length: 8 }, (_, at) => (
      <div key={at} className="ruled-line" />
    ))}
  </div>
);
