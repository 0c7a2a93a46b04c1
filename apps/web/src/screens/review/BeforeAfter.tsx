import type { Assessment, Scheme, Verdict } from "@cornerway/schema";
import { figuresIn, verdicts } from "@cornerway/schema";
import { VerdictSymbol } from "../../look/VerdictSymbol.tsx";
import { verdictClass, verdictWords } from "../../look/verdict-class.ts";
import { useUnits } from "../../units/use-units.ts";
import { useAssessment } from "../../worker/use-assessment.ts";
import { useStrength } from "../../worker/use-strength.ts";
import "./before-after.css";

/**
 * What a request changes, by the engine on this page: the verdict of the whole, and notes by verdict. Like is held against
 * like: where strength was judged before, it is waited for after.
 */
export function BeforeAfter({ before, scheme }: { before: Assessment | null; scheme: Scheme }) {
  const { force } = figuresIn(useUnits());
  const { assessed } = useAssessment(scheme);
  const { judged, stands, progress } = useStrength(scheme, before?.strength === undefined);
  const path = assessed?.scheme === scheme ? assessed.assessment : null;
  const after = before?.strength === undefined ? path : stands ? (judged?.assessment ?? null) : null;
  if (before === null) return null;
  if (after === null)
    return (
      <p className="before-after-waits" role="status">
        Its strength is being checked{progress === null ? "" : `: ${progress.done} of ${progress.of}`}.
      </p>
    );
  const changed = verdicts.filter((verdict) => count(before, verdict) !== count(after, verdict));
  return (
    <table className="before-after">
      <caption className="unseen">What the request changes</caption>
      <tbody>
        <tr>
          <th scope="row">The whole</th>
          <td className={verdictClass(before.verdict)}>
            <Word verdict={before.verdict} />
          </td>
          <td className={verdictClass(after.verdict)}>
            <Word verdict={after.verdict} />
          </td>
        </tr>
        {changed.map((verdict) => (
          <tr key={verdict}>
            <th scope="row">{verdictWords(verdict)}</th>
            <td>{notes(count(before, verdict))}</td>
            <td>{notes(count(after, verdict))}</td>
          </tr>
        ))}
        <tr>
          <th scope="row">Heaviest reaction</th>
          <td>{force(heaviestKn(before))}</td>
          <td>{force(heaviestKn(after))}</td>
        </tr>
      </tbody>
    </table>
  );
}

const Word = ({ verdict }: { verdict: Verdict }) => (
  <span className="before-after-verdict">
    <VerdictSymbol verdict={verdict} sizePx={13} /> {verdictWords(verdict)}
  </span>
);

const count = (assessment: Assessment, verdict: Verdict) =>
  assessment.marks.filter((mark) => mark.verdict === verdict).length;

const notes = (number: number) => `${number} ${number === 1 ? "note" : "notes"}`;

const heaviestKn = (assessment: Assessment) =>
  Math.max(0, ...assessment.statics.reactions.map(({ forceKn }) => forceKn));
