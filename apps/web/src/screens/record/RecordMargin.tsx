import type { RecordEntry } from "@cornerway/schema";
import type { ReactNode } from "react";

/** How to read the thread, what it holds, where it goes from here, and what it does not show. */
export function RecordMargin({ entries, children }: { entries: readonly RecordEntry[]; children?: ReactNode }) {
  const of = (kind: string) => entries.filter((entry) => entry.kind === kind).length;
  const rows: [string, string][] = [
    ["Entries seen", String(entries.length)],
    ["Acts of drawing", String(of("drawn"))],
    ["Revisions", String(of("revision sent"))],
    ["Notes", String(of("note written"))],
    ["Requests", `${of("request made")} made, ${of("request taken in")} taken in, ${of("request declined")} declined`],
    ["Stamps", String(of("stamp pressed"))],
  ];
  return (
    <div className="record-margin" tabIndex={0} role="region" aria-label="About the record">
      <section>
        <h2 className="caption">How to read the thread</h2>
        <p>
          Each entry has a leaf: the SHA-256 of what was done, by whom and when. The head beside it is the root of the
          tree over every entry so far (RFC 9162). Change a word in one entry and every head below it is different.
        </p>
        <p>Entries are added and never altered. A mistake is mended by a later entry that names it.</p>
        {numbersAreMissing(entries) ? (
          <p>
            A number that is missing here is an entry kept for those who draw and review. It counts in every head below
            it.
          </p>
        ) : null}
      </section>
      <section>
        <h2 className="caption">What the record holds</h2>
        <dl>
          {rows.map(([name, value]) => (
            <div key={name}>
              <dt>{name}</dt>
              <dd>{value}</dd>
            </div>
          ))}
        </dl>
      </section>
      {children}
      <section>
        <h2 className="caption">The caution</h2>
        <p>
          The record shows who did what and when, and that nothing was altered since. It does not show that what they
          did was right. That is what the seal is for, and it is a person’s.
        </p>
      </section>
    </div>
  );
}

const numbersAreMissing = (entries: readonly RecordEntry[]) =>
  entries.some((entry, at) => entry.number !== (entries[at - 1]?.number ?? 0) + 1);
