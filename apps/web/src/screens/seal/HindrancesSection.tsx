import type { Revision, SealHindrance, SealState } from "@cornerway/schema";
import { namesIn } from "../../wording/name-of.ts";
import { hindranceSentence, hindrancesHeading } from "../../wording/seal-words.ts";
import { useMarkSentence } from "./use-mark-sentence.ts";

/** What stands in the way of issuing the newest revision for seal: counted by kind, each told when its kind is opened. */
export function HindrancesSection({ seal, revision }: { seal: SealState; revision: Revision }) {
  const nameOf = namesIn(revision.scheme);
  const markSentence = useMarkSentence(revision);
  return (
    <section aria-labelledby="seal-way">
      <h2 className="caption" id="seal-way">
        What stands in the way
      </h2>
      {seal.hindrances.length === 0 ? (
        <p>Nothing stands in the way of issuing revision {revision.letter} for seal.</p>
      ) : null}
      {[...byKind(seal.hindrances)].map(([kind, hindrances]) => (
        <details className="matter" key={kind}>
          <summary>{hindrancesHeading(hindrances)}</summary>
          <ol className="seal-list">
            {hindrances.map((each) => (
              <li key={JSON.stringify(each)}>{hindranceSentence(each, nameOf, markSentence)}</li>
            ))}
          </ol>
        </details>
      ))}
    </section>
  );
}

function byKind(hindrances: readonly SealHindrance[]): ReadonlyMap<string, SealHindrance[]> {
  const kinds = new Map<string, SealHindrance[]>();
  for (const each of hindrances) {
    const kind = each.why === "mark" ? each.verdict : each.why;
    kinds.set(kind, [...(kinds.get(kind) ?? []), each]);
  }
  return kinds;
}
