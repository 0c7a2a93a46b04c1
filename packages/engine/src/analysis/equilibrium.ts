import { cross, plus, times, type Vector } from "../numerics/vector.ts";
import type { Member } from "../elements/member.ts";

/** A force and a moment at a place: N, N·mm, mm. */
export interface Action {
  readonly place: Vector;
  readonly force: Vector;
  readonly moment: Vector;
}

/** Sum of the forces and of the moments about the origin. */
export function resultant(actions: readonly Action[]): number[] {
  const sum = [0, 0, 0, 0, 0, 0];
  for (const { place, force, moment } of actions) {
    const turned = plus(moment, cross(place, force));
    [...force, ...turned].forEach((value, c) => (sum[c] = (sum[c] ?? 0) + value));
  }
  return sum;
}

/** The resultant of a uniform load on a member: q·L at mid-length, with q in global axes. */
export function uniformLoadAction({ facts }: Member, start: Vector, load: Vector): Action {
  const { axes } = facts;
  const middle = plus(plus(start, facts.armI ?? NONE), times(axes.x, axes.lengthMm / 2));
  return { place: middle, force: times(load, axes.lengthMm), moment: NONE };
}

const NONE: Vector = [0, 0, 0];
