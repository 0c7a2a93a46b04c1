import type { Alignment } from "@cornerway/engine";
import { mmToUm, type UnitSystem } from "@cornerway/schema";
import { drawnLength } from "../units/drawn-length.ts";
import { listOf } from "./list-of.ts";
import type { NameOf } from "./name-of.ts";
import { wayWords } from "./way-words.ts";

const counts = ["no", "one", "two", "three", "four"];

/** Ways shorter than this say nothing, mm. */
const leastMm = 0.5;

/** "Land two fittings on F1 and F2, bearing without lock: move 0.320 m east". */
export function alignmentSentence(
  { landings, kind, dxMm, dyMm, gap }: Alignment,
  nameOf: NameOf,
  units: UnitSystem,
): string {
  const onto = listOf([...new Set(landings.map(({ onId }) => nameOf(onId)))]);
  const long = (um: number) => (units === "US" ? drawnLength(um / 1000, units) : `${drawnLength(um / 1000, units)} m`);
  const way = (x: number, y: number) => wayWords({ xUm: whole(x), yUm: whole(y), zUm: 0 }, long);
  const count = counts[landings.length] ?? String(landings.length);
  const moves = [
    ...(gap === undefined
      ? []
      : [`move ${nameOf(gap.move.id)} ${way(gap.move.dxMm, gap.move.dyMm)} to a gap of ${long(mmToUm(gap.neededMm))}`]),
    ...(way(dxMm, dyMm) === "nowhere" ? [] : [`${gap === undefined ? "move" : "it"} ${way(dxMm, dyMm)}`]),
  ];
  return `Land ${count} fittings on ${onto}, ${kindWords[kind]}: ${listOf(moves)}`;
}

const whole = (mm: number) => (Math.abs(mm) < leastMm ? 0 : mmToUm(mm));

const kindWords: Readonly<Record<Alignment["kind"], string>> = {
  lock: "a lock enters",
  "bearing without lock": "bearing without lock",
  "made connection": "with made connections",
};
