import type { CompassPoint } from "./mark.ts";
import type { Operation } from "./operation.ts";
import type { ContainerType } from "./scheme.ts";
import type { JudgedPart, strengthScopes } from "./strength-fact.ts";
import type { Verdict } from "./verdict.ts";
import type { ChartWhy } from "./wording/chart-sentences.ts";

/** What one option does to a scheme, with the figures it is told by. Lengths mm, masses kg, forces kN. */
export type RemedyChange =
  | {
      readonly kind: "move opening";
      readonly openingId: string;
      readonly byMm: number;
      readonly towards: CompassPoint;
    }
  | {
      readonly kind: "narrow opening";
      readonly openingId: string;
      readonly fromMm: number;
      readonly toMm: number;
      /** Where the width goes. */
      readonly from: CompassPoint | "both sides";
    }
  /** No jambs and no header: bare edges, as wide as the sheet bears that. */
  | { readonly kind: "leave unframed"; readonly openingId: string; readonly widthMm: number }
  | { readonly kind: "lower opening"; readonly openingId: string; readonly byMm: number }
  /** Cut once the unit stands, under shores, and not in the yard. */
  | { readonly kind: "cut in place"; readonly openingId: string }
  /** Two openings half as wide each, apart by so much wall. */
  | {
      readonly kind: "split opening";
      readonly openingId: string;
      readonly eachMm: number;
      readonly pierMm: number;
    }
  /** Two openings with a piece of wall between them, which their width loses. */
  | { readonly kind: "leave a pier"; readonly openingId: string; readonly pierMm: number }
  | {
      readonly kind: "frame opening";
      readonly openingIds: readonly string[];
      readonly jamb: string;
      readonly header: string;
      readonly sill: string | null;
    }
  /** A header deeper than a quarter of the wall's height, or heavier than the posts that would do, is out of proportion. */
  | {
      readonly kind: "header";
      readonly openingId: string;
      readonly section: string;
      readonly depthMm: number;
      readonly massKg: number;
      readonly outOfProportion: boolean;
    }
  | {
      readonly kind: "posts";
      /** The unit they hold. */
      readonly unitId: string;
      readonly postIds: readonly string[];
      readonly under: "corners" | "rail" | "bearings" | "opening";
      readonly section: string;
      /** Side of each new pad; null where they stand on what is there. */
      readonly padMm: number | null;
      /** Over an opening, the header they carry. */
      readonly header: string | null;
      /** The opening is then cut under shores, once they stand. */
      readonly inPlace?: true;
    }
  | {
      readonly kind: "seats";
      readonly unitId: string;
      readonly places: number;
      readonly lengthMm: number;
      /** Thickness of a plate in the web of each rail that comes down on one; absent: none. */
      readonly stiffenerMm?: number;
      readonly heldDown: boolean;
    }
  | { readonly kind: "longer seats"; readonly seatIds: readonly string[]; readonly toMm: number }
  | { readonly kind: "stiffeners"; readonly seatIds: readonly string[]; readonly thicknessMm: number }
  | { readonly kind: "packing"; readonly seatId: string; readonly toMm: number }
  | {
      readonly kind: "made connections";
      readonly unitId: string;
      readonly places: number;
      readonly as: "lock" | "made connection" | "hold-down";
    }
  | {
      readonly kind: "shorter overhang";
      readonly unitId: string;
      readonly byMm: number;
      readonly towards: CompassPoint;
    }
  | {
      readonly kind: "land on fittings";
      readonly unitId: string;
      readonly byMm: number;
      /** Nearest point of the compass to the way it goes. */
      readonly towards: CompassPoint;
      readonly landings: number;
      /** The unit below that has to move as well, and the gap that leaves. */
      readonly gap: { readonly movesId: string; readonly neededMm: number } | null;
    }
  /** All round, so that the door end is a wall. */
  | { readonly kind: "weld doors"; readonly unitId: string }
  /** Sheet again where they are. */
  | { readonly kind: "close openings"; readonly openingIds: readonly string[] }
  | { readonly kind: "swap units"; readonly unitId: string; readonly withId: string }
  | { readonly kind: "ties"; readonly unitIds: readonly [string, string]; readonly places: number }
  | { readonly kind: "larger pads"; readonly padIds: readonly string[]; readonly sideMm: number }
  | { readonly kind: "heavier post"; readonly postIds: readonly string[]; readonly section: string }
  | { readonly kind: "other unit"; readonly unitId: string; readonly type: ContainerType };
export type RemedyKind = RemedyChange["kind"];

/** What becomes visible in the rooms or outside. */
export const remedySights = [
  "frame round the opening",
  "post outside",
  "post in the wall",
  "deep header",
  "pier",
  "seat under the unit",
  "pad in the ground",
] as const;
export type RemedySight = (typeof remedySights)[number];

/** Added steel by section; plates have no length. */
export type RemedySteel = { readonly section: string; readonly lengthM: number | null; readonly massKg: number };

/** What an option adds to the scheme it was found on. */
export type RemedyQuantities = {
  readonly steel: readonly RemedySteel[];
  readonly cutM: number;
  readonly weldM: number;
  readonly pads: number;
  /** Of pads larger than usual, m³. */
  readonly padConcreteM3: number;
  readonly connections: number;
  readonly craneLifts: number;
  readonly sights: readonly RemedySight[];
  /** Of clear opening; 0 where nothing is lost. */
  readonly lostWidthMm: number;
  readonly lostHeightMm: number;
};

/** Why a change was not offered. */
export type RemedyRefusal =
  /** The scheme would not take it. */
  | { readonly kind: "cannot be drawn" }
  | { readonly kind: "does not settle it" }
  /** Marks that are new or worse by the load path alone. */
  | { readonly kind: "worsens"; readonly markIds: readonly string[] }
  /** By a look at the vectors that govern: this part is so far beyond its strength; null where none can be stated. */
  | { readonly kind: "at a look"; readonly partId: string; readonly use: number | null }
  /** By strength, with the part that decides. */
  | { readonly kind: "strength"; readonly why: ChartWhy };

/** One way to settle a mark: what is drawn, what it then is, what it takes. Nothing else stands worse with it. */
export type Remedy = {
  /** The same for the same change on the same scheme. */
  readonly id: string;
  readonly change: RemedyChange;
  /** What else it needs, all in the same act: larger pads, posts beneath bearings, what holds down. */
  readonly also: readonly RemedyChange[];
  /** One act. */
  readonly operations: readonly Operation[];
  /** Of the mark and of all that the option adds, once drawn. */
  readonly verdict: Verdict;
  readonly under: (typeof strengthScopes)[number];
  /** What is nearest to its strength of what is new, worse or named by the mark; with its envelope. */
  readonly governing: readonly JudgedPart[];
  /** Why it is for the engineer; absent where it works. */
  readonly why?: ChartWhy;
  readonly quantities: RemedyQuantities;
  /** Above the scheme as it is; null where no price can be said. */
  readonly premium: { readonly currency: string; readonly money: number; readonly forShow: boolean } | null;
  /** Marks on what it concerns that were there before and still ask for something else. */
  readonly stillOpen: readonly string[];
  /** Of its own kind: the next less that fails, and why; or nothing less is offered. */
  readonly less: RemedyFailed | null;
};

/** A change that does not do, with what it would have had with it. */
export type RemedyFailed = {
  readonly change: RemedyChange;
  readonly also: readonly RemedyChange[];
  readonly why: RemedyRefusal;
};

export type RemedyList = {
  readonly markId: string;
  readonly under: (typeof strengthScopes)[number];
  /** Cheapest first. */
  readonly offered: readonly Remedy[];
  /** These end with the engineer and have no price. */
  readonly apart: readonly Remedy[];
  readonly failed: readonly RemedyFailed[];
  /** Changes looked at, and those of them run through strength whole. */
  readonly looked: number;
  readonly proved: number;
  /** Changes that were not run because the search is bounded. */
  readonly leftOut: number;
  /** Units that do not stand: the mark's own, or such as come down on what it is about. Nothing is looked for before they do. */
  readonly settleFirst?: readonly string[];
};

/** The search as it goes: what is being proved, then each option as it is found. */
export type RemedyStep =
  | { readonly kind: "proving"; readonly change: RemedyChange; readonly done: number; readonly of: number }
  | { readonly kind: "found"; readonly remedy: Remedy; readonly done: number; readonly of: number };
