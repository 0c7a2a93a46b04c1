import type { MarkKind } from "@cornerway/schema";
import type { Generator, Ladder, RemedyGround } from "./trial.ts";
import { cutInPlace } from "./ways/cut-in-place.ts";
import { frameOpening, headerAlone } from "./ways/frame-opening.ts";
import { heavierFrames } from "./ways/heavier-frames.ts";
import { holdDown } from "./ways/hold-down.ts";
import { landOnFittings } from "./ways/land-on-fittings.ts";
import { largerPads } from "./ways/larger-pads.ts";
import { leavePier } from "./ways/leave-pier.ts";
import { longerSeats } from "./ways/longer-seats.ts";
import { lowerOpening } from "./ways/lower-opening.ts";
import { moveOpening } from "./ways/move-opening.ts";
import { narrowOpening } from "./ways/narrow-opening.ts";
import { otherUnit } from "./ways/other-unit.ts";
import { packing } from "./ways/packing.ts";
import { postsAtOpening } from "./ways/posts-at-opening.ts";
import { postsUnderBearings } from "./ways/posts-under-bearings.ts";
import { postsUnderCorners, postsUnderUnitAbove } from "./ways/posts-under-corners.ts";
import { pressedRails } from "./ways/pressed-rails.ts";
import { seats } from "./ways/seats.ts";
import { shorterOverhang } from "./ways/shorter-overhang.ts";
import { splitOpening } from "./ways/split-opening.ts";
import { stiffeners } from "./ways/stiffeners.ts";
import { swapUnits } from "./ways/swap-units.ts";
import { ties } from "./ways/ties.ts";
import { unframedOpening } from "./ways/unframed-opening.ts";
import { closedOpenings, framedWall, weldedDoors } from "./ways/wall-that-counts.ts";
import { openingUnderLoad, whatComesDown } from "./ways/what-comes-down.ts";

/** Every change that may settle the mark, by kind. */
export const laddersOf = (ground: RemedyGround): readonly Ladder[] =>
  (ways[ground.mark.fact.kind] ?? []).flatMap((way) => way(ground));

/** Whether anything is known that may settle marks of this kind. */
export const hasRemedies = (kind: MarkKind): boolean => ways[kind] !== undefined;

const wallWays: readonly Generator[] = [
  cutInPlace,
  unframedOpening,
  moveOpening,
  narrowOpening,
  lowerOpening,
  splitOpening,
  leavePier,
  frameOpening,
  headerAlone,
  postsAtOpening,
];
const bearingWays: readonly Generator[] = [
  landOnFittings,
  swapUnits,
  seats,
  longerSeats,
  stiffeners,
  postsUnderBearings,
];
const tippingWays: readonly Generator[] = [
  holdDown,
  postsUnderCorners,
  shorterOverhang,
  landOnFittings,
  swapUnits,
  otherUnit,
];

const strengthWays: readonly Generator[] = [largerPads, heavierFrames, pressedRails, openingUnderLoad, whatComesDown];

/** What may be done, by kind of mark. */
const ways: Partial<Record<MarkKind, readonly Generator[]>> = {
  // a frame or a lower head leaves the sheet cut right where the load comes down
  "load-over-opening": [
    postsUnderUnitAbove,
    moveOpening,
    narrowOpening,
    splitOpening,
    leavePier,
    postsUnderBearings,
    postsAtOpening,
    headerAlone,
  ],
  "opening-in-sheet": wallWays,
  "wall-out": wallWays,
  "member-cut": [moveOpening, lowerOpening, narrowOpening],
  "tips-over": tippingWays,
  "near-tipping": tippingWays,
  overhang: [...new Set([...tippingWays, ...bearingWays])],
  mechanism: [postsUnderCorners, holdDown, landOnFittings, swapUnits],
  "corner-on-air": [postsUnderCorners, landOnFittings, swapUnits],
  "borne-on-rail": bearingWays,
  "made-connection": [holdDown, landOnFittings],
  rocks: [packing, seats, landOnFittings],
  "stands-clear": [packing, seats],
  "seat-packing": [packing],
  uplift: [holdDown, ties],
  slides: [holdDown, ties],
  "no-lateral-wall": [weldedDoors, framedWall, closedOpenings],
  overstressed: strengthWays,
  "strength-open": strengthWays,
};
