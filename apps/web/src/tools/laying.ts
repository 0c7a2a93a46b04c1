import { cosDegThousandths, sinDegThousandths } from "@cornerway/engine";

export interface PlaceUm {
  xUm: number;
  yUm: number;
}

/** How things are laid elsewhere: shifted, turned about a point or mirrored about a line of the site. */
export interface Laying {
  place: (at: PlaceUm) => PlaceUm;
  turn: (mdeg: number) => number;
  /** How much higher, µm. */
  riseUm: number;
  /** True where left and right change places. */
  mirrored: boolean;
}

const wholeTurnMdeg = 360_000;
const withinTurn = (mdeg: number) => ((mdeg % wholeTurnMdeg) + wholeTurnMdeg) % wholeTurnMdeg;

export const shiftedBy = (xUm: number, yUm: number, riseUm = 0): Laying => ({
  place: (at) => ({ xUm: at.xUm + xUm, yUm: at.yUm + yUm }),
  turn: (mdeg) => mdeg,
  riseUm,
  mirrored: false,
});

/** Turned anticlockwise about a point; quarter turns are exact. */
export function turnedAbout(centre: PlaceUm, byMdeg: number): Laying {
  const cos = cosDegThousandths(withinTurn(byMdeg));
  const sin = sinDegThousandths(withinTurn(byMdeg));
  return {
    place: ({ xUm, yUm }) => {
      const [x, y] = [xUm - centre.xUm, yUm - centre.yUm];
      return {
        xUm: Math.round(centre.xUm + x * cos - y * sin),
        yUm: Math.round(centre.yUm + x * sin + y * cos),
      };
    },
    turn: (mdeg) => withinTurn(mdeg + byMdeg),
    riseUm: 0,
    mirrored: false,
  };
}

export const mirrorLines = ["north–south", "east–west"] as const;
export type MirrorLine = (typeof mirrorLines)[number];

/**
 * Mirrored about a line of the site at `atUm` east (a north–south line) or north (an east–west line). A unit is no
 * mirror image of itself: its door end looks where the mirror has it, and what was cut on its left is cut on its right.
 */
export const mirroredAt = (line: MirrorLine, atUm: number): Laying => ({
  place: ({ xUm, yUm }) => (line === "north–south" ? { xUm: 2 * atUm - xUm, yUm } : { xUm, yUm: 2 * atUm - yUm }),
  turn: (mdeg) => withinTurn((line === "north–south" ? wholeTurnMdeg / 2 : wholeTurnMdeg) - mdeg),
  riseUm: 0,
  mirrored: true,
});
