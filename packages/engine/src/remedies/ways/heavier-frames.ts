import type { Opening, Operation } from "@cornerway/schema";
import { openingFrame } from "../../catalog/sections/frame-tubes.ts";
import { overParts } from "../over-parts.ts";
import { kgPerMOf } from "../section-mass.ts";
import { frameRungs } from "../usual-steel.ts";
import type { Generator, Trial } from "../trial.ts";

/** Bars of frames beyond their strength: all framed openings of those walls in heavier tube, each no lighter than it is. */
export const heavierFrames: Generator = ({ scheme, mark }) => {
  const over = overParts(mark).filter(({ part }) => part === "jamb" || part === "added beam");
  const faces = new Set(over.flatMap(({ place }) => /\b(left|right|front|door)\b/.exec(place)?.[1] ?? []));
  const openings = scheme.openings.filter(
    ({ containerId, face, framed }) => framed && mark.elements.includes(containerId) && faces.has(face),
  );
  const trials = frameRungs.flatMap((rung): Trial[] => {
    const lighter = openings.filter((opening) => kgPerMOf(openingFrame(opening).header.name) < kgPerMOf(rung.header));
    if (lighter.length === 0) return [];
    const openingIds = lighter.map(({ id }) => id);
    return [
      {
        change: { kind: "frame opening", openingIds, jamb: rung.jamb, header: rung.header, sill: rung.sill },
        operations: lighter.map((opening): Operation => ({ kind: "opening.change", opening: framedAs(opening, rung) })),
      },
    ];
  });
  return trials.length === 0 ? [] : [trials];
};

/** A sill only where the opening has one of its own: a door runs down to the rail. */
const framedAs = (opening: Opening, { jamb, header, sill }: (typeof frameRungs)[number]): Opening => ({
  ...opening,
  framing: { jamb, header, ...(opening.use === "window" && { sill }) },
});
