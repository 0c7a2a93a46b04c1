import type { ChartColumn, ChartSide } from "@cornerway/engine";
import { chartSentence, chartVerdictWords } from "@cornerway/schema";
import { useState } from "react";
import type { Keys } from "../../keys/use-keys.ts";
import { spokenLength } from "../../units/drawn-length.ts";
import { useUnits } from "../../units/use-units.ts";
import type { ChartPlace } from "../../worker/chart-messages.ts";
import { answerAt } from "./chart-regions.ts";

const STEP_MM = 10;
/** A cross-member bay; pitch from memory. */
const BAY_MM = 305;
const WIDTH_STEP_MM = 50;
const NARROWEST_MM = 300;

type Tried = {
  readonly place: ChartPlace;
  readonly set: (place: ChartPlace) => void;
  readonly keys: Keys;
};

/**
 * The place and width tried, moved by keys and by hand, said with its verdict each time. `key` names what is charted: another
 * begins where it is drawn.
 */
export function useTried(given: {
  readonly key: string;
  readonly from: ChartPlace;
  readonly lengthMm: number;
  readonly columns: readonly ChartColumn[];
  readonly under: "gravity loads only" | "all loads";
  readonly tagOf: (id: string) => string;
  readonly say: (sentence: string) => void;
}): Tried {
  const { key, from, lengthMm, columns, under, tagOf, say } = given;
  const units = useUnits();
  const [moved, setMoved] = useState<{ key: string; place: ChartPlace } | null>(null);
  const place = moved?.key === key ? moved.place : from;
  const set = (next: ChartPlace) => {
    const kept = within(next, lengthMm);
    setMoved({ key, place: kept });
    const found = answerAt(columns, kept);
    const where = `${spokenLength(kept.widthMm, units)} wide at ${spokenLength(kept.centreMm, units)}`;
    say(
      found === null
        ? `${where}. Not traced yet.`
        : `${where}: ${chartVerdictWords(found.stretch.verdict, under)}. ${chartSentence(found.stretch.why, tagOf)} ${distance(found.column, kept.widthMm, units)}`,
    );
  };
  const step =
    (centreMm: number, widthMm = 0) =>
    () =>
      set({ centreMm: place.centreMm + centreMm, widthMm: place.widthMm + widthMm });
  const keys: Keys = {
    ArrowLeft: step(-STEP_MM),
    ArrowRight: step(STEP_MM),
    "Shift+ArrowLeft": step(-BAY_MM),
    "Shift+ArrowRight": step(BAY_MM),
    ArrowUp: step(0, WIDTH_STEP_MM),
    ArrowDown: step(0, -WIDTH_STEP_MM),
    "]": step(0, WIDTH_STEP_MM),
    "[": step(0, -WIDTH_STEP_MM),
  };
  return { place, set, keys };
}

const within = ({ centreMm, widthMm }: ChartPlace, lengthMm: number): ChartPlace => {
  const width = Math.min(lengthMm, Math.max(NARROWEST_MM, widthMm));
  return { widthMm: width, centreMm: Math.min(lengthMm - width / 2, Math.max(width / 2, centreMm)) };
};

/** How much wider or narrower it may be before the answer changes. */
function distance({ stretches }: ChartColumn, widthMm: number, units: Parameters<typeof spokenLength>[1]): string {
  const own = stretches.find(({ toMm }) => widthMm <= toMm);
  if (own === undefined) return "";
  const [next, before] = [
    stretches.find(({ fromMm, verdict }) => fromMm > widthMm && verdict !== own.verdict),
    stretches.findLast(({ toMm, verdict }) => toMm < widthMm && verdict !== own.verdict),
  ];
  const words = [
    next && `another answer ${spokenLength(next.fromMm - widthMm, units)} wider`,
    before && `${spokenLength(widthMm - before.toMm, units)} narrower`,
  ].filter((word) => word !== undefined);
  return words.length === 0 ? "" : `${words.join(", ")}.`;
}

/** Where a new opening is first tried: an ordinary door in the middle of the side. */
export const newPlace = ({ lengthMm }: Pick<ChartSide, "lengthMm">): ChartPlace => ({
  centreMm: Math.round(lengthMm / 2),
  widthMm: 900,
});
