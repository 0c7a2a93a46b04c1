import { openingFrame } from "../catalog/sections/frame-tubes.ts";
import type { ChartBasis, ChartRequest } from "./chart.ts";
import type { TrialSet } from "./trial-ground.ts";

/** What a chart takes for granted, traced under these vectors. */
export function chartBasis(
  { under, request }: { readonly under: ChartBasis["under"]; readonly request: ChartRequest },
  vectors: ChartBasis["vectors"],
): ChartBasis {
  const { jamb, header, sill } = openingFrame(request);
  return {
    under,
    vectors,
    framing: request.framed ? [`jambs ${jamb.name}`, `header ${header.name}`, `sill ${sill.name}`] : [],
    assumed: request.framedWhereNeeded === true ? [...chartAssumed, bareAssumed] : chartAssumed,
  };
}

export const vectorsOf = (sets: readonly TrialSet[]): ChartBasis["vectors"] =>
  sets.map(({ set, groups }) => ({
    assumptions: set.id,
    runs: groups.flatMap(({ runs }) => runs.map(({ id }) => id)),
  }));

/** Those of both, set by set. */
export function allVectors(one: ChartBasis["vectors"], other: ChartBasis["vectors"]): ChartBasis["vectors"] {
  const runs = new Map(one.map(({ assumptions, runs: own }) => [assumptions, own]));
  for (const { assumptions, runs: own } of other)
    runs.set(assumptions, [...new Set([...(runs.get(assumptions) ?? []), ...own])]);
  return [...runs].map(([assumptions, own]) => ({ assumptions, runs: own }));
}

/** What a chart takes for granted beside what strength does; printed with it. */
const chartAssumed = [
  "traced under the runs and assumptions that decide where a place was looked at under all that govern the unit and its bearings: each width under those of them that decided at the nearest such place, and under more where a part that was beyond its strength already may be worse by what counts, or where a boundary of its column has moved; both sides of every boundary and the widest that works of each stretch under all that decide, but those under which the part that does not work is clearly beyond its strength, were its uses to stand to each other as where they were seen; the opening as drawn, where its answer changes and the widest of each verdict that works are confirmed under all that govern; any place under every run and with the whole building when it is asked for",
  "loads are those of the building with the opening in its first place, but for the weight of the frame: enclosure and internal pressure of wind do not follow the width; the building's lean follows it only where a place is looked at under all that govern",
  "the verdict is what the opening adds: parts, holds and runs that are worse by more than 2 %, new, or no longer within their strength; parts inside units that carry it or stand on it count where a place is looked at under all that govern, and everywhere once they decide there; parts of units farther off, pressures on single parts and walls of other units that no longer count only when a place is asked for",
  "on a wall with no other opening and nothing that bears but at its corners wider is taken never to be cheaper, and each column is asked for the last width of each verdict and the one after it: a use may dip by some hundredths from one width to the next, and a wider opening that would work again there is not looked for; on others it is asked at a few widths and closed in on where neighbours differ: an island between two widths that agree is told as they are, and looked at when its place is asked for; how far an opening may move is read from the columns where they agree and closed in on where they do not",
  "the lift is looked at where a width is the last that works, but for those no wider and no nearer the middle of such a wall than one that is far from its strength",
  "places and widths in steps of 50 mm; nothing is smoothed",
] as const;

const bareAssumed =
  "where an opening works with bare edges, it works as built; on a wall that has other openings or bearings bare edges are tried only where a framed one works";
