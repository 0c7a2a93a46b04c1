import { cosDegThousandths, sinDegThousandths } from "../numerics/elementary.ts";
import type { Six, Triple } from "./analytical-model.ts";

/** A turn about the upright axis; quarter turns are exact. */
export interface Turn {
  readonly cos: number;
  readonly sin: number;
}

export function turnOf(turnMdeg: number): Turn {
  return turnMdeg === 0 ? AS_DRAWN : { cos: cosDegThousandths(turnMdeg), sin: sinDegThousandths(turnMdeg) };
}

const AS_DRAWN: Turn = { cos: 1, sin: 0 };

/** From the turned part's own axes to global axes. */
export function turned({ cos, sin }: Turn, [x, y, z]: Triple): Triple {
  return [cos * x - sin * y + 0, sin * x + cos * y + 0, z];
}

/** From global axes to the turned part's own axes. */
export function turnedBack({ cos, sin }: Turn, [x, y, z]: Triple): Triple {
  return [cos * x + sin * y + 0, cos * y - sin * x + 0, z];
}

/** A force and a moment, from own axes to global axes. */
export function turnedSix(turn: Turn, [a, b, c, d, e, f]: Six): Six {
  return [...turned(turn, [a, b, c]), ...turned(turn, [d, e, f])];
}
