import type { Opening, Scheme } from "@cornerway/schema";
import type { Unit } from "../geometry/building.ts";

/**
 * Openings of a unit that a part's place names: "bottom side rail right over 3.90–5.90 m" is the rail below one, "jamb right at
 * 2.40 m" its jamb. Places count from the middle of the corner post.
 */
export function openingsAt({ openings }: Scheme, unit: Unit, places: readonly string[]): Opening[] {
  const stretches = places.flatMap(stretchOf);
  const { lengthMm, widthMm, holeSpacingLengthwiseMm, holeSpacingCrosswiseMm } = unit.dimensions;
  return openings.filter(({ containerId, face, offsetUm, widthUm }) => {
    if (containerId !== unit.id) return false;
    const toPost = (face === "front" ? widthMm - holeSpacingCrosswiseMm : lengthMm - holeSpacingLengthwiseMm) / 2;
    const [u0, u1] = [offsetUm / 1000 - toPost, (offsetUm + widthUm) / 1000 - toPost];
    return stretches.some(({ wall, fromMm, toMm }) => wall === face && isAlong(fromMm, toMm, u0, u1));
  });
}

type Stretch = { readonly wall: string; readonly fromMm: number; readonly toMm: number };

function stretchOf(place: string): Stretch[] {
  const [, wall, from, to = from] = /\b(left|right|front) (?:over|at) ([0-9.]+)(?:–([0-9.]+))?/.exec(place) ?? [];
  return wall === undefined ? [] : [{ wall, fromMm: Number(from) * 1000, toMm: Number(to) * 1000 }];
}

/** A point at the opening or its edge; a stretch that shares more with it than an edge. */
const isAlong = (fromMm: number, toMm: number, u0: number, u1: number): boolean =>
  fromMm === toMm
    ? fromMm > u0 - ROUNDED_MM && fromMm < u1 + ROUNDED_MM
    : Math.min(toMm, u1) - Math.max(fromMm, u0) > ROUNDED_MM;

/** Places are told to 10 mm. */
const ROUNDED_MM = 10;
