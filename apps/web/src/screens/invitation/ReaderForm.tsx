import { dateOf } from "../../controls/calendar.ts";
import { Command } from "../../controls/Command.tsx";
import { Refused } from "../../controls/Refused.tsx";
import { PageSheet } from "../../sheet/PageSheet.tsx";
import { roleWords } from "../../wording/role-words.ts";
import type { LinkFormProps, ReaderLinkOpened } from "./form-contract.ts";

/** Someone reads by a link: they are told what it opens before it is opened, since each opening is in the record. */
export function ReaderForm({ link, send, error, sending }: LinkFormProps & { link: ReaderLinkOpened }) {
  const { projectName, name, madeBy, expiresAt, signedInAs } = link;
  return (
    <PageSheet title={`Read ${projectName}`} heading={`${madeBy} gives you ${projectName} to read`}>
      <div className="page-columns">
        <section className="link-form">
          {signedInAs !== null && <p>You are signed in here as {signedInAs}. Reading by the link ends that.</p>}
          <Refused error={error} />
          <Command next onPress={() => send({ as: "reader" })}>
            {sending ? "Opening the sheets" : `Read ${projectName}`}
          </Command>
        </section>
        <section className="link-words">
          <h2 className="caption">What this link opens</h2>
          <dl>
            <dt>Project</dt>
            <dd>{projectName}</dd>
            <dt>Made for</dt>
            <dd>{name}</dd>
            <dt>Good until</dt>
            <dd>{dateOf(expiresAt)}</dd>
          </dl>
          <p>{roleWords.reader}</p>
          <p>Nothing can be written by it. That it was opened, and when, is in the record of the project.</p>
        </section>
      </div>
    </PageSheet>
  );
}
