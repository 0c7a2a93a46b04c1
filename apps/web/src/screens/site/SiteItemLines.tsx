import type { SiteItemNow, SiteWord } from "@cornerway/schema";
import { dayAndTimeOf } from "../../controls/calendar.ts";
import { PhotoStrip } from "../../photos/PhotoStrip.tsx";
import type { NameOf } from "../../wording/name-of.ts";
import { itemStateWords, itemWords, wordSaid } from "../../wording/site-words.ts";
import { SayForm } from "./SayForm.tsx";

/** One item: how it stands, what was said of it, and what may be said now. */
export function SiteItemLines({ now, revision, nameOf }: { now: SiteItemNow; revision: string; nameOf: NameOf }) {
  const { item, state, drawnOtherwise, words } = now;
  const name = itemWords(item, nameOf(item.elementId));
  const wrong = state === "missing" || state === "differs" || state === "to mend";
  return (
    <li>
      <details className="matter" open={wrong}>
        <summary>
          {name}: <span className={wrong ? "site-wrong" : undefined}>{itemStateWords[state]}</span>
        </summary>
        {drawnOtherwise ? (
          <p className="matter-stale">Revision {revision} draws it otherwise than it was seen.</p>
        ) : null}
        {words.map((word) => (
          <WordLine key={word.id} word={word} />
        ))}
        <SayForm now={now} revision={revision} name={name} />
      </details>
    </li>
  );
}

const WordLine = ({ word }: { word: SiteWord }) => (
  <div className={`said-by-person hand-${word.author.role}`}>
    <p>
      {wordSaid(word.says)}
      {word.text === null ? "." : `: ${word.text}`}{" "}
      <small className="lettered">
        {word.author.name}, revision {word.revision}, {dayAndTimeOf(word.saidAt)}
      </small>
    </p>
    {"photos" in word ? <PhotoStrip photos={word.photos} /> : null}
  </div>
);
