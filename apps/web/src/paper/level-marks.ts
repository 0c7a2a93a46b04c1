import { levelsOf } from "@cornerway/engine";
import type { Scheme } from "@cornerway/schema";
import { yToPx } from "../drawing/paper-to-px.ts";
import type { LevelMark } from "../sheet/contract.ts";
import type { LaidViews } from "./lay-views.ts";

/** The levels of the building at the true height of the elevation beside them, roof on top; those out of sight are left out. */
export const levelMarks = (scheme: Scheme, { elevation }: LaidViews): LevelMark[] =>
  levelsOf(scheme)
    .map((level) => ({ ...level, yPx: yToPx(elevation.transform, level.zMm) }))
    .filter(({ yPx }) => yPx >= elevation.rect.topPx && yPx <= elevation.rect.topPx + elevation.rect.heightPx);
