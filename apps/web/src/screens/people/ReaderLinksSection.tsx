import type { ReaderLink } from "@cornerway/schema";
import { dateOf } from "../../controls/calendar.ts";
import { Command } from "../../controls/Command.tsx";
import { Refused } from "../../controls/Refused.tsx";
import { useReaderLinkAct } from "../../data/reader-link.ts";
import { ReaderLinkForm } from "./ReaderLinkForm.tsx";

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
    <table>
      <thead>
        <tr className="caption">
          <th scope="col">For</th>
          <th scope="col">Opened</th>
          <th scope="col">Good until</th>
          <th scope="col">
            <span className="unseen">Withdraw</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {links.map((link) => (
          <tr key={link.id}>
            <th scope="row">
              {link.name}
              <small>made by {link.madeBy}</small>
            </th>
            <td>{openedWords(link)}</td>
            <td>{dateOf(link.expiresAt)}</td>
            <td>
              <Command quiet onPress={() => onEnd(link.id)}>
                Withdraw
                <span className="unseen"> the link of {link.name}</span>
              </Command>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

const openedWords = ({ opened, lastOpenedAt }: ReaderLink) =>
  lastOpenedAt === null ? "Not yet" : `${opened === 1 ? "Once" : `${opened} times`}, last on ${dateOf(lastOpenedAt)}`;
