import { chartSteel, openingPriceStep, type ChartColumn, type ChartStretch } from "@cornerway/engine";
import { chartPriceWords, chartSentence, chartVerdict } from "@cornerway/schema";
import type { ReactNode } from "react";
import { Command } from "../../controls/Command.tsx";
import { drawnLength, spokenLength } from "../../units/drawn-length.ts";
import { useUnits } from "../../units/use-units.ts";
import { asSentence } from "../../wording/as-sentence.ts";
import type { ChartPlace } from "../../worker/chart-messages.ts";
import type { LiveChart } from "../../worker/use-opening-chart.ts";
import { answerAt } from "./chart-regions.ts";
import { ChartBasis } from "./ChartBasis.tsx";
import { ChartConfirmed } from "./ChartConfirmed.tsx";
import { ChartDistancesList } from "./ChartDistancesList.tsx";
import { ChartProgress } from "./ChartProgress.tsx";
import { ChartSaid, type ChartUnder } from "./ChartSaid.tsx";
import { LengthField } from "./LengthField.tsx";
import type { OpeningWays } from "./use-opening-ways.ts";
import "../../sheet/notes-margin.css";

type ChartMarginProps = {
  readonly live: LiveChart;
  readonly columns: readonly ChartColumn[];
  readonly under: ChartUnder;
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
        <ChartProgress live={live} />
      </header>
      <div className="notes-scroll">
        {ways.slip}
        {so?.broke != null && (
          <p role="alert" className="chart-broke">
            {`The chart stopped: ${asSentence(so.broke)} Nothing is lost; it can be drawn again.`}
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
          <ChartSaid
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
        {so?.confirmed != null && <ChartConfirmed confirmed={so.confirmed} {...{ under, tagOf }} />}
        {so?.chart?.distances !== undefined && <ChartDistancesList distances={so.chart.distances} under={under} />}
        {so?.chart != null && <ChartBasis chart={so.chart} under={under} />}
        <p className="note-grey">{`Arrows move what is tried 10 mm, with Shift 305 mm; [ and ] make it ${spokenLength(50, units)} smaller and larger.`}</p>
      </div>
      <footer>{footer}</footer>
    </section>
  );
}

/** The price step of a stretch at its widest. */
function priceOf(so: LiveChart["so"], { verdict, toMm }: ChartStretch, under: ChartUnder): string {
  const sheet = so?.side?.sheet;
  if (so?.request == null || sheet === undefined) return chartPriceWords(undefined);
  return chartPriceWords(openingPriceStep(chartVerdict(verdict, under), chartSteel(so.request, sheet, toMm)));
}
