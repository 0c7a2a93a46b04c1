import type { OpeningChart } from "@cornerway/engine";
import { chartVerdictWords } from "@cornerway/schema";
import type { ChartUnder } from "./ChartSaid.tsx";

/** What stands without the opening, and what the chart takes for granted. */
export function ChartBasis({ chart, under }: { chart: OpeningChart; under: ChartUnder }) {
  const { without, exceptions, request, basis } = chart;
  return (
    <section className="chart-basis">
      <h3 className="caption">Without it</h3>
      <p>{`${chartVerdictWords(without.verdict, under)}; ${reasonsAgainst(without.reasons)} The chart says what the opening adds.`}</p>
      {exceptions.length > 0 && (
        <p>{`In ${exceptions.length === 1 ? "one place" : `${exceptions.length} places`} a wider opening fares better than a narrower one: the table says why.`}</p>
      )}
      <details>
        <summary>What the chart takes for granted</summary>
        <ul>
          {request.framedWhereNeeded === true && <li>Works as built means with bare edges, without a frame.</li>}
          <li>{`Works with steel means this frame: ${basis.framing.join(", ")}.`}</li>
          {basis.vectors.map(({ assumptions, runs }) => (
            <li key={assumptions}>{`${runs.length} governing runs with ${assumptions}.`}</li>
          ))}
          {basis.assumed.map((what) => (
            <li key={what}>{`${what.charAt(0).toUpperCase()}${what.slice(1)}.`}</li>
          ))}
          <li>Edges run straight between places traced, which are the dots.</li>
        </ul>
      </details>
    </section>
  );
}

function reasonsAgainst(count: number): string {
  if (count === 0) return "nothing stands against the unit.";
  return count === 1
    ? "one reason stands against the unit already."
    : `${count} reasons stand against the unit already.`;
}
