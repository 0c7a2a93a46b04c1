import type { Revision, SealIssueNow, SealState } from "@cornerway/schema";
import { useState } from "react";
import { dayAndTimeOf } from "../../controls/calendar.ts";
import { Command } from "../../controls/Command.tsx";
import { PasswordOnce } from "../../controls/PasswordOnce.tsx";
import { Refused } from "../../controls/Refused.tsx";
import { fileAddress } from "../../data/file.ts";
import { isProblem } from "../../data/http.ts";
import { useIssueForSeal, useKeepSealedCopy } from "../../data/seal.ts";
import { useRoom, whyNot } from "../../room/room-context.ts";
import { newUuid } from "../../tools/new-uuid.ts";
import { digestGroups } from "../../wording/digest-groups.ts";
import { namesIn } from "../../wording/name-of.ts";
import { sizeWords } from "../../wording/seal-words.ts";
import { standingSentence } from "../../wording/standing-sentence.ts";
import { FileForm } from "./FileForm.tsx";

/** Issuing the newest revision for seal, and the sealed copies that came back. */
export function IssueSection({ seal, revision }: { seal: SealState; revision: Revision }) {
  const { project } = useRoom();
  const issued = seal.issues.some(({ issue }) => issue.revision === revision.letter);
  return (
    <section aria-labelledby="seal-issue">
      <h2 className="caption" id="seal-issue">
        Issued for seal
      </h2>
      {seal.issues.length === 0 ? <p>No revision is issued for seal. Every sheet is preliminary.</p> : null}
      {seal.issues.toReversed().map((each) => (
        <IssueLines key={each.issue.id} now={each} revision={revision} />
      ))}
      {issued || whyNot(project, "issue-for-seal") !== undefined ? null : <IssueForm seal={seal} revision={revision} />}
    </section>
  );
}

function IssueForm({ seal, revision }: { seal: SealState; revision: Revision }) {
  const { project, say } = useRoom();
  const issue = useIssueForSeal(project.id);
  const [password, setPassword] = useState("");
  const [id] = useState(newUuid);
  const { letter, contentDigest, resultDigest } = revision;
  const dispatch = () => {
    if (resultDigest === null) return;
    const body = { issue: { id, revision: letter, contentDigest, resultDigest }, password };
    issue.mutate(body, { onSuccess: () => say(`Revision ${letter} issued for seal.`) });
  };
  const because =
    seal.hindrances.length > 0
      ? "Something stands in the way."
      : password === ""
        ? "Give your password once more."
        : undefined;
  return (
    <div className="seal-acts">
      <PasswordOnce error={issue.error} onPassword={setPassword} />
      <Command engineer onPress={dispatch} asleepBecause={because}>
        {`Issue revision ${letter} for seal`}
      </Command>
      {isProblem(issue.error, "present-password-wrong") ? null : <Refused error={issue.error} />}
    </div>
  );
}

function IssueLines({ now: { issue, standing }, revision }: { now: SealIssueNow; revision: Revision }) {
  const { project } = useRoom();
  const keep = useKeepSealedCopy(project.id, issue.id);
  return (
    <article className="seal-issue">
      <p>
        <b>Revision {issue.revision}</b>, by {issue.author.name}, {dayAndTimeOf(issue.issuedAt)}.
      </p>
      {standing.state === "stale" ? (
        <p className="matter-stale">
          The sealed copy differs from the live scheme. {standingSentence(standing, namesIn(revision.scheme))}
        </p>
      ) : null}
      {issue.steps.map(({ id, fileId, name, digest, sizeBytes, by, at }) => (
        <p key={id}>
          <a href={fileAddress(project.id, fileId)} download>
            {name}
          </a>
          , {sizeWords(sizeBytes)}, laid here by {by.name}, {dayAndTimeOf(at)}.{" "}
          <span className="digest">SHA-256 {digestGroups(digest, 16)}</span>
        </p>
      ))}
      {whyNot(project, "issue-for-seal") === undefined ? (
        <FileForm
          label="The sealed PDF"
          command="Lay it here as it is"
          onKept={({ id, digest }) => keep.mutate({ id: newUuid(), fileId: id, digest })}
        />
      ) : null}
      <Refused error={keep.error} />
    </article>
  );
}
