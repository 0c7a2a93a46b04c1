import type { CheckWorking } from "@cornerway/schema";
import { useUnits } from "../units/use-units.ts";
import { workedValue } from "../units/worked-value.ts";
import { certaintyInTable, certaintyWords } from "./certainty-words.ts";
import { figure } from "./figure.ts";
import { SymbolName } from "./Formula.tsx";
import { UtilisationBar } from "./UtilisationBar.tsx";
import { WorkingLines } from "./WorkingLines.tsx";
import "./working.css";

/**
 * One calculation as it is shown and printed: what enters with its source, then line by line formula, values put in and
 * result, the clause at the right. Calculations whose results enter here stand before it, numbered under it.
 */
export function WorkingSheet({ working, number }: { working: CheckWorking; number: string }) {
  const { title, clause, symbols, steps, result, limit, utilisation, notes, parts } = working;
  const units = useUnits();
  return (
    <section className="working" aria-label={`${number} ${title}`}>
      {parts.map((part, at) => (
        <WorkingSheet key={at} working={part} number={`${number}.${at + 1}`} />
      ))}
      <div className="working-check">
        <span className="working-number">{number}</span>
        <div className="working-body">
          <h3>{title}</h3>
          {symbols.length === 0 ? null : <Given symbols={symbols} />}
          <WorkingLines title={title} steps={steps} />
          {notes.map((note) => (
            <p key={note} className="working-note">
              {note}
            </p>
          ))}
        </div>
        <div className="working-side">
          <p className="working-clause">
            {clause.document}-{clause.edition}
            <br />
            {clause.place}
            <br />
            {certaintyWords[working.certainty]}
          </p>
          {utilisation === undefined ? null : <UtilisationBar utilisation={utilisation} />}
          <p className="working-result">
            <SymbolName of={result.symbol} /> {workedValue(result.value, result.unit, units)}
            {limit === undefined ? null : (
              <>
                {" of "}
                {workedValue(limit.value, limit.unit, units)}
              </>
            )}
          </p>
        </div>
      </div>
    </section>
  );
}

/** In the units of the formulas that take them. */
function Given({ symbols }: { symbols: CheckWorking["symbols"] }) {
  return (
    <table className="working-given">
      <tbody>
        {symbols.map(({ symbol, meaning, value, unit, source, certainty }) => (
          <tr key={symbol}>
            <th scope="row">
              <SymbolName of={symbol} />
            </th>
            <td>
              {figure(value)} {unitText(unit)}
            </td>
            <td>{meaning}</td>
            <td>{[source, certaintyInTable[certainty]].filter((part) => part !== undefined).join(", ")}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

const unitText = (unit: string) => (unit === "1" ? "" : unit);
