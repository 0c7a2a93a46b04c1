import type { Framing, Opening } from "@cornerway/schema";
import { FreshNames } from "../fresh-names.ts";
import { postsInWall } from "../set-posts.ts";
import { frameRungs, postSections, usualPad } from "../usual-steel.ts";
import type { Generator, Trial } from "../trial.ts";
import { openingOfMark } from "./face-of-opening.ts";

/**
 * Posts that carry the top rail over an opening: one in its middle, two at its third points, or two at its jambs with a
 * header between them, each with a way to the ground.
 */
export const postsAtOpening: Generator = (ground) => {
  const place = openingOfMark(ground);
  if (place === undefined) return [];
  const { opening, unit, rect } = place;
  const { face } = opening;
  if (face !== "left" && face !== "right") return [];
  const widthMm = rect.u1 - rect.u0;
  const at = (share: number) => rect.u0 + share * widthMm;
  const wide = opening.use === "open-wall" || widthMm >= WIDE_MM;
  const sets: readonly { readonly at: readonly number[]; readonly header: boolean }[] = [
    ...(wide
      ? [
          { at: [at(1 / 2)], header: false },
          { at: [at(1 / 3), at(2 / 3)], header: false },
        ]
      : []),
    { at: [rect.u0 - BESIDE_MM, rect.u1 + BESIDE_MM], header: true },
  ];
  const [section] = postSections;
  return sets
    .map(({ at: us, header }) =>
      (header ? frameRungs : [undefined]).flatMap((frame): Trial[] => {
        const places = us.map((uMm) => ({ unitId: unit.id, rail: face, uMm }));
        const { building } = ground.analysis.structure;
        const set = postsInWall(ground.scheme, building, new FreshNames(ground.scheme), places, section, usualPad);
        if (set === undefined) return [];
        const framing: Framing | undefined = frame && { jamb: frame.jamb, header: frame.header };
        const { operations, postIds, pads } = set;
        const padMm = pads === 0 ? null : usualPad.sideMm;
        return [
          {
            change: {
              ...{ kind: "posts", unitId: unit.id, postIds, under: "opening", section, padMm },
              header: framing?.header ?? null,
              ...(wide && { inPlace: true }),
            },
            operations: [
              ...operations,
              ...(framing || wide
                ? [{ kind: "opening.change", opening: dressed(opening, framing, wide) } as const]
                : []),
            ],
          },
        ];
      }),
    )
    .filter((rungs) => rungs.length > 0);
};

/** A wide opening cut before its posts stand has to bear the crane without them. */
const dressed = (opening: Opening, framing: Framing | undefined, wide: boolean): Opening => ({
  ...opening,
  ...(framing && { framed: true, framing }),
  ...(wide && opening.cut === undefined && { cut: "after shoring" }),
});

/** Narrower than this an opening is not parted by a post, mm: common practice, no published source. */
const WIDE_MM = 2400;
/** From the edge of the opening to the middle of a post beside it, mm. */
const BESIDE_MM = 150;
