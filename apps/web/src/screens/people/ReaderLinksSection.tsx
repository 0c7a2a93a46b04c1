import type { ReaderLink } from "@cornerway/schema";
import { dateOf } from "../../controls/calendar.ts";
import { Refused } from "../../controls/Refused.tsx";
import { useReaderLinkAct } from "../../data/reader-link.ts";
import { ReaderLinkForm } from "./ReaderLinkForm.tsx";
import { WithdrawTable } from "./WithdrawTable.tsx";

/** Links by which someone without an account reads, such as the permit reviewer. */
export function ReaderLinksSection({ projectId, links }: { projectId: string; links: readonly ReaderLink[] }) {
  const end = useReaderLinkAct(projectId);
  return (
    <div className="page-columns">
      <ReaderLinkForm projectId={projectId} />
      <section aria-labelledby="reader-links">
        <h2 className="caption" id="reader-links">
          Links that are good now
        </h2>
        <Refused error={end.error} />
        <ReaderLinkTable links={links} onEnd={end.mutate} />
      </section>
    </div>
  );
}

export function ReaderLinkTable({ links, onEnd }: { links: readonly ReaderLink[]; onEnd: (id: string) => void }) {
  if (links.length === 0) return <p>Nobody reads by a link.</p>;
  return (
    <WithdrawTable
      heads={["For", "Opened"]}
      rows={links.map((link) => ({
        ...{ id: link.id, for: link.name, by: `made by ${link.madeBy}`, expiresAt: link.expiresAt },
        about: openedWords(link),
        what: `the link of ${link.name}`,
      }))}
      onWithdraw={onEnd}
    />
  );
}

const openedWords = ({ opened, lastOpenedAt }: ReaderLink) =>
  lastOpenedAt === null ? "Not yet" : `${opened === 1 ? "Once" : `${opened} times`}, last on ${dateOf(lastOpenedAt)}`;
