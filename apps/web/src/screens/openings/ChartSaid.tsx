import { chartVerdict, chartVerdictWords, type Verdict } from "@cornerway/schema";
import { verdictClass } from "../../look/verdict-class.ts";
import { VerdictSymbol } from "../../look/VerdictSymbol.tsx";

/** What a chart's answers were found under. */
export type ChartUnder = "gravity loads only" | "all loads";

type ChartSaidProps = {
  readonly verdict: Verdict;
  readonly under: ChartUnder;
  readonly sentence: string;
  readonly grey: string;
};

/** One answer of the chart in words: its verdict, why, and what it is found by. */
export function ChartSaid({ verdict, under, sentence, grey }: ChartSaidProps) {
  const said = chartVerdict(verdict, under);
  return (
    <div className="chart-said">
      <h3 className={verdictClass(said)}>
        <VerdictSymbol verdict={said} />
        <span>{chartVerdictWords(verdict, under)}</span>
        <small>screening</small>
      </h3>
      <p>{sentence}</p>
      <p className="note-grey">{grey}</p>
    </div>
  );
}
