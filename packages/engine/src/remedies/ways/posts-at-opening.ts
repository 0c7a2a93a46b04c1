import type { Framing, Opening, RemedyChange } from "@cornerway/schema";
import { FreshNames } from "../fresh-names.ts";
import { postsInWall } from "../set-posts.ts";
import { frameRungs, postSections, usualPad } from "../usual-steel.ts";
import type { Generator, Ladder, RemedyGround, Trial } from "../trial.ts";
import { openingOfMark, toUm, type OpeningOnFace } from "./face-of-opening.ts";

/** Where posts stand, along the face, and what is done to the opening with them. */
type PostSet = {
  readonly atMm: readonly number[];
  readonly frame?: Pick<Framing, "jamb" | "header">;
  /** Wall that is left at each side of the opening beyond what stands there, mm. */
  readonly leftMm?: number;
};

/**
 * Posts that carry the top rail over an opening: one in its middle, two at its third points, two in its middle with a little more
 * wall left at either side, or two at its jambs with a header between them, each with a way to the ground.
 */
export const postsAtOpening: Generator = (ground) => {
  const place = openingOfMark(ground);
  if (place === undefined) return [];
  const { face } = place.opening;
  if (face !== "left" && face !== "right") return [];
  const { u0, u1 } = place.rect;
  const at = (share: number): number => u0 + share * (u1 - u0);
  const pair = [at(1 / 2) - PAIR_MM / 2, at(1 / 2) + PAIR_MM / 2];
  const ladders: readonly (readonly PostSet[])[] = [
    ...(isWide(place)
      ? [[{ atMm: [at(1 / 2)] }], [{ atMm: [at(1 / 3), at(2 / 3)] }], LEFT_MM.map((leftMm) => ({ atMm: pair, leftMm }))]
      : []),
    frameRungs.map((frame) => ({ atMm: [u0 - BESIDE_MM, u1 + BESIDE_MM], frame })),
  ];
  return ladders
    .map((sets): Ladder => sets.flatMap((set) => trialOf(set, place, face, ground) ?? []))
    .filter((rungs) => rungs.length > 0);
};

function trialOf(
  { atMm, frame, leftMm = 0 }: PostSet,
  place: OpeningOnFace,
  face: "left" | "right",
  { scheme, analysis }: RemedyGround,
): Trial | undefined {
  const { opening, unit, rect } = place;
  const [section] = postSections;
  const places = atMm.map((uMm) => ({ unitId: unit.id, rail: face, uMm }));
  const set = postsInWall(scheme, analysis.structure.building, new FreshNames(scheme), places, section, usualPad);
  if (set === undefined) return undefined;
  const framing: Framing | undefined = frame && { jamb: frame.jamb, header: frame.header };
  const wide = isWide(place);
  const fromMm = rect.u1 - rect.u0;
  const narrowed: RemedyChange = {
    ...{ kind: "narrow opening", openingId: opening.id, fromMm, toMm: fromMm - 2 * leftMm, from: "both sides" },
  };
  return {
    change: {
      ...{ kind: "posts", unitId: unit.id, postIds: set.postIds, under: "opening", section },
      padMm: set.pads === 0 ? null : usualPad.sideMm,
      header: framing?.header ?? null,
      ...(wide && { inPlace: true }),
    },
    operations: [
      ...set.operations,
      ...(framing || wide
        ? [{ kind: "opening.change", opening: less(dressed(opening, framing, wide), leftMm) } as const]
        : []),
    ],
    ...(leftMm > 0 && { also: [narrowed] }),
  };
}

const isWide = ({ opening, rect }: OpeningOnFace): boolean =>
  opening.use === "open-wall" || rect.u1 - rect.u0 >= WIDE_MM;

/** A wide opening cut before its posts stand has to bear the crane without them. */
const dressed = (opening: Opening, framing: Framing | undefined, wide: boolean): Opening => ({
  ...opening,
  ...(framing && { framed: true, framing }),
  ...(wide && opening.cut === undefined && { cut: "after shoring" }),
});

/** A wall that is out is out from post to post: with more wall left beside it, it is a passage. */
const less = (opening: Opening, leftMm: number): Opening =>
  leftMm === 0
    ? opening
    : {
        ...opening,
        use: opening.use === "open-wall" ? "passage" : opening.use,
        offsetUm: opening.offsetUm + toUm(leftMm),
        widthUm: opening.widthUm - toUm(2 * leftMm),
      };

/** Narrower than this an opening is not parted by a post, mm: common practice, no published source. */
const WIDE_MM = 2400;
/** From the edge of the opening to the middle of a post beside it, mm. */
const BESIDE_MM = 150;
/** Between two posts in the middle, mm: their pads touch. One that is high or low hardly turns the wall about the other. */
const PAIR_MM = usualPad.sideMm;
/** Wall left at either side so that the corner post beside it is bent less, mm. */
const LEFT_MM = [100, 150, 200] as const;
