import { chartSteel, openingPriceStep, type OpeningChart } from "@cornerway/engine";
import {
  cautionLine,
  chartPriceWords,
  chartSentence,
  chartVerdict,
  elementNames,
  type Scheme,
} from "@cornerway/schema";
import { csvOf } from "../description/csv.ts";

/** A chart as a table: a row for each stretch of widths of each place, units in the heads. */
export function chartCsv(scheme: Scheme, { request, side, columns, basis: { under } }: OpeningChart): string {
  const names = elementNames(scheme);
  const rows = columns.flatMap(({ centreMm, stretches }) =>
    stretches.map(({ fromMm, toMm, verdict, why }) => [
      centreMm,
      fromMm,
      toMm,
      chartVerdict(verdict, under),
      verdict,
      under,
      chartPriceWords(openingPriceStep(chartVerdict(verdict, under), chartSteel(request, side.sheet, toMm))),
      "use" in why && Number.isFinite(why.use) ? Math.round(why.use * 1000) / 1000 : null,
      chartSentence(why, (id) => names.get(id) ?? id),
      cautionLine,
    ]),
  );
  return csvOf(chartHeads, rows);
}

export const chartHeads = [
  "centre from the end of the side (mm)",
  "width from (mm)",
  "width to (mm)",
  "verdict",
  "verdict under these loads",
  "loads",
  "price step",
  "greatest share of strength",
  "why",
  "caution",
] as const;
