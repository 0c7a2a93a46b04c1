import type { Pair } from "@cornerway/schema";
import { figuresIn } from "@cornerway/schema";
import { Command } from "../../controls/Command.tsx";
import { PageScroll } from "../../sheet/PageScroll.tsx";
import { useUnits } from "../../units/use-units.ts";
import { moneyText } from "../../wording/money.ts";
import { VerdictStep } from "./ChangeOutcome.tsx";
import type { ComparedLine } from "./compared-lines.ts";
import type { Compared } from "./use-compared.ts";
import { WholeTable } from "./WholeTable.tsx";

export interface ChangeTableProps {
  letters: Pair<string>;
  compared: Compared;
  /** The lines with the numbers they bear on the drawing. */
  numbered: readonly { number: number; line: ComparedLine }[];
  onClose: () => void;
}

/** The twin of the drawing: every change in words, with verdict, force and premium in both revisions. */
export function ChangeTable({ letters, compared, numbered, onClose }: ChangeTableProps) {
  const { plain, currency, otherwise, whole } = compared;
  return (
    <section className="change-table" aria-label={`Table of changes, ${letters.before} to ${letters.after}`}>
      <header>
        <h2>
          What changed, {letters.before} to {letters.after}
        </h2>
        <Command shortcut="L" onPress={onClose}>
          Back to the drawing
        </Command>
      </header>
      <PageScroll label={`What changed from revision ${letters.before} to ${letters.after}`}>
        <table>
          <thead>
            <tr>
              <th scope="col">No.</th>
              <th scope="col">Change</th>
              <th scope="col">Verdict</th>
              {plain ? null : <PairHead words="Force" letters={letters} />}
              {currency === null ? null : <PairHead words="Premium" letters={letters} />}
            </tr>
          </thead>
          <tbody>
            {numbered.map(({ number, line }) => (
              <ChangeRow key={number} number={number} line={line} compared={compared} />
            ))}
          </tbody>
        </table>
        {otherwise.length === 0 ? null : (
          <>
            <h3 className="caption">Did not change, and is judged otherwise</h3>
            <table>
              <thead>
                <tr>
                  <th scope="col">Element</th>
                  <th scope="col">Verdict</th>
                </tr>
              </thead>
              <tbody>
                {otherwise.map(({ id, name, verdict }) => (
                  <tr key={id}>
                    <th scope="row">{name}</th>
                    <td>
                      <VerdictStep verdict={verdict} />
                    </td>
                  </tr>
                ))}
              </tbody>
            </table>
          </>
        )}
        <h3 className="caption">The whole building</h3>
        <WholeTable letters={letters} whole={whole} />
        <p className="note-grey">
          Forces by statics alone, the greatest in each element. Premium by the cost book as it is now.
        </p>
      </PageScroll>
    </section>
  );
}

const PairHead = ({ words, letters }: { words: string; letters: Pair<string> }) => (
  <>
    <th scope="col" className="figure">
      {words} in {letters.before}
    </th>
    <th scope="col" className="figure">
      {words} in {letters.after}
    </th>
  </>
);

interface ChangeRowProps {
  number: number;
  line: ComparedLine;
  compared: Compared;
}

function ChangeRow({ number, line, compared: { plain, currency, checked } }: ChangeRowProps) {
  const { force } = figuresIn(useUnits());
  const { forceKn, money, there } = line;
  const forceWords = (kn: number | null, known: boolean) => (kn !== null ? force(kn) : known ? "none" : "not checked");
  return (
    <tr>
      <td>{number}</td>
      <th scope="row">{line.sentence}</th>
      <td>
        <VerdictStep verdict={line.verdict} there={there} />
      </td>
      {plain ? null : (
        <>
          <td className="figure">{forceWords(forceKn.before, checked.before)}</td>
          <td className="figure">{forceWords(forceKn.after, checked.after)}</td>
        </>
      )}
      {currency === null ? null : (
        <>
          <td className="figure">{money.before === null ? "not known" : moneyText(money.before, currency)}</td>
          <td className="figure">{money.after === null ? "not known" : moneyText(money.after, currency)}</td>
        </>
      )}
    </tr>
  );
}
