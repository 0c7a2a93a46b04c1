import type { SignedHead } from "@cornerway/schema";
import { dayAndTimeOf } from "../../controls/calendar.ts";
import { isProblem } from "../../data/http.ts";
import { bundleAddress, headAddress, useHeadFinding } from "../../data/kept-head.ts";
import { digestGroups } from "../../wording/digest-groups.ts";

/** The signed head of the record, what this browser found when it held it against the one it kept, and how anyone checks it. */
export function ProofSection({ projectId, lineHolds }: { projectId: string; lineHolds: boolean }) {
  const { data: finding, error } = useHeadFinding(projectId, lineHolds);
  return (
    <section>
      <h2 className="caption">Checking it elsewhere</h2>
      {finding === undefined ? <p>{whyNone(error, lineHolds)}</p> : null}
      {finding === undefined || finding.is === "broken" ? null : <Head head={finding.head} found={found[finding.is]} />}
      {finding?.is === "broken" ? <p>The record does not continue the head this browser kept.</p> : null}
      <div className="record-saves">
        <a className="command" href={bundleAddress(projectId)} download>
          Take the record as a bundle
        </a>
        <a className="command" href={headAddress(projectId)} download="head.json">
          Take the signed head
        </a>
      </div>
      <p>
        The bundle is checked without this service: <code>npx cornerway verify bundle.json</code>. Whoever rebuilds a
        whole record signs it with a key of their own, so say what you know from elsewhere: <code>--key</code> and the
        fingerprint, or <code>--head</code> and a head saved earlier. Letters of invitation hold one.
      </p>
    </section>
  );
}

const found = {
  "first seen": "Kept in this browser from now on: each time the line comes back the record is held against it.",
  continued: "It continues the head this browser kept before.",
};

function Head({ head: { number, head, time, fingerprint }, found: said }: { head: SignedHead; found: string }) {
  return (
    <>
      <dl className="record-signed">
        <div>
          <dt>Signed head, entries 1 to {number}</dt>
          <dd className="digest">{digestGroups(head, 16)}</dd>
        </div>
        <div>
          <dt>Fingerprint of its key</dt>
          <dd className="digest">{digestGroups(fingerprint, 16)}</dd>
        </div>
        <div>
          <dt>Signed</dt>
          <dd>{dayAndTimeOf(time)}</dd>
        </div>
      </dl>
      <p>{said}</p>
    </>
  );
}

function whyNone(error: unknown, lineHolds: boolean): string {
  if (isProblem(error, "signing-off")) return "This service is not set up to sign heads of records.";
  if (!lineHolds) return "The line is down. The record is held against the head kept here when it is back.";
  return error === null ? "Holding the record against the head kept here." : "The head could not be read just now.";
}
