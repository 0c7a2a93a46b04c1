import { chartSentence, chartVerdictWords } from "@cornerway/schema";
import { drawnLength } from "../../units/drawn-length.ts";
import { useUnits } from "../../units/use-units.ts";
import type { LiveChart } from "../../worker/use-opening-chart.ts";
import { ChartSaid, type ChartUnder } from "./ChartSaid.tsx";

type ChartConfirmedProps = {
  readonly confirmed: NonNullable<NonNullable<LiveChart["so"]>["confirmed"]>;
  readonly under: ChartUnder;
  readonly tagOf: (id: string) => string;
};

/** What the place tried comes to under all runs and assumptions. */
export function ChartConfirmed({ confirmed: { place, answer, unit }, under, tagOf }: ChartConfirmedProps) {
  const units = useUnits();
  return (
    <section className="chart-confirmed">
      <h3 className="caption">{`All runs: ${drawnLength(place.widthMm, units)} at ${drawnLength(place.centreMm, units)}`}</h3>
      <ChartSaid
        verdict={answer.verdict}
        under={under}
        sentence={chartSentence(answer.why, tagOf)}
        grey={`The unit with it, whatever the cause: ${chartVerdictWords(unit, under)}.`}
      />
    </section>
  );
}
