import type { MemberName, Opening, Verdict } from "@cornerway/schema";
import type { HazardRefusal } from "../loads/hazard-refusal.ts";
import type { HoldNeeded } from "../strength/holds-needed.ts";

/** The walls a chart can stand on. */
export type ChartFace = "left" | "right" | "front";

/** How closely a chart is traced. */
export type ChartFineness = {
  /** Columns this far apart, mm. */
  readonly apartMm: number;
  /** Under how much of the envelope: the sets that decide where the opening was looked at under all, or all everywhere. */
  readonly envelope: "deciding sets" | "all sets";
};

/** An opening to be tried along one side of one container, whatever its place and width. */
export type ChartRequest = {
  readonly containerId: string;
  readonly face: ChartFace;
  readonly sillUm: number;
  readonly heightUm: number;
  readonly use: Opening["use"];
  /** Framed with the opening's own framing, or the stated set of its use. */
  readonly framed: boolean;
  readonly framing?: NonNullable<Opening["framing"]>;
  /** Framed only where it does not work with bare edges: where it does, it works as built. */
  readonly framedWhereNeeded?: true;
  /** The opening the chart is asked for: taken out of the wall, and told how far it is from each boundary. */
  readonly openingId?: string;
};

/** Why an answer of the chart is what it is. Lengths mm; `use` is of the strength, infinite where none can be stated. */
export type ChartReason =
  /** A protected member would be cut. */
  | { readonly kind: "member cut"; readonly member: MemberName }
  | { readonly kind: "meets opening"; readonly openingId: string }
  /** A part is worse than without the opening, and beyond what can be said of it. */
  | {
      readonly kind: "part";
      readonly because:
        "over" | "beyond its bound" | "assumption decides" | "refused" | "not covered" | "over once held";
      readonly partId: string;
      readonly use: number;
      readonly run: string;
      readonly assumptions: string;
      /** Under those of the assumptions looked at that suit it best, as it stands by what is drawn; absent where none does. */
      readonly least?: number;
    }
  | { readonly kind: "hold not drawn"; readonly hold: HoldNeeded }
  /** Runs that stand without the opening do not stand with it. */
  | { readonly kind: "no equilibrium"; readonly run: string }
  | { readonly kind: "left out of the model"; readonly what: string }
  /** Within its strength: the part nearest to it. */
  | { readonly kind: "within"; readonly partId: string; readonly use: number; readonly run: string };

/** What one place and width adds to the building as it is without the opening. */
export type ChartAnswer = {
  readonly verdict: Verdict;
  readonly why: ChartReason;
};

/** Widths of one column with the same answer, the narrowest and the widest judged, mm. */
export type ChartStretch = ChartAnswer & { readonly fromMm: number; readonly toMm: number };

/** One place of the opening's centre, mm from the face's origin (outer face of the fitting). */
export type ChartColumn = {
  readonly centreMm: number;
  /** Widest without leaving the outline of the face, mm. */
  readonly mostMm: number;
  /** Narrowest first, without gaps wider than the step of widths. */
  readonly stretches: readonly ChartStretch[];
};

/** A column in which a wider opening fares better than a narrower one, with the reasons of both. */
export type ChartException = {
  readonly centreMm: number;
  readonly narrower: ChartStretch;
  readonly wider: ChartStretch;
};

/** A strip of the face in which nothing may be cut, mm. */
export type KeepZone = {
  readonly member: MemberName;
  readonly u0: number;
  readonly u1: number;
  readonly v0: number;
  readonly v1: number;
};

/** What comes down on the top rail of the side, or stands under its bottom rail. */
export type SideBearing = {
  readonly at: "above" | "below";
  readonly uMm: number;
  /** Unit, post or pad. */
  readonly elementId: string;
  /** Greatest compression of all runs that stand, factored, N; 0 where none presses. */
  readonly forceN: number;
};

/** The side in its real place. */
export type ChartSide = {
  readonly lengthMm: number;
  readonly heightMm: number;
  /** The sheet between the protected members. */
  readonly sheet: { readonly u0: number; readonly u1: number; readonly v0: number; readonly v1: number };
  readonly keepZones: readonly KeepZone[];
  /** Openings of this side that stay as they are. */
  readonly others: readonly Opening[];
  readonly bearings: readonly SideBearing[];
};

/** How far the opening as it is drawn is from where its answer changes. */
export type ChartDistances = {
  readonly centreMm: number;
  readonly widthMm: number;
  readonly answer: ChartAnswer;
  /** By how much it may grow, or shrink, about its centre, or move either way, before the answer changes; absent where it never does. */
  readonly changes: readonly {
    readonly way: "wider" | "narrower" | "to the front end" | "to the door end";
    readonly byMm: number;
    readonly answer: ChartAnswer;
  }[];
};

/** What the chart takes for granted beside what strength does. */
export type ChartBasis = {
  readonly under: "gravity loads only" | "all loads";
  /** Load vectors that decide and are solved for every place and width, by set of assumptions. */
  readonly vectors: readonly { readonly assumptions: string; readonly runs: readonly string[] }[];
  readonly framing: readonly string[];
  readonly assumed: readonly string[];
};

export type OpeningChart = {
  readonly request: ChartRequest;
  readonly side: ChartSide;
  readonly basis: ChartBasis;
  /** The unit with no such opening: what stands against it already. */
  readonly without: { readonly verdict: Verdict; readonly reasons: number };
  readonly columns: readonly ChartColumn[];
  readonly exceptions: readonly ChartException[];
  readonly distances?: ChartDistances;
  /** How many places and widths were solved. */
  readonly solved: number;
  /** How many of them under every set of assumptions and every run that governs the unit and its bearings. */
  readonly confirmed: number;
};

/** A chart as it comes: first the side, then each step one column more, or one again where it was not confirmed. */
export type ChartStep =
  | { readonly kind: "side"; readonly side: ChartSide; readonly of: number }
  | { readonly kind: "column"; readonly column: ChartColumn; readonly done: number; readonly of: number };

export type ChartRefusal = { readonly accepted: false; readonly refusals: readonly HazardRefusal[] };

/** Step of widths and of places, mm: boundaries are told to it. */
export const STEP_MM = 50;
