import { deltaSign, setBefore } from "./changes.ts";
import type { SetSource } from "./set-source.ts";

/** How changes since the set before are marked, as the authority asks; nothing where there was none. */
export function changeWords(source: SetSource): string[] {
  const before = setBefore(source);
  if (before === undefined) return [];
  const { authority } = source;
  const since = `since revision ${before.letter}, of which the last set before this one was printed`;
  const asked = authority.name === null ? "" : ` ${authority.name} asks for sets marked so.`;
  const sign = deltaSign(source);
  const numbered = authority.numbered ? " and the number it has in the list in the calculations" : "";
  const earlier =
    authority.earlierDeltas === "stay"
      ? "Clouds of earlier sets are taken off; their deltas stay on what is as that set had it."
      : "Marks of earlier sets are taken off.";
  switch (authority.marks) {
    case "none":
      return [`Drawings bear no marks of change: what changed ${since}, is listed in the calculations.${asked}`];
    case "deltas":
      return [`Each change ${since}, has the delta ${sign}${numbered}. ${earlier}${asked}`];
    case "clouds and deltas":
      return [`Each change ${since}, is in a cloud with the delta ${sign}${numbered}. ${earlier}${asked}`];
  }
}
