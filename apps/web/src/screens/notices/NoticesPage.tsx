import type { Notice } from "@cornerway/schema";
import { Link } from "@tanstack/react-router";
import { Command } from "../../controls/Command.tsx";
import { Refused } from "../../controls/Refused.tsx";
import { Ruled } from "../../controls/Ruled.tsx";
import { Trouble } from "../../controls/Trouble.tsx";
import { useNotices, useSeeNotices } from "../../data/notice.ts";
import { PageSheet } from "../../sheet/PageSheet.tsx";
import { NoticeTable } from "./NoticeTable.tsx";
import "./notices.css";

/** What concerns whoever is signed in, over all their projects. */
export function NoticesPage() {
  const notices = useNotices();
  const see = useSeeNotices();
  if (notices.isPending) return <Ruled label="Fetching what is new" />;
  if (notices.data === undefined) return <Trouble error={notices.error} again={() => void notices.refetch()} />;
  const { notices: all, unseen } = notices.data;
  return (
    <PageSheet
      title="What is new"
      heading={headingOf(unseen)}
      way={
        <>
          {unseen > 0 && (
            <Command next onPress={() => see.mutate(newestOf(all))}>
              All seen
            </Command>
          )}
          <Link className="command" to="/">
            To the desk
          </Link>
        </>
      }
    >
      <Refused error={see.error ?? notices.error} />
      <NoticeTable notices={all} />
      <p className="notices-more">
        What others did that your part has something to do with, or should know. The whole of it is in the record of
        each project. To be told by letter, at once or once a day, say so on the page of{" "}
        <Link to="/account">your account</Link>.
      </p>
    </PageSheet>
  );
}

export const headingOf = (unseen: number): string =>
  unseen === 0 ? "Nothing new concerns you" : unseen === 1 ? "One thing is new" : `${unseen} things are new`;

/** The last entry of each project that is told of here. */
export function newestOf(notices: readonly Notice[]): Map<string, number> {
  const newest = new Map<string, number>();
  for (const { projectId, entry } of notices) newest.set(projectId, Math.max(entry.number, newest.get(projectId) ?? 0));
  return newest;
}
