import type { Revision, SealState } from "@cornerway/schema";
import { namesIn } from "../../wording/name-of.ts";
import { hindranceSentence } from "../../wording/seal-words.ts";
import { useMarkSentence } from "./use-mark-sentence.ts";

/** What stands in the way of issuing the newest revision for seal, one by one; values from memory are counted. */
export function HindrancesSection({ seal, revision }: { seal: SealState; revision: Revision }) {
  const nameOf = namesIn(revision.scheme);
  const markSentence = useMarkSentence(revision);
  const told = seal.hindrances.filter(({ why }) => why !== "from memory");
  const memory = seal.hindrances.length - told.length;
  return (
    <section aria-labelledby="seal-way">
      <h2 className="caption" id="seal-way">
        What stands in the way
      </h2>
      {seal.hindrances.length === 0 ? (
        <p>Nothing stands in the way of issuing revision {revision.letter} for seal.</p>
      ) : null}
      <ol className="seal-list">
        {told.map((each) => (
          <li key={JSON.stringify(each)}>{hindranceSentence(each, nameOf, markSentence)}</li>
        ))}
        {memory === 0 ? null : (
          <li>{memory === 1 ? "1 value is" : `${memory} values are`} from memory and not confirmed.</li>
        )}
      </ol>
    </section>
  );
}
