import { sideAsDrawn, type ChartRequest } from "@cornerway/engine";
import type { Opening, Scheme } from "@cornerway/schema";
import { useEffect, useMemo, type ReactNode } from "react";
import type { FieldPlace } from "../../sheet/contract.ts";
import { spokenLength } from "../../units/drawn-length.ts";
import { useUnits } from "../../units/use-units.ts";
import type { ChartPlace } from "../../worker/chart-messages.ts";
import type { LiveChart } from "../../worker/use-opening-chart.ts";
import { ChartField } from "./ChartField.tsx";
import { chartScale, shownWidthMm } from "./chart-scale.ts";

type ChartPaperProps = {
  readonly scheme: Scheme;
  readonly place: FieldPlace;
  readonly live: LiveChart;
  readonly under: "gravity loads only" | "all loads";
  readonly tagOf: (id: string) => string;
  readonly name: string;
  readonly request: ChartRequest | null;
  readonly opening: Opening | undefined;
  readonly tried: ChartPlace;
  readonly onTry: (place: ChartPlace) => void;
  readonly asTable: boolean;
  readonly table: ReactNode;
  /** Told the scale of the wall, for the key of strokes. */
  readonly onScale: (pxPerM: number) => void;
};

/** On a field narrower than this the table says more than the drawing. */
const NARROW_PX = 480;

/** The field of sheet 2: the chart on its wall, or the same as a table. */
export function ChartPaper(props: ChartPaperProps) {
  const { scheme, place, live, under, tagOf, name, request, opening, tried, onTry, asTable, table } = props;
  const units = useUnits();
  const { so } = live;
  const asDrawn = useMemo(() => request && sideAsDrawn(scheme, request), [scheme, request]);
  const side = so?.side ?? asDrawn;
  const columns = so?.columns ?? [];
  if (asTable || place.widthPx < NARROW_PX) return table;
  if (request === null || side == null) return null;
  const drawn =
    opening === undefined
      ? null
      : {
          place: { centreMm: (opening.offsetUm + opening.widthUm / 2) / 1000, widthMm: opening.widthUm / 1000 },
          opening,
        };
  const scale = chartScale(
    side,
    shownWidthMm(columns, Math.max(tried.widthMm, drawn?.place.widthMm ?? 0)),
    place.widthPx,
    place.heightPx,
  );
  const pxPerM = scale.pxPerMm * 1000;
  const [sillMm, heightMm] = [request.sillUm / 1000, request.heightUm / 1000];
  return (
    <>
      <ScaleTeller pxPerM={pxPerM} onScale={props.onScale} />
      <ChartField
        {...{ side, columns, scale, under, tried, drawn, tagOf, onTry }}
        widthPx={place.widthPx}
        heightPx={place.heightPx}
        sill={{ fromMm: sillMm, toMm: sillMm + heightMm }}
        label={`Opening chart of ${name}: place along, width up, ${columns.length} places traced. Press T for the table.`}
      />
      {so?.side == null && so?.broke == null && (
        <p className="chart-empty" role="status">
          The building is solved first, with the opening in its place.
        </p>
      )}
      <p className="chart-title">
        <i aria-hidden="true">1</i>
        <b>{name}</b>
        <span>{`1:${Math.round(3.78 / scale.pxPerMm)} · seen from ${request.face === "right" ? "outside" : "inside"} · sill ${spokenLength(sillMm, units)}, ${spokenLength(heightMm, units)} high · factored forces${under === "gravity loads only" ? ", gravity alone" : ""} · wider than ${(scale.mostMm / 1000).toFixed(1)} m: in the table${side.others.length > 0 ? " · shaded: an opening is there" : ""}`}</span>
      </p>
    </>
  );
}

function ScaleTeller({ pxPerM, onScale }: { readonly pxPerM: number; readonly onScale: (pxPerM: number) => void }) {
  useEffect(() => onScale(pxPerM), [pxPerM, onScale]);
  return null;
}
