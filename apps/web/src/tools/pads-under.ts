import { placeContainer } from "@cornerway/engine";
import type { Pad, PointMm, Scheme } from "@cornerway/schema";
import { carries } from "./pads-follow.ts";

/** The pads under units and posts, and of those the ones that hold nothing else. */
export interface PadsUnder {
  all: Pad[];
  alone: Pad[];
}

/** What the chosen units and posts stand on. */
export function padsUnder(scheme: Scheme, chosen: ReadonlySet<string>): PadsUnder {
  const own = feetOf(scheme, (id) => chosen.has(id));
  const others = feetOf(scheme, (id) => !chosen.has(id));
  const all = scheme.pads.filter((pad) => own.some((foot) => carries(pad, foot)));
  return { all, alone: all.filter((pad) => !others.some((foot) => carries(pad, foot))) };
}

/** Where the units and posts that are meant stand, mm. */
function feetOf(scheme: Scheme, meant: (id: string) => boolean): PointMm[] {
  const units = scheme.containers.filter(({ id }) => meant(id)).map(placeContainer);
  const posts = scheme.posts.filter(({ id }) => meant(id));
  return [
    ...units.flatMap(({ bottomFittings }) => bottomFittings.map(({ at }) => at)),
    ...posts.map(({ xUm, yUm, baseZUm }) => ({ xMm: xUm / 1000, yMm: yUm / 1000, zMm: baseZUm / 1000 })),
  ];
}
