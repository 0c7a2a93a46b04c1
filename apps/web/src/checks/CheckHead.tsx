import type { CheckResult } from "@cornerway/schema";
import { certaintyWords } from "../working/certainty-words.ts";
import { UtilisationBar } from "../working/UtilisationBar.tsx";
import type { NameOf } from "../wording/name-of.ts";
import { checkWord, usedText } from "./own-checks.ts";

const coverageWords = {
  checked: "checked",
  bounded: "bounded on the safe side: within the bound it works, beyond it the engineer says",
  "not covered": "not covered: the engineer says",
  "does not arise": "does not arise",
} as const;

/** What one check says and what it hangs on: combination, assumptions, envelope, certainty, and what a proof would change. */
export function CheckHead({ result, name, nameOf }: { result: CheckResult; name: string; nameOf: NameOf }) {
  const { part, place, check, run, assumptions, held, ifProved, upperBound, ifHeldDown, coverage, certainty } = result;
  return (
    <>
      <h2 className="check-title">
        {name} {part}
      </h2>
      <p className="check-place">{place}</p>
      <dl className="check-facts">
        <Fact term="Check">
          {check}: <b>{usedText(result)}</b> of its strength. {checkWord(result)}.
        </Fact>
        <Fact term="Governing combination">{run}</Fact>
        <Fact term="Solved with">{assumptions}</Fact>
        {held.length === 0 ? null : (
          <Fact term="Only if held">
            It stands in this run only if {held.map(nameOf).join(", ")} is held by connections that are not drawn.
          </Fact>
        )}
        {ifHeldDown === undefined ? null : (
          <Fact term="Once held down">
            {ifHeldDown === null ? "no strength can be stated" : ifHeldDown.toFixed(2)} in runs that need connections
          </Fact>
        )}
        {ifProved === undefined ? null : (
          <Fact term="If proved">{ifProved.toFixed(2)} if a record proves a yield of 343 MPa</Fact>
        )}
        {upperBound === undefined ? null : <Fact term="Upper bound">{upperBound.toFixed(2)} of the milder bound</Fact>}
        <Fact term="Coverage">{coverageWords[coverage]}</Fact>
        {certainty === undefined ? null : <Fact term="Certainty">{certaintyWords[certainty]}</Fact>}
      </dl>
      <Envelope result={result} />
    </>
  );
}

const Fact = ({ term, children }: { term: string; children: React.ReactNode }) => (
  <div>
    <dt>{term}</dt>
    <dd>{children}</dd>
  </div>
);

/** The same check under each set of assumptions; where they part at 1, the assumption decides. */
function Envelope({ result: { envelope } }: { result: CheckResult }) {
  if (envelope.length === 0) return <p className="check-place">No run stands as drawn: there is no envelope.</p>;
  const uses = envelope.map(({ utilisation }) => utilisation ?? Infinity);
  const parts = Math.min(...uses) <= 1 && Math.max(...uses) > 1;
  return (
    <table className="check-envelope">
      <caption>{parts ? "Envelope: an assumption decides" : "Envelope: every assumption says the same"}</caption>
      <tbody>
        {envelope.map(({ assumptions, utilisation }) => (
          <tr key={assumptions}>
            <th scope="row">{assumptions}</th>
            <td>{utilisation === null ? "not stated" : <UtilisationBar utilisation={utilisation} />}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
