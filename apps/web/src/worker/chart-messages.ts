import type { ChartAnswer, ChartColumn, ChartRequest, ChartSide, OpeningChart } from "@cornerway/engine";
import type { Scheme, Verdict } from "@cornerway/schema";

/** Centre and width along a face, mm. */
export type ChartPlace = { readonly centreMm: number; readonly widthMm: number };

/** What is asked of the thread that draws charts. It is ended from outside when nobody waits any more. */
export type ChartQuestion =
  | { kind: "draw"; turn: number; scheme: Scheme; request: ChartRequest }
  | { kind: "confirm"; turn: number; scheme: Scheme; request: ChartRequest; place: ChartPlace };

/** What is asked of the thread that traces half of one. */
export type HalfQuestion = { readonly scheme: Scheme; readonly request: ChartRequest };

/** One place and width under all runs: what the opening adds, and the unit with it whatever the cause. */
export type Confirmed = { readonly place: ChartPlace; readonly answer: ChartAnswer; readonly unit: Verdict };

export type ChartWord =
  | { kind: "side"; turn: number; side: ChartSide; of: number }
  | { kind: "column"; turn: number; column: ChartColumn; done: number; of: number }
  | { kind: "drawn"; turn: number; chart: OpeningChart }
  | { kind: "confirmed"; turn: number; confirmed: Confirmed }
  | { kind: "broke"; turn: number; why: string };
