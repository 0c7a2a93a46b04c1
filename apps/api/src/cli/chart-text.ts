import type { ChartColumn, ChartDistances, ChartStretch, OpeningChart } from "@cornerway/engine";
import {
  cautionLine,
  cautions,
  chartSentence,
  chartVerdictWords,
  elementNames,
  kilonewtonsExact,
  type Scheme,
} from "@cornerway/schema";

/** A chart as text for people: the side, the table of places, distances, what it takes for granted, cautions. Metres. */
export function chartText(scheme: Scheme, chart: OpeningChart): string {
  const names = elementNames(scheme);
  const tag = (id: string): string => names.get(id) ?? id;
  const { request, side, basis, without, columns, exceptions, distances } = chart;
  return lines([
    cautionLine,
    "",
    `Opening chart of ${tag(request.containerId)}, ${request.face} side. ${basis.under === "all loads" ? "All loads." : "Gravity alone: wind and earthquake not checked."}`,
    `Sill ${metres(request.sillUm / 1000)}, height ${metres(request.heightUm / 1000)}; ${request.framed ? `framed${request.framedWhereNeeded ? " where needed" : ""} with ${basis.framing.join(", ")}` : "not framed"}.`,
    `Without it: ${chartVerdictWords(without.verdict, basis.under)}, ${without.reasons} reasons against it. The chart says what the opening adds.`,
    "",
    "WHAT COMES DOWN AND WHAT STANDS BELOW",
    ...side.bearings.map(
      ({ at, uMm, elementId, forceN }) =>
        `  ${at === "above" ? "on it" : "below"} ${tag(elementId)} at ${metres(uMm)}, up to ${kilonewtonsExact(forceN / 1000)} factored`,
    ),
    "",
    "WIDTHS BY PLACE (centre from the end of the side)",
    ...columns.flatMap((column) => columnLines(column, tag, basis.under)),
    ...(distances === undefined ? [] : ["", "AS DRAWN", ...distanceLines(distances, tag, basis.under)]),
    "",
    "WIDER AND YET BETTER",
    ...(exceptions.length === 0 ? ["  nowhere"] : []),
    ...exceptions.flatMap(({ centreMm, narrower, wider }) => [
      `  at ${metres(centreMm)}: ${stretchLine(narrower, tag, basis.under)}`,
      `    then ${stretchLine(wider, tag, basis.under)}`,
    ]),
    "",
    "SOLVED UNDER",
    ...basis.vectors.map(({ assumptions, runs }) => `  ${assumptions}: ${runs.join("; ")}`),
    "",
    "ASSUMED",
    ...basis.assumed.map((what) => `  ${what}`),
    "",
    "CAUTIONS",
    ...cautions.map((caution) => `  ${caution}`),
  ]);
}

type Under = OpeningChart["basis"]["under"];

const columnLines = ({ centreMm, stretches }: ChartColumn, tag: (id: string) => string, under: Under): string[] => [
  `  ${metres(centreMm)}`,
  ...stretches.map((stretch) => `    ${stretchLine(stretch, tag, under)}`),
];

const stretchLine = ({ fromMm, toMm, verdict, why }: ChartStretch, tag: (id: string) => string, under: Under): string =>
  `${metres(fromMm)} to ${metres(toMm)}: ${chartVerdictWords(verdict, under)}. ${chartSentence(why, tag)}`;

function distanceLines(
  { centreMm, widthMm, answer, changes }: ChartDistances,
  tag: (id: string) => string,
  under: Under,
): string[] {
  return [
    `  ${metres(widthMm)} wide at ${metres(centreMm)}: ${chartVerdictWords(answer.verdict, under)}. ${chartSentence(answer.why, tag)}`,
    ...changes.map(
      ({ way, byMm, answer: then }) =>
        `  ${way} by ${metres(byMm)}: ${chartVerdictWords(then.verdict, under)}. ${chartSentence(then.why, tag)}`,
    ),
  ];
}

const metres = (mm: number): string => `${(mm / 1000).toFixed(3)} m`;
const lines = (text: readonly string[]): string => `${text.join("\n")}\n`;
