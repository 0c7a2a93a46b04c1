import type { BeamSupport } from "../bearing/beam-supports.ts";

/** A load on a beam, kN, so far along it, mm. */
export type BeamLoad = { readonly uMm: number; readonly forceKn: number };

/** What a beam makes of its loads by statics. */
export type BeamStatics = {
  /** Given by each support, kN, in the order of the supports; 0 where it lifts off. */
  readonly reactionsKn: readonly number[];
  /** The largest pull a support would have to give to keep it down, kN; 0 where it presses on all. */
  readonly upliftKn: number;
  /** Nothing keeps it from turning: all of its load is put on the last support it turns about. */
  readonly tips: boolean;
  /** Largest bending moment, kN m, sagging or hogging. */
  readonly momentKnm: number;
  readonly longestSpanMm: number;
};

/**
 * A straight beam on supports that only press. Between neighbouring supports it is taken as simply supported, past the
 * last one its end is carried by the last span: moment equilibrium. A support it would pull on is left out and the rest
 * carry; with one left it turns about that one. `supports` are from its start to its end, at least one.
 */
export function beamStatics(supports: readonly BeamSupport[], loads: readonly BeamLoad[]): BeamStatics {
  const places = supports.map(({ uMm }) => uMm);
  let standing = places.map((_, at) => at);
  let given = reactions(places, loads);
  const upliftKn = Math.max(0, -Math.min(...given)) + 0;
  while (standing.length > 1 && Math.min(...given) < -leastKn) {
    const off = given.indexOf(Math.min(...given));
    standing = standing.filter((_, at) => at !== off);
    given = reactions(
      standing.map((at) => places[at] ?? 0),
      loads,
    );
  }
  const left = standing.map((at) => places[at] ?? 0);
  return {
    reactionsKn: places.map((_, at) => (standing.includes(at) ? (given[standing.indexOf(at)] ?? 0) : 0)),
    upliftKn: upliftKn < leastKn ? 0 : upliftKn,
    tips: left.length < 2 && supports.length > 1,
    momentKnm: largestMoment(left, loads),
    longestSpanMm: Math.max(0, ...left.slice(1).map((uMm, at) => uMm - (left[at] ?? uMm))),
  };
}

/** Less than this is rounding, kN: 1 N. */
const leastKn = 1e-3;

/** Reactions at the places, kN, pulls negative. */
function reactions(places: readonly number[], loads: readonly BeamLoad[]): number[] {
  const given = places.map(() => 0);
  for (const { uMm, forceKn } of loads) {
    const [from, to] = spanOf(places, uMm);
    const start = places[from] ?? 0;
    const share = from === to ? 0 : (uMm - start) / ((places[to] ?? start) - start);
    given[from] = (given[from] ?? 0) + forceKn * (1 - share);
    given[to] = (given[to] ?? 0) + forceKn * share;
  }
  return given;
}

/** The two supports that carry a place: its neighbours, or the last two on its side. */
function spanOf(places: readonly number[], uMm: number): [number, number] {
  const last = places.length - 1;
  if (last < 1) return [0, 0];
  const after = places.findIndex((place) => place >= uMm);
  const to = after === -1 ? last : Math.max(1, after);
  return [to - 1, to];
}

/** Of the moments at every load and support: each span simply supported with what hangs past its ends. */
function largestMoment(places: readonly number[], loads: readonly BeamLoad[]): number {
  const first = places[0] ?? 0;
  const last = places.at(-1) ?? 0;
  const hanging = (at: number) => {
    const beyond = loads.filter(({ uMm }) => (at === first ? uMm < first : uMm > last));
    return beyond.reduce((sum, { uMm, forceKn }) => sum - forceKn * Math.abs(uMm - at), 0);
  };
  const moments = [hanging(first), hanging(last)];
  places.slice(1).forEach((to, before) => {
    const from = places[before] ?? to;
    const own = loads.filter(({ uMm }) => uMm > from && uMm < to);
    const atEnds = [from === first ? hanging(first) : 0, to === last ? hanging(last) : 0] as const;
    for (const { uMm } of own) moments.push(momentAt(uMm, from, to, own, atEnds));
  });
  return Math.max(...moments.map((moment) => Math.abs(moment))) / 1000;
}

function momentAt(
  uMm: number,
  from: number,
  to: number,
  own: readonly BeamLoad[],
  [atFrom, atTo]: readonly [number, number],
): number {
  const span = to - from;
  const share = (uMm - from) / span;
  const sagging = own.reduce((sum, load) => {
    const near = load.uMm <= uMm ? (load.uMm - from) * (to - uMm) : (uMm - from) * (to - load.uMm);
    return sum + (load.forceKn * near) / span;
  }, 0);
  return sagging + atFrom * (1 - share) + atTo * share;
}
