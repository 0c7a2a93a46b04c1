import type { Pair } from "@cornerway/schema";
import { PersonField } from "../../controls/PersonField.tsx";
import { KeysFoot } from "./KeysFoot.tsx";
import { NotesMargin } from "../../sheet/NotesMargin.tsx";
import type { NoteSlot, SheetNote } from "../../sheet/contract.ts";
import { moneyText } from "../../wording/money.ts";
import { ChangeOutcome, VerdictStep } from "./ChangeOutcome.tsx";
import type { NumberedLine } from "./use-clouds.ts";
import type { Compared } from "./use-compared.ts";
import { standingWords } from "./standing-words.ts";
import { signed } from "./whole-figures.ts";

export interface CompareMarginProps {
  letters: Pair<string>;
  /** All revisions, oldest first. */
  all: readonly string[];
  compared: Compared;
  numbered: readonly NumberedLine[];
  chosenNumber: number | null;
  onChoose: (number: number) => void;
  onPair: (one: string, other: string) => void;
  onTable: () => void;
  onKeys: () => void;
  onSlots: (slots: readonly NoteSlot[]) => void;
}

/** What changed, numbered as on the drawing; above it which two revisions, below it what did not change. */
export function CompareMargin(props: CompareMarginProps) {
  const { letters, compared, numbered, chosenNumber, onChoose, onSlots, onTable, onKeys } = props;
  const count = numbered.length;
  return (
    <NotesMargin
      heading={`What changed, ${letters.before} to ${letters.after}`}
      remark={count === 1 ? "1 change" : `${count} changes`}
      notes={numbered.map((each) => noteOf(each, compared))}
      chosenNumber={chosenNumber}
      onChoose={onChoose}
      slip={
        <>
          <PairChoice {...props} />
          {count === 0 ? <p>Nothing changed. The two revisions are the same.</p> : null}
        </>
      }
      footer={
        <>
          <StoodStill compared={compared} before={letters.before} />
          <KeysFoot onTable={onTable} onKeys={onKeys} />
        </>
      }
      onSlots={onSlots}
    />
  );
}

const noteOf = ({ number, line, anchor }: NumberedLine, { currency }: Compared): SheetNote => ({
  ...{ number, anchor, verdict: null, screening: false, heading: line.sentence, body: "", comments: [] },
  markIds: [line.ids.join(" ")],
  greyLine: anchor === null ? placeless(line.ids) : undefined,
  children: <ChangeOutcome line={line} currency={currency} />,
});

const placeless = ([id]: readonly string[]): string =>
  id === "site" || id === "basis" ? "Of the whole building." : "Not in these views: press its number.";

function PairChoice({ letters, all, onPair }: CompareMarginProps) {
  return (
    <div className="pair-choice">
      <PersonField label="Under">
        {(bound) => (
          <select {...bound} value={letters.before} onChange={({ target }) => onPair(target.value, letters.after)}>
            {options(all, letters.after)}
          </select>
        )}
      </PersonField>
      <PersonField label="Over">
        {(bound) => (
          <select {...bound} value={letters.after} onChange={({ target }) => onPair(letters.before, target.value)}>
            {options(all, letters.before)}
          </select>
        )}
      </PersonField>
    </div>
  );
}

const options = (all: readonly string[], other: string) =>
  all
    .filter((letter) => letter !== other)
    .map((letter) => (
      <option key={letter} value={letter}>
        revision {letter}
      </option>
    ));

/** What is otherwise without having changed: verdicts that follow from the rest, and what of the price does. */
function StoodStill({ compared, before }: { compared: Compared; before: string }) {
  const { otherwise, lines, total, currency, unchanged } = compared;
  const told = lines.reduce((sum, { money }) => sum + (money.after ?? 0) - (money.before ?? 0), 0);
  const rest = total === null ? 0 : total.after - total.before - told;
  const restWords = currency === null ? "none" : signed(rest, (amount) => moneyText(amount, currency));
  const stand = lines.length === 0 ? null : standingWords(unchanged);
  if (otherwise.length === 0 && restWords === "none" && stand === null) return null;
  return (
    <div className="stood-still">
      {stand === null ? null : <p>{`Otherwise ${stand} as in ${before}.`}</p>}
      {otherwise.length === 0 ? null : (
        <details>
          <summary>
            {otherwise.length} did not change and {otherwise.length === 1 ? "is" : "are"} judged otherwise
          </summary>
          <ul>
            {otherwise.map(({ id, name, verdict }) => (
              <li key={id}>
                {name} <VerdictStep verdict={verdict} />
              </li>
            ))}
          </ul>
        </details>
      )}
      {restWords === "none" ? null : <p>What did not change costs {restWords}: it follows from the rest.</p>}
    </div>
  );
}
