import type { LineForces } from "./solve-runs.ts";

/** Where these lines stand among forces, looked up once for every layout. */
export function linePlaces(lines: readonly { readonly id: string }[]): (at: LineForces["at"]) => Int32Array {
  let last: LineForces["at"] | undefined;
  let places = new Int32Array(0);
  return (at) => {
    if (at === last) return places;
    last = at;
    places = Int32Array.from(lines, ({ id }) => at(id));
    return places;
  };
}
