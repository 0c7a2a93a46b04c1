import type { ChartColumn } from "@cornerway/engine";
import { chartSentence, chartVerdictWords } from "@cornerway/schema";
import { drawnLength } from "../../units/drawn-length.ts";
import { useUnits } from "../../units/use-units.ts";

type ChartTableProps = {
  readonly columns: readonly ChartColumn[];
  readonly under: "gravity loads only" | "all loads";
  readonly caption: string;
  readonly tagOf: (id: string) => string;
};

/** The chart as a table: every width of every place, once, with its verdict and why. */
export function ChartTable({ columns, under, caption, tagOf }: ChartTableProps) {
  const units = useUnits();
  const unit = units === "US" ? "" : ", m";
  return (
    <section className="chart-table" tabIndex={0} aria-label={caption}>
      <table>
        <caption>{caption}</caption>
        <thead>
          <tr>
            <th scope="col">{`Centre from the end${unit}`}</th>
            <th scope="col">{`Width from${unit}`}</th>
            <th scope="col">{`Width to${unit}`}</th>
            <th scope="col">Verdict</th>
            <th scope="col">Why</th>
          </tr>
        </thead>
        {columns.map(({ centreMm, stretches }) => (
          <tbody key={centreMm}>
            {stretches.map(({ fromMm, toMm, verdict, why }, n) => (
              <tr key={fromMm}>
                {n === 0 && (
                  <th scope="rowgroup" rowSpan={stretches.length}>
                    {drawnLength(centreMm, units)}
                  </th>
                )}
                <td className="figure">{drawnLength(fromMm, units)}</td>
                <td className="figure">{drawnLength(toMm, units)}</td>
                <td>{chartVerdictWords(verdict, under)}</td>
                <td>{chartSentence(why, tagOf)}</td>
              </tr>
            ))}
          </tbody>
        ))}
      </table>
    </section>
  );
}
