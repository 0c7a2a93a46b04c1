import {
  chartSteel,
  openingPriceStep,
  type ChartColumn,
  type ChartDistances,
  type ChartStretch,
} from "@cornerway/engine";
import { chartPriceWords, chartSentence, chartVerdict, chartVerdictWords, type Verdict } from "@cornerway/schema";
import type { ReactNode } from "react";
import { Command } from "../../controls/Command.tsx";
import { verdictClass } from "../../look/verdict-class.ts";
import { VerdictSymbol } from "../../look/VerdictSymbol.tsx";
import { drawnLength, spokenLength } from "../../units/drawn-length.ts";
import { useUnits } from "../../units/use-units.ts";
import type { ChartPlace } from "../../worker/chart-messages.ts";
import type { LiveChart } from "../../worker/use-opening-chart.ts";
import { answerAt } from "./chart-regions.ts";
import { LengthField } from "./LengthField.tsx";
import type { OpeningWays } from "./use-opening-ways.ts";
import "../../sheet/notes-margin.css";

type ChartMarginProps = {
  readonly live: LiveChart;
  readonly columns: readonly ChartColumn[];
  readonly under: "gravity loads only" | "all loads";
  readonly tried: ChartPlace;
  readonly name: string;
  readonly tagOf: (id: string) => string;
  readonly onTry: (place: ChartPlace) => void;
  readonly footer: ReactNode;
  /** What would make the opening work, where it is drawn and asks for more. */
  readonly ways: OpeningWays;
  /** Draws what is tried; absent where it is drawn already. */
  readonly draw: {
    readonly label: string;
    readonly onPress: () => void;
    readonly asleepBecause?: string | undefined;
  } | null;
};

/** What the chart says of the place tried, how far it is from the next answer, and what the chart takes for granted. */
export function ChartMargin(props: ChartMarginProps) {
  const { live, columns, under, tried, name, tagOf, onTry, footer, ways, draw } = props;
  const units = useUnits();
  const { so } = live;
  const found = answerAt(columns, tried);
  return (
    <section className="notes-margin chart-margin" aria-label="What the chart says">
      <header>
        <h2 className="caption">{name}</h2>
        <Drawing live={live} />
      </header>
      <div className="notes-scroll">
        {ways.slip}
        {so?.broke != null && (
          <p role="alert" className="chart-broke">
            {`The chart stopped: ${so.broke} Nothing is lost; it can be drawn again.`}
          </p>
        )}
        <fieldset className="chart-place">
          <legend className="caption">Tried</legend>
          <LengthField
            label="Centre from the end"
            valueMm={tried.centreMm}
            onSet={(centreMm) => onTry({ ...tried, centreMm })}
          />
          <LengthField label="Width" valueMm={tried.widthMm} onSet={(widthMm) => onTry({ ...tried, widthMm })} />
        </fieldset>
        {found === null ? (
          <p className="chart-waits">This place is not traced yet.</p>
        ) : (
          <Said
            verdict={found.stretch.verdict}
            under={under}
            sentence={chartSentence(found.stretch.why, tagOf)}
            grey={`Price step: ${priceOf(so, found.stretch, under)}. By the place traced at ${drawnLength(found.column.centreMm, units)}, widths ${drawnLength(found.stretch.fromMm, units)} to ${drawnLength(found.stretch.toMm, units)}.`}
          />
        )}
        <div className="note-offers">
          {draw !== null && (
            <Command next onPress={draw.onPress} asleepBecause={draw.asleepBecause} shortcut="Enter">
              {draw.label}
            </Command>
          )}
          <Command
            onPress={() => live.confirm(tried)}
            asleepBecause={so === null || so.side === null ? "The building is not solved yet." : undefined}
          >
            Solve it under all runs
          </Command>
          {ways.offer !== undefined && <Command onPress={ways.offer.onPress}>{ways.offer.label}</Command>}
        </div>
        {so?.confirming != null && <p className="chart-waits">Solving under all runs and assumptions.</p>}
        {so?.confirmed != null && (
          <section className="chart-confirmed">
            <h3 className="caption">{`All runs: ${drawnLength(so.confirmed.place.widthMm, units)} at ${drawnLength(so.confirmed.place.centreMm, units)}`}</h3>
            <Said
              verdict={so.confirmed.answer.verdict}
              under={under}
              sentence={chartSentence(so.confirmed.answer.why, tagOf)}
              grey={`The unit with it, whatever the cause: ${chartVerdictWords(so.confirmed.unit, under)}.`}
            />
          </section>
        )}
        {so?.chart?.distances !== undefined && <Distances distances={so.chart.distances} under={under} />}
        {so?.chart != null && (
          <section className="chart-basis">
            <h3 className="caption">Without it</h3>
            <p>{`${chartVerdictWords(so.chart.without.verdict, under)}; ${so.chart.without.reasons} ${so.chart.without.reasons === 1 ? "reason stands" : "reasons stand"} against the unit already. The chart says what the opening adds.`}</p>
            {so.chart.exceptions.length > 0 && (
              <p>{`In ${so.chart.exceptions.length === 1 ? "one place" : `${so.chart.exceptions.length} places`} a wider opening fares better than a narrower one: the table says why.`}</p>
            )}
            <details>
              <summary>What the chart takes for granted</summary>
              <ul>
                {so.chart.request.framedWhereNeeded === true && (
                  <li>Works as built means with bare edges, without a frame.</li>
                )}
                <li>{`Works with steel means this frame: ${so.chart.basis.framing.join(", ")}.`}</li>
                {so.chart.basis.vectors.map(({ assumptions, runs }) => (
                  <li key={assumptions}>{`${runs.length} governing runs with ${assumptions}.`}</li>
                ))}
                {so.chart.basis.assumed.map((what) => (
                  <li key={what}>{`${what.charAt(0).toUpperCase()}${what.slice(1)}.`}</li>
                ))}
                <li>Edges run straight between places traced, which are the dots.</li>
              </ul>
            </details>
          </section>
        )}
        <p className="note-grey">{`Arrows move what is tried 10 mm, with Shift 305 mm; [ and ] make it ${spokenLength(50, units)} smaller and larger.`}</p>
      </div>
      <footer>{footer}</footer>
    </section>
  );
}

/** The price step of a stretch at its widest. */
function priceOf(so: LiveChart["so"], { verdict, toMm }: ChartStretch, under: SaidProps["under"]): string {
  const sheet = so?.side?.sheet;
  if (so?.request == null || sheet === undefined) return chartPriceWords(undefined);
  return chartPriceWords(openingPriceStep(chartVerdict(verdict, under), chartSteel(so.request, sheet, toMm)));
}

function Drawing({ live: { so, stop, again } }: { live: LiveChart }) {
  if (so === null) return null;
  if (so.state === "drawing")
    return (
      <span className="notes-remark">
        {so.of === 0 ? "the building is solved " : `${so.done}/${so.of} places `}
        <Command quiet onPress={stop}>
          Stop
        </Command>
      </span>
    );
  if (so.state === "drawn") return <span className="notes-remark">{`${so.chart?.solved ?? 0} solved`}</span>;
  return (
    <span className="notes-remark">
      {`stopped at ${so.done}/${so.of} `}
      <Command quiet onPress={again}>
        Draw it again
      </Command>
    </span>
  );
}

type SaidProps = {
  readonly verdict: Verdict;
  readonly under: "gravity loads only" | "all loads";
  readonly sentence: string;
  readonly grey: string;
};

function Said({ verdict, under, sentence, grey }: SaidProps) {
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

function Distances({
  distances: { answer, changes },
  under,
}: {
  distances: ChartDistances;
  under: SaidProps["under"];
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
