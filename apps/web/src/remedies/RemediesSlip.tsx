import {
  figuresIn,
  remedyRefusalSentence,
  remedySentence,
  remedyWholeSentence,
  settleFirstSentence,
  type Operation,
  type Remedy,
} from "@cornerway/schema";
import { Command } from "../controls/Command.tsx";
import { useUnits } from "../units/use-units.ts";
import { asSentence } from "../wording/as-sentence.ts";
import { namesIn } from "../wording/name-of.ts";
import type { RemediesSoFar } from "../worker/remedy-run.ts";
import { RemedyItem } from "./RemedyItem.tsx";
import "./remedies.css";

export interface RemediesSlipProps {
  so: RemediesSoFar;
  /** What the mark is about, by its tag. */
  name: string;
  pricesSeen: boolean;
  plain: boolean;
  take: { label: string; onTake: (operations: Operation[]) => void; asleepBecause: string | undefined };
  onStop: () => void;
  onAgain: () => void;
  onClose: () => void;
}

/** The ways to settle a mark, cheapest first, as they are found; what is for the engineer stands apart. */
export function RemediesSlip({ so, name, pricesSeen, plain, take, onStop, onAgain, onClose }: RemediesSlipProps) {
  const { found, state, list } = so;
  const offered = found.filter(({ verdict }) => verdict !== "needs the engineer").toSorted(cheapestFirst);
  const apart = found.filter(({ verdict }) => verdict === "needs the engineer");
  const item = (remedy: Remedy, at: number) => (
    <RemedyItem
      key={remedy.id}
      letter={letterAt(at)}
      remedy={remedy}
      nameOf={namesIn(so.scheme, remedy.operations)}
      pricesSeen={pricesSeen && remedy.premium !== null}
      plain={plain}
      take={{ ...take, onTake: () => take.onTake([...remedy.operations]) }}
    />
  );
  return (
    <section className="remedies" aria-label={`Ways for ${name}`} tabIndex={-1}>
      <header>
        <h2 className="caption">{headingOf(offered.length, state, name)}</h2>
        <span className="notes-remark">{offered.length > 1 ? "cheapest first" : ""}</span>
      </header>
      <Searching so={so} />
      {offered.map(item)}
      {apart.length > 0 && (
        <>
          <h2 className="caption remedies-apart">Needs the engineer, without a price</h2>
          {apart.map((remedy, at) => item(remedy, offered.length + at))}
        </>
      )}
      {list === null ? null : <Failed so={so} plain={plain} />}
      <div className="note-offers">
        {state === "searching" ? (
          <Command onPress={onStop}>Leave the search</Command>
        ) : state === "stopped" ? (
          <Command onPress={onAgain}>Look again</Command>
        ) : null}
        <Command quiet shortcut="Esc" onPress={onClose}>
          Put the ways away
        </Command>
      </div>
    </section>
  );
}

function headingOf(count: number, state: RemediesSoFar["state"], name: string): string {
  if (count === 0) return state === "searched" ? `No way found for ${name}` : `Ways for ${name}`;
  return `${numberWords[count] ?? count} ${count === 1 ? "way" : "ways"} for ${name}`;
}
const numberWords = ["", "One", "Two", "Three", "Four", "Five", "Six", "Seven", "Eight"] as const;

const letterAt = (at: number): string => "abcdefghijklmnopqrstuvwxyz".charAt(at % 26);

/** Which change is being proved, and how many of how many are; said politely as it goes. */
function Searching({ so: { proving, done, of, state, broke, scheme, list } }: { so: RemediesSoFar }) {
  const figures = figuresIn(useUnits());
  if (broke !== null)
    return (
      <p role="alert">{`The search stopped: ${asSentence(broke)} The drawing is safe, and it can be looked at again.`}</p>
    );
  if (state === "stopped") return <p>{`Left after ${done} of ${of}. What was found stands below.`}</p>;
  if (list?.settleFirst !== undefined) return <p>{settleFirstSentence(list, namesIn(scheme))}</p>;
  if (list !== null) return <p className="note-grey">{searchedWords(list)}</p>;
  return (
    <p className="note-grey" role="status">
      {proving === null
        ? "The building is judged as it is first."
        : `Kind ${done + 1} of ${of}: ${remedySentence(proving, namesIn(scheme), figures)}`}
    </p>
  );
}

const searchedWords = ({ looked, proved, leftOut }: NonNullable<RemediesSoFar["list"]>): string =>
  looked === 0
    ? "No change of the drawing is known that would settle it: it is the engineer's to settle."
    : `${looked} changes looked at, ${proved} run through strength whole${leftOut > 0 ? `, ${leftOut} left out` : ""}.`;

/** What was looked at and does not do, folded. */
function Failed({ so: { list, scheme }, plain }: { so: RemediesSoFar; plain: boolean }) {
  const figures = figuresIn(useUnits());
  if (list === null || list.failed.length === 0) return null;
  const nameOf = namesIn(scheme);
  return (
    <details className="alike">
      <summary>{`${list.failed.length} that do not do`}</summary>
      <ul>
        {list.failed.map((failed) => (
          <li key={JSON.stringify(failed)}>
            {plain
              ? remedyWholeSentence(failed, nameOf, figures)
              : `${remedyWholeSentence(failed, nameOf, figures)} ${remedyRefusalSentence(failed.why, nameOf)}`}
          </li>
        ))}
      </ul>
    </details>
  );
}

const cheapestFirst = (a: Remedy, b: Remedy): number =>
  (a.premium?.money ?? 0) - (b.premium?.money ?? 0) || (a.id < b.id ? -1 : 1);
