import { verdicts, type Assessment, type StrengthReport, type Verdict } from "@cornerway/schema";
import { CautionLine } from "../../controls/CautionLine.tsx";
import { inThousands } from "../../units/in-thousands.ts";
import { VerdictSymbol } from "../../look/VerdictSymbol.tsx";
import { verdictClass, verdictWords } from "../../look/verdict-class.ts";

/** What the calculations come to: verdicts counted, what was solved, what was assumed and what no verdict answers for. */
export function CalculationsMargin({ result, report }: { result: Assessment | null; report: StrengthReport | null }) {
  const strength = result?.strength;
  return (
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- what scrolls must be reached by keyboard (WCAG 2.1.1)
    <section className="calculations-margin" aria-label="What the calculations come to" tabIndex={0}>
      <h2 className="caption">What they come to</h2>
      {result === null ? null : (
        <ul className="calculations-verdicts">
          {verdicts
            .filter((verdict) => count(result, verdict) > 0)
            .map((verdict) => (
              <li key={verdict} className={verdictClass(verdict)}>
                <VerdictSymbol verdict={verdict} sizePx={13} /> {verdictWords(verdict)}: {count(result, verdict)}{" "}
                {count(result, verdict) === 1 ? "unit" : "units"}
              </li>
            ))}
        </ul>
      )}
      {strength === undefined || report === null ? null : (
        <>
          <p>
            {inThousands(strength.checks)} checks on {inThousands(strength.vectors)} load vectors;{" "}
            {report.results.length} parts, each by its governing check. Scope: {result?.scope}. Screening, until an
            engineer has answered.
          </p>
          <List heading="Not judged" items={strength.notJudged} />
          <List heading="Actions left out" items={report.actionsLeftOut} />
          <List heading="Assumed where the scheme says nothing" items={strength.assumed} />
        </>
      )}
      <CautionLine />
    </section>
  );
}

const count = (result: Assessment, verdict: Verdict): number =>
  result.units.filter((unit) => unit.verdict === verdict).length;

function List({ heading, items }: { heading: string; items: readonly string[] }) {
  if (items.length === 0) return null;
  return (
    <details open>
      <summary className="caption">
        {heading} · {items.length}
      </summary>
      <ul className="calculations-lines">
        {items.map((item) => (
          <li key={item}>
            <Line words={item} />
          </li>
        ))}
      </ul>
    </details>
  );
}

/** Longer than this, what stands before a colon is no name of what the line is about. */
const mostNameLetters = 60;

/** A line that begins with what it is about has that in bold, so that one finds it among the others. */
function Line({ words }: { words: string }) {
  const [about = "", ...rest] = words.split(": ");
  if (rest.length === 0 || about.length > mostNameLetters) return words;
  return (
    <>
      <b>{about}:</b> {rest.join(": ")}
    </>
  );
}
