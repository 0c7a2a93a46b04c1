import { useState } from "react";
import { PersonField } from "../../controls/PersonField.tsx";
import { lastWord, useDecisions } from "../../data/decision.ts";
import { premiumFilePath, usePremiumSince, useRevisionPremium } from "../../data/premium.ts";
import { useRevision } from "../../data/revision.ts";
import { notAssessedWords } from "../../prices/apart-words.ts";
import { WordGiven } from "../../prices/WordGiven.tsx";
import { useRoom } from "../../room/room-context.ts";
import { useUnits } from "../../units/use-units.ts";
import { namesIn } from "../../wording/name-of.ts";
import { DifferenceTable } from "./DifferenceTable.tsx";
import { PremiumItems } from "./PremiumItems.tsx";

/** A revision's premium, what changed since an earlier one, and both as tables to save. */
export function OfRevision({ letter, earlier }: { letter: string; earlier: readonly string[] }) {
  const { project } = useRoom();
  const units = useUnits();
  const revision = useRevision(project.id, letter);
  const priced = useRevisionPremium(project, letter);
  const decisions = useDecisions(project).data;
  const [since, chooseSince] = useState(earlier[0] ?? null);
  const difference = usePremiumSince(project, letter, since);
  const failed = revision.error ?? priced.error ?? difference.error;
  if (failed !== null) return <p className="field-fault">{failed.message}</p>;
  if (revision.data === undefined || priced.data === undefined) return <p>It is being counted.</p>;
  const last = lastWord(decisions, { revision: letter, requestId: null });
  return (
    <>
      {priced.data.assessed ? null : <p>{notAssessedWords}</p>}
      <PremiumItems premium={priced.data.premium} scheme={revision.data.scheme} />
      {last === undefined ? null : <WordGiven shown={last} />}
      <p>
        <a className="command" download href={premiumFilePath(project.id, letter, units)}>
          Take revision {letter} as a table
        </a>
      </p>
      {since === null ? null : (
        <section className="premium-since">
          <h2 className="caption">What changed since</h2>
          <PersonField label="Since">
            {(bound) => (
              <select
                {...bound}
                className="premium-choice"
                value={since}
                onChange={({ target }) => chooseSince(target.value)}
              >
                {earlier.map((each) => (
                  <option key={each} value={each}>
                    revision {each}
                  </option>
                ))}
              </select>
            )}
          </PersonField>
          {difference.data === undefined ? (
            <p>It is being counted.</p>
          ) : (
            <DifferenceTable difference={difference.data} nameOf={namesIn(revision.data.scheme)} />
          )}
          <a className="command" download href={premiumFilePath(project.id, letter, units, since)}>
            Take the difference as a table
          </a>
        </section>
      )}
    </>
  );
}
