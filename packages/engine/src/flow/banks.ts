import type { Port } from "./vertical-flow.ts";

/** What comes in or goes out at one side of a point, N. */
export type Bank = { readonly port: Port | Outside; readonly comesIn: boolean; readonly forceN: number };

/** Loads and bearings give and take beside the four sides; where an upright goes on above and below, on both sides of it. */
export type Outside = 4 | 5;
export const OUTSIDE: Outside = 4;
export const OUTSIDE_LEFT: Outside = 5;

/** So much of what comes in by one side goes out by another: both counted from the left of whoever goes that way, N. */
export type Passage = {
  readonly by: Bank["port"];
  readonly fromN: number;
  readonly toN: number;
  readonly out: Bank["port"];
  readonly outFromN: number;
};

type Open = { port: Bank["port"]; comesIn: boolean; fromN: number; toN: number };

/**
 * How what comes in at a point goes out without crossing itself: sides clockwise, neighbours joined that have most for each
 * other, again and again. That makes no difference between clockwise and the other way, so a mirrored point hands on alike.
 * Who comes in has the next side clockwise at his left, who goes out at his right.
 */
export function passages(clockwise: readonly Bank[]): Passage[] {
  const made: Passage[] = [];
  let open = clockwise.map(({ port, comesIn, forceN }): Open => ({ port, comesIn, fromN: 0, toN: forceN }));
  for (;;) {
    const pairs = open.flatMap((one, n): [Open, Open][] => {
      const next = open[(n + 1) % open.length];
      return next === undefined || next.comesIn === one.comesIn ? [] : [[one, next]];
    });
    const most = pairs.toSorted((a, b) => between(b) - between(a))[0];
    if (most === undefined) return made;
    const [one, next] = most;
    made.push(one.comesIn ? atTheLeft(one, next) : atTheRight(next, one));
    open = open.filter((each) => left(each) > 0);
  }
}

const between = ([one, other]: readonly [Open, Open]): number => Math.min(left(one), left(other));

const left = ({ fromN, toN }: Open): number => toN - fromN;

function atTheLeft(comes: Open, goes: Open): Passage {
  const forceN = Math.min(left(comes), left(goes));
  const made = { by: comes.port, fromN: comes.fromN, toN: comes.fromN + forceN, out: goes.port, outFromN: goes.fromN };
  take(comes, goes, forceN, "fromN", 1);
  return made;
}

function atTheRight(comes: Open, goes: Open): Passage {
  const forceN = Math.min(left(comes), left(goes));
  const made = {
    ...{ by: comes.port, fromN: comes.toN - forceN, toN: comes.toN },
    ...{ out: goes.port, outFromN: goes.toN - forceN },
  };
  take(comes, goes, forceN, "toN", -1);
  return made;
}

/** The smaller of the two is used up exactly, whatever is rounded. */
function take(comes: Open, goes: Open, forceN: number, end: "fromN" | "toN", way: 1 | -1): void {
  for (const one of [comes, goes]) {
    if (left(one) <= forceN) one.fromN = one.toN;
    else one[end] += way * forceN;
  }
}
