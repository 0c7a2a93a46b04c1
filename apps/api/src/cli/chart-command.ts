import {
  hazardRefusalText,
  openingChart,
  usualFineness,
  type ChartFineness,
  type ChartRequest,
  type OpeningChart,
} from "@cornerway/engine";
import { readScheme, schemeFaults, type Scheme } from "@cornerway/schema";
import { badInput, type Answer } from "./answer.ts";
import { chartCsv } from "./chart-csv.ts";
import { chartText } from "./chart-text.ts";

/** What the words after `chart` ask for. */
export type ChartAsked = {
  /** Id or tag of a container, or of an opening whose chart is wanted. */
  readonly of: string;
  readonly face?: ChartRequest["face"];
  readonly sillMm?: number;
  readonly heightMm?: number;
  readonly fineness?: ChartFineness;
  readonly as: "text" | "csv" | "json";
};

/** The opening chart of one side of a scheme, drawn to its end, as text for people, CSV or JSON. */
export function chartCommand(input: { readonly name: string; readonly value: unknown }, asked: ChartAsked): Answer {
  const read = readScheme(input.value);
  if (!read.ok) return badInput(input.name, read.fields);
  const faults = schemeFaults(read.scheme);
  if (faults.length > 0) return badInput(input.name, faults);
  const request = chartRequest(read.scheme, asked);
  if ("wrong" in request) return badInput(input.name, [request.wrong]);
  const tracing = openingChart(read.scheme, request, asked.fineness ?? usualFineness);
  for (;;) {
    const step = tracing.next();
    if (step.done !== true) continue;
    if (step.value.accepted) return { out: written(read.scheme, step.value.chart, asked.as), err: "", code: 0 };
    return badInput(
      input.name,
      step.value.refusals.map((refusal) => ({
        pointer: `/basis/hazards/${refusal.hazard}`,
        detail: hazardRefusalText(refusal),
      })),
    );
  }
}

function written(scheme: Scheme, chart: OpeningChart, as: ChartAsked["as"]): string {
  if (as === "json") return `${JSON.stringify(chart, null, 2)}\n`;
  return as === "csv" ? chartCsv(scheme, chart) : chartText(scheme, chart);
}

type Wrong = { readonly wrong: { readonly pointer: string; readonly detail: string } };

/** An ordinary door where nothing is said. */
const ORDINARY = { sillMm: 180, heightMm: 2200 };

/** With bare edges where that works. */
const whereNeeded = { framedWhereNeeded: true } as const;

function chartRequest(scheme: Scheme, asked: ChartAsked): ChartRequest | Wrong {
  const named = ({ id, tag }: { readonly id: string; readonly tag: string }): boolean =>
    id === asked.of || tag === asked.of;
  const opening = scheme.openings.find(named);
  if (opening !== undefined) {
    const { containerId, face, use, framed, framing, id } = opening;
    if (face !== "left" && face !== "right" && face !== "front")
      return { wrong: { pointer: "/openings", detail: `${asked.of} is not in a sheet wall; a chart stands on one` } };
    const sillUm = asked.sillMm === undefined ? opening.sillUm : asked.sillMm * 1000;
    const heightUm = asked.heightMm === undefined ? opening.heightUm : asked.heightMm * 1000;
    const frame = { framed, ...(framed && whereNeeded), ...(framing && { framing }) };
    return { containerId, face, sillUm, heightUm, use, ...frame, openingId: id };
  }
  const container = scheme.containers.find(named);
  if (container === undefined)
    return { wrong: { pointer: "/containers", detail: `no container or opening is named ${asked.of}` } };
  const { face = "right", sillMm = ORDINARY.sillMm, heightMm = ORDINARY.heightMm } = asked;
  const size = { sillUm: sillMm * 1000, heightUm: heightMm * 1000 };
  return { containerId: container.id, face, ...size, use: "door", framed: true, ...whereNeeded };
}
