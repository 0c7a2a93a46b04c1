import type { Pair, Verdict } from "@cornerway/schema";
import { VerdictSymbol } from "../../look/VerdictSymbol.tsx";
import { verdictClass, verdictWords } from "../../look/verdict-class.ts";
import { moneyText } from "../../wording/money.ts";
import type { ComparedLine } from "./compared-lines.ts";
import { signed } from "./whole-figures.ts";

/** "Works as built → Does not work"; where one side is not there, in words. */
export const VerdictStep = ({ verdict, there }: { verdict: Pair<Verdict | null>; there?: Pair<boolean> }) => (
  <span className="verdict-step">
    <VerdictWord verdict={verdict.before} there={there?.before ?? true} absent="not there" />
    <span aria-label="then">→</span>
    <VerdictWord verdict={verdict.after} there={there?.after ?? true} absent="taken away" />
  </span>
);

function VerdictWord({ verdict, there, absent }: { verdict: Verdict | null; there: boolean; absent: string }) {
  if (!there) return <span className="verdict-absent">{absent}</span>;
  if (verdict === null) return <span className="verdict-absent">no note</span>;
  return (
    <span className={verdictClass(verdict)}>
      <VerdictSymbol verdict={verdict} sizePx={14} /> {verdictWords(verdict)}
    </span>
  );
}

/** What a change does to verdict and premium, under its sentence. */
export function ChangeOutcome({ line, currency }: { line: ComparedLine; currency: string | null }) {
  const { before, after } = line.money;
  const by = before === null || after === null ? null : after - before;
  return (
    <p className="change-outcome">
      <VerdictStep verdict={line.verdict} there={line.there} />
      {by === null || currency === null || by === 0 ? null : (
        <b>{signed(by, (amount) => moneyText(amount, currency))}</b>
      )}
    </p>
  );
}
