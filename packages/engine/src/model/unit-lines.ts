import type { ModelSection } from "./analytical-model.ts";
import type { MeasuredSteel } from "./measured-steel.ts";

export type WallName = "left" | "right" | "front";
export type SideName = "left" | "right";
export type EndName = "front" | "door";

/** Stiffness of a corrugated sheet: shear N/mm, upright and along the wall N/mm per mm. */
export interface SheetStiffness {
  readonly shear: number;
  readonly upright: number;
  readonly along: number;
}

/**
 * One container as lines, in its own axes, mm: origin at the centre of the base on the underside of the fittings, x from the
 * front (blind) end to the door end, y to the left, z up. Posts run through the centres of the fitting holes.
 */
export interface UnitLines {
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly bottomRailMm: number;
  readonly topRailMm: number;
  readonly sections: {
    readonly post: ModelSection;
    readonly topRail: ModelSection;
    readonly bottomRail: ModelSection;
    /** Between a seat and the nearest cross member, which holds it against twisting. */
    readonly bottomRailAtSeat: ModelSection;
    readonly crossMember: ModelSection;
    /** Over the doors; a top rail where it is not given. */
    readonly doorHeader?: ModelSection;
    /** Added posts of unknown section. */
    readonly frame: ModelSection;
    /** Folds of the sheet above and below a window's jambs: they hold its frame in the plane of the wall by bending upright, and carry nothing else. */
    readonly fold: ModelSection;
  };
  /** Thicknesses that were measured of its members; absent where none was. */
  readonly measured?: MeasuredSteel;
  /** Spaces between cross members. */
  readonly floorBays: number;
  readonly sideSheet: SheetStiffness;
  readonly frontSheet: SheetStiffness;
  /** Doors welded shut; null where they open, are cut or only closed: they carry nothing then. */
  readonly doors: SheetStiffness | null;
  readonly floorShear: number;
  readonly roofShear: number;
  /** Roof sheet across, N/mm per mm of length. */
  readonly roofAcross: number;
  readonly openings: readonly UnitOpening[];
  readonly posts: readonly UnitPost[];
  readonly seats: readonly UnitSeat[];
  /** Where ties are made to its members away from the fittings; absent where none is. */
  readonly ties?: readonly TiedPlace[];
}

/** A bar of the frame of an opening; equal names are equal sections. */
export interface FrameBar {
  readonly name: string;
  readonly section: ModelSection;
}

/**
 * A cut in a wall; u from the first post axis (front, or right on the front wall), v up from the underside, mm. One that is not
 * framed is as wide as it acts (bare-edges.ts).
 */
export interface UnitOpening {
  readonly wall: WallName;
  readonly u0: number;
  readonly u1: number;
  readonly v0: number;
  readonly v1: number;
  readonly framed: boolean;
  /** Steel round it where it is framed; no sill where it reaches the bottom rail. */
  readonly frame: { readonly jamb: FrameBar; readonly header: FrameBar; readonly sill: FrameBar | null };
  /** From rail to rail. */
  readonly fullHeight: boolean;
  readonly cutsBottomRail: boolean;
  readonly cutsTopRail: boolean;
}

/** An added post in a side wall, from bottom to top rail; `footed` when its foot goes on down to the bearing plane. */
export interface UnitPost {
  readonly side: SideName;
  readonly u: number;
  readonly section: ModelSection;
  readonly footed: boolean;
}

/** A made bearing on a rail away from the corners, carried by a stub to the bearing plane; end rails have top seats only. */
export interface UnitSeat {
  readonly side: SideName | EndName;
  readonly rail: "top" | "bottom";
  /** From the front post axis on side rails, from the right post axis on end rails. */
  readonly u: number;
}

/** Where a tie is made to a member: on a rail, u as for seats, or on a corner post so far up from the underside, mm. */
export type TiedPlace = TiedRail | { readonly end: EndName; readonly side: SideName; readonly zMm: number };

export interface TiedRail {
  readonly side: SideName | EndName;
  readonly rail: "top" | "bottom";
  readonly u: number;
  /** It carries upright force too: the sheet is in layers there, as at a seat. */
  readonly upright: boolean;
}
