import type { ChartDistances } from "@cornerway/engine";
import { chartVerdictWords } from "@cornerway/schema";
import { spokenLength } from "../../units/drawn-length.ts";
import { useUnits } from "../../units/use-units.ts";
import type { ChartUnder } from "./ChartSaid.tsx";

/** How far the opening as drawn is from places of another answer. */
export function ChartDistancesList({
  distances: { answer, changes },
  under,
}: {
  distances: ChartDistances;
  under: ChartUnder;
}) {
  const units = useUnits();
  return (
    <section className="chart-distances">
      <h3 className="caption">As drawn, how far to another answer</h3>
      <p>{`As drawn: ${chartVerdictWords(answer.verdict, under)}.`}</p>
      <dl>
        {changes.map(({ way, byMm, answer: then }) => (
          <div key={way}>
            <dt>{`${spokenLength(byMm, units)} ${way}`}</dt>
            <dd>{chartVerdictWords(then.verdict, under)}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
