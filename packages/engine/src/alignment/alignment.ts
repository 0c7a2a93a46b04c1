import type { FittingName } from "@cornerway/schema";
import type { Rail } from "../fabric/fabric-of.ts";

/**
 * What a place gives where a bottom fitting lands on a top fitting. `lock`: a stock lock enters. `bearing without lock`:
 * it bears as the stacking test proves, and needs a made connection to hold it. `made connection`: it bears off the
 * corner, and the made connection has to carry that as well.
 */
export const alignmentKinds = ["lock", "bearing without lock", "made connection"] as const;
export type AlignmentKind = (typeof alignmentKinds)[number];

/** A bottom fitting that lands on a top fitting, with how far it is off along and across the lower unit, mm. */
export type Landing = {
  readonly fitting: FittingName;
  readonly onId: string;
  readonly onFitting: FittingName;
  readonly alongMm: number;
  readonly acrossMm: number;
  readonly kind: AlignmentKind;
};

export type OnRail = { readonly fitting: FittingName; readonly onId: string; readonly rail: Rail };

/** A unit below that has to move, and the clear gap that leaves between two parallel units, mm. */
export type GapChange = {
  readonly betweenIds: readonly [string, string];
  readonly nowMm: number;
  readonly neededMm: number;
  readonly move: { readonly id: string; readonly dxMm: number; readonly dyMm: number };
};

/** A place for the selected unit: how far it moves in the site frame, and where its corners then come down. */
export type Alignment = {
  readonly dxMm: number;
  readonly dyMm: number;
  readonly landings: readonly Landing[];
  readonly onRails: readonly OnRail[];
  /** The least that any of its landings gives. */
  readonly kind: AlignmentKind;
  /** Absent where nothing below has to move. */
  readonly gap?: GapChange;
};
