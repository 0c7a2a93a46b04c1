import { lockSentence } from "@cornerway/engine";
import type { CheckResult } from "@cornerway/schema";
import { usedText, checkWord } from "../../checks/own-checks.ts";
import { PageScroll } from "../../sheet/PageScroll.tsx";
import { certaintyInTable } from "../../working/certainty-words.ts";
import { UtilisationBar } from "../../working/UtilisationBar.tsx";
import type { NameOf } from "../../wording/name-of.ts";

export interface FamilyTablesProps {
  results: readonly CheckResult[];
  nameOf: NameOf;
  onOpen: (elementId: string, id: string) => void;
}

/** Every part by its governing check, one table for each kind of part, the fullest first in each and among them. */
export const FamilyTables = ({ results, ...rest }: FamilyTablesProps) => (
  <section>
    <h3 id="calculations-checks">Governing checks</h3>
    {familiesOf(results).map(([part, own]) => (
      <Family key={part} part={part} results={own} {...rest} />
    ))}
  </section>
);

/** The parts come fullest first; so does the first of each kind. */
function familiesOf(results: readonly CheckResult[]): [string, CheckResult[]][] {
  const families = new Map<string, CheckResult[]>();
  for (const result of results) families.set(result.part, [...(families.get(result.part) ?? []), result]);
  return [...families];
}

function Family({ part, results, nameOf, onOpen }: FamilyTablesProps & { part: string }) {
  const [worst] = results;
  return (
    <details>
      <summary>
        <span className="calculations-family">
          <span>
            <b>{part}</b> · {results.length} {results.length === 1 ? "part" : "parts"} · fullest{" "}
            {worst === undefined ? "" : `${usedText(worst)}, ${nameOf(worst.ownerId)} ${worst.place}`}
          </span>
          {worst?.utilisation == null ? null : <UtilisationBar utilisation={worst.utilisation} />}
        </span>
      </summary>
      {part === "lock" ? <p>{lockSentence}</p> : null}
      <PageScroll label={`Governing checks, ${part}`}>
        <table>
          <thead>
            <tr className="caption">
              <th scope="col">Where</th>
              <th scope="col">Check</th>
              <th scope="col">Of its strength</th>
              <th scope="col" className="figure">
                If proved
              </th>
              <th scope="col">Governs</th>
              <th scope="col">Clause</th>
            </tr>
          </thead>
          <tbody>
            {results.map((result) => (
              <Row key={result.id} result={result} nameOf={nameOf} onOpen={onOpen} />
            ))}
          </tbody>
        </table>
      </PageScroll>
    </details>
  );
}

function Row({ result, nameOf, onOpen }: Pick<FamilyTablesProps, "nameOf" | "onOpen"> & { result: CheckResult }) {
  const { id, ownerId, place, check, utilisation, refused, ifProved, run, assumptions, clause, certainty } = result;
  return (
    <tr>
      <th scope="row">
        <button type="button" className="working-way" onClick={() => onOpen(ownerId, id)}>
          {nameOf(ownerId)} {place}
        </button>
      </th>
      <td>{check}</td>
      <td>
        {utilisation === null ? `not stated: ${refused}` : <UtilisationBar utilisation={utilisation} />}
        <span className="calculations-word">{checkWord(result)}</span>
      </td>
      <td className="figure">{ifProved?.toFixed(2)}</td>
      <td>
        {run}
        <br />
        {assumptions}
      </td>
      <td>
        {clause === undefined ? null : `${clause.document} ${clause.place}`}
        <br />
        {certainty === undefined ? null : certaintyInTable[certainty]}
      </td>
    </tr>
  );
}
