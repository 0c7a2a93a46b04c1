import type { LabourName, Scheme } from "@cornerway/schema";

export type Engineered = Extract<LabourName, `engineering, ${string}`>;

/** What an engineer's time goes to, by element. */
export function engineeredKinds({
  openings,
  posts,
  beams,
  seats,
  locks,
  ties,
}: Scheme): ReadonlyMap<string, Engineered> {
  const named = (elements: readonly { id: string }[], kind: Engineered) =>
    elements.map(({ id }): [string, Engineered] => [id, kind]);
  return new Map([
    ...named(openings, "engineering, opening"),
    ...named(posts, "engineering, post"),
    ...named(beams, "engineering, beam"),
    ...named([...seats, ...locks], "engineering, seat or made connection"),
    ...named(ties, "engineering, tie"),
  ]);
}
