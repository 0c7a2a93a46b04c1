import { memo } from "react";
import { VerdictSymbol } from "../look/VerdictSymbol.tsx";
import { verdictClass, verdictWords } from "../look/verdict-class.ts";
import type { Offer, SheetNote } from "./contract.ts";
import { NoteComments } from "./NoteComments.tsx";
import { foldedBody } from "./folded-body.ts";

type NoteItemProps = { note: SheetNote; chosen: boolean; onChoose: ((number: number) => void) | undefined };

/** A note: number, verdict with its symbol, what is so and why, one grey line, at most one offer and one quiet way. */
export const NoteItem = memo(function NoteItem({ note, chosen, onChoose }: NoteItemProps) {
  const { number, verdict, screening, heading, body, alike = [], greyLine, offer, quietOffer } = note;
  const words = heading ?? (verdict === null ? "Note" : verdictWords(verdict));
  return (
    <section
      className={chosen ? "note note-chosen" : "note"}
      id={`note-${number}`}
      aria-label={`Note ${number}: ${words}${verdict !== null && screening ? " screening" : ""}`}
    >
      <button
        type="button"
        className="note-number"
        data-note-number={number}
        aria-label={`Note ${number}: show its place`}
        aria-pressed={chosen}
        onClick={() => onChoose?.(number)}
      >
        {number}
      </button>
      <h3 className={verdict === null ? undefined : verdictClass(verdict)}>
        {verdict !== null && <VerdictSymbol verdict={verdict} />}
        <span>{words}</span>
        {verdict !== null && screening && <small>screening</small>}
      </h3>
      {note.matter !== undefined && <p className="note-matter">{note.matter}</p>}
      <div className="note-folds">
        {body !== "" && <Body text={body} />}
        {alike.length > 0 && <Alike sentences={alike} />}
        {greyLine !== undefined && <p className="note-grey">{greyLine}</p>}
        {note.children}
        <NoteComments comments={note.comments} />
        {(offer !== undefined || quietOffer !== undefined) && (
          <div className="note-offers">
            {offer !== undefined && <OfferButton offer={offer} />}
            {quietOffer !== undefined && <OfferButton offer={quietOffer} quiet />}
          </div>
        )}
      </div>
    </section>
  );
}, sameNote);

/** A note that is the same object is chosen by the same number, whatever function is given to choose it. */
function sameNote(before: NoteItemProps, after: NoteItemProps): boolean {
  return before.note === after.note && before.chosen === after.chosen;
}

/** What is so and why. Where the note is folded, what reads by itself is seen and the rest is there to be heard. */
function Body({ text }: { text: string }) {
  const { seen, rest } = foldedBody(text);
  if (rest === "") return <p>{text}</p>;
  return (
    <p>
      {seen} <span className="note-rest">{rest}</span>
    </p>
  );
}

/** What is said of further marks of the same kind; so many sentences stay folded until asked for. */
const Alike = ({ sentences }: { sentences: readonly string[] }) => (
  <details className="alike">
    <summary>{sentences.length} more alike</summary>
    <ul>
      {sentences.map((sentence, at) => (
        <li key={`${at} ${sentence}`}>{sentence}</li>
      ))}
    </ul>
  </details>
);

function OfferButton({
  offer: { label, key, onPress, asleepBecause },
  quiet = false,
}: {
  offer: Offer;
  quiet?: boolean;
}) {
  const asleep = asleepBecause !== undefined;
  return (
    <button
      type="button"
      className={quiet ? "command command-quiet" : "command"}
      aria-disabled={asleep || undefined}
      title={asleepBecause}
      onClick={() => {
        if (!asleep) onPress();
      }}
    >
      {label}
      {asleep && <span className="unseen">. {asleepBecause}</span>}
      {key !== undefined && <kbd>{key}</kbd>}
    </button>
  );
}
