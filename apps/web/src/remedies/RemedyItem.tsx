import {
  chartSentence,
  figuresIn,
  remedyAlsoSentence,
  remedyLessSentence,
  remedySentence,
  remedyWholeSentence,
  type Remedy,
  type RemedyQuantities,
} from "@cornerway/schema";
import { Command } from "../controls/Command.tsx";
import { VerdictSymbol } from "../look/VerdictSymbol.tsx";
import { verdictClass, verdictWords } from "../look/verdict-class.ts";
import { ForShow } from "../prices/ForShow.tsx";
import { useUnits } from "../units/use-units.ts";
import { volumeWords } from "../units/volume-words.ts";
import { moneyText } from "../wording/money.ts";
import type { NameOf } from "../wording/name-of.ts";
import { lostWords, markNames, nearestWords, sightWords } from "./remedy-words.ts";

export interface RemedyItemProps {
  letter: string;
  remedy: Remedy;
  /** Tags of the scheme with what the option sets. */
  nameOf: NameOf;
  pricesSeen: boolean;
  /** Plain words only: no parts, no kilonewtons. */
  plain: boolean;
  take: { label: string; onTake: () => void; asleepBecause: string | undefined };
}

/** One way: what is done, how it then stands, what it takes, and that less would not do. */
export function RemedyItem({ letter, remedy, nameOf, pricesSeen, plain, take }: RemedyItemProps) {
  const figures = figuresIn(useUnits());
  const { change, also, verdict, under, governing, why, quantities, premium, stillOpen, less } = remedy;
  return (
    <section className="remedy" aria-labelledby={`way-${letter}`}>
      <span className="remedy-letter" aria-hidden="true">
        {letter}
      </span>
      <h3 id={`way-${letter}`}>
        <span className="unseen">{`Way ${letter}. `}</span>
        {remedySentence(change, nameOf, figures)}
      </h3>
      {also.length > 0 && <p>{remedyAlsoSentence(also, nameOf, figures)}</p>}
      <p className={`remedy-verdict ${verdictClass(verdict)}`}>
        <VerdictSymbol verdict={verdict} /> <span>{verdictWords(verdict)}</span> <small>screening</small>
      </p>
      {under === "all loads" ? null : (
        <p className="note-grey">Under gravity alone; wind and earthquake not checked.</p>
      )}
      <Takes quantities={quantities} premium={pricesSeen ? premium : null} />
      {plain ? null : (
        <p className="note-grey">
          {why === undefined ? null : `${chartSentence(why, nameOf)} `}
          {nearestWords(governing, nameOf)}
        </p>
      )}
      {verdict === "needs the engineer" ? null : (
        <p className="note-grey">
          {plain && less !== null
            ? `Less does not do: ${remedyWholeSentence(less, nameOf, figures)}`
            : remedyLessSentence(less, nameOf, figures)}
        </p>
      )}
      {stillOpen.length > 0 && <p className="note-grey">{`Still open after it: ${markNames(stillOpen, nameOf)}.`}</p>}
      <div className="note-offers">
        <Command onPress={take.onTake} asleepBecause={take.asleepBecause}>
          {take.label}
        </Command>
      </div>
    </section>
  );
}

/** Steel line by line, what else it takes, what is seen and lost, and the price. */
function Takes({ quantities, premium }: { quantities: RemedyQuantities; premium: Remedy["premium"] }) {
  const units = useUnits();
  const { length } = figuresIn(units);
  const { steel, weldM, cutM, pads, padConcreteM3, connections, craneLifts, sights } = quantities;
  const massKg = steel.reduce((sum, line) => sum + line.massKg, 0);
  const others = [
    counted(pads, "pad"),
    padConcreteM3 > 0 ? `${volumeWords(padConcreteM3, units)} more concrete in pads` : "",
    counted(connections, "connection"),
    weldM > 0 ? `${length(weldM * 1000)} of weld` : "",
    cutM > 0 ? `${length(cutM * 1000)} of cut` : "",
    counted(craneLifts, "crane lift"),
  ].filter((words) => words !== "");
  return (
    <table className="remedy-takes">
      <caption className="unseen">What it takes</caption>
      <tbody>
        {steel.map(({ section, lengthM, massKg: kg }) => (
          <tr key={section}>
            <th scope="row">{lengthM === null ? section : `${section}, ${length(lengthM * 1000)}`}</th>
            <td>{`${Math.round(kg)} kg`}</td>
          </tr>
        ))}
        {others.length > 0 && (
          <tr>
            <th scope="row" colSpan={2}>
              {others.join(", ")}
            </th>
          </tr>
        )}
        {(sights.length > 0 || lostWords(quantities, length) !== "") && (
          <tr>
            <th scope="row" colSpan={2}>
              {[...sights.map((sight) => sightWords[sight]), lostWords(quantities, length)].filter(Boolean).join(", ")}
            </th>
          </tr>
        )}
        <tr className="remedy-sum">
          <th scope="row">{massKg === 0 ? "no steel" : `${Math.round(massKg)} kg`}</th>
          <td>{premium === null ? "" : moneyText(premium.money, premium.currency)}</td>
        </tr>
      </tbody>
      {premium?.forShow === true && (
        <tfoot>
          <tr>
            <td colSpan={2}>
              <ForShow forShow />
            </td>
          </tr>
        </tfoot>
      )}
    </table>
  );
}

const counted = (count: number, what: string): string =>
  count <= 0 ? "" : `${count} ${what}${count === 1 ? "" : "s"}`;
