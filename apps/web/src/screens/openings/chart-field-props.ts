import type { ChartColumn, ChartSide } from "@cornerway/engine";
import type { Opening } from "@cornerway/schema";
import type { ChartPlace } from "../../worker/chart-messages.ts";
import type { ChartScale } from "./chart-scale.ts";

export type ChartFieldProps = {
  readonly side: ChartSide;
  readonly columns: readonly ChartColumn[];
  readonly under: "gravity loads only" | "all loads";
  readonly scale: ChartScale;
  readonly widthPx: number;
  readonly heightPx: number;
  /** What is tried, and where the opening is drawn. */
  readonly tried: ChartPlace;
  readonly drawn: { readonly place: ChartPlace; readonly opening: Opening } | null;
  readonly sill: { readonly fromMm: number; readonly toMm: number };
  readonly tagOf: (id: string) => string;
  readonly label: string;
  readonly onTry: (place: ChartPlace) => void;
};
