import type { FittingName, PointMm } from "@cornerway/schema";
import type { Rail } from "../fabric/fabric-of.ts";
import type { FittingJoint } from "./joint.ts";

/** The part a load comes down on. */
export type Target =
  | { readonly on: "fitting"; readonly elementId: string; readonly fitting: FittingName }
  | { readonly on: "rail"; readonly elementId: string; readonly rail: Rail; readonly uMm: number }
  | { readonly on: "beam"; readonly elementId: string; readonly uMm: number }
  | { readonly on: "post" | "pad"; readonly elementId: string }
  | { readonly on: "ground" };

/** One place where a unit touches, or may be packed to touch, what is under it. */
export type Contact = {
  readonly unitId: string;
  /** The bottom fitting that bears; absent where the bottom rail does. */
  readonly fitting?: FittingName;
  /** Side of the unit, for rail contacts. */
  readonly side: "left" | "right";
  readonly at: PointMm;
  readonly localXMm: number;
  readonly localYMm: number;
  readonly target: Target;
  readonly offsetXMm: number;
  readonly offsetYMm: number;
  /** To pack, level errors drawn included; where a seat is drawn, what its packing leaves: too thick is negative. */
  readonly gapMm: number;
  readonly joint: FittingJoint;
  /** The seat drawn here. */
  readonly seatId?: string;
  /** The seat or lock that lets this bearing pull. */
  readonly heldById?: string;
};

/** A bottom fitting with nothing under it that can bear: sheet, or air down to `dropMm` below. */
export type OpenCorner = {
  readonly unitId: string;
  readonly fitting: FittingName;
  readonly at: PointMm;
  readonly over: "sheet" | "air";
  readonly elementId?: string;
  readonly dropMm: number;
  /** An opening has cut the top rail this fitting would have stood on. */
  readonly cutBy?: string;
};

/** All that one unit stands on, statics to be done over `contacts`. */
export type UnitBearing = {
  readonly unitId: string;
  readonly contacts: readonly Contact[];
  readonly openCorners: readonly OpenCorner[];
};

/** Names each contact of a unit by what bears and, for rails, on what: the same while both stay. */
export function contactNames(contacts: readonly Contact[]): string[] {
  const seen = new Map<string, number>();
  return contacts.map(({ unitId, fitting, side, target }) => {
    if (fitting !== undefined) return `${unitId}:${fitting}`;
    const name = `${unitId}:${side}-rail:${target.on === "ground" ? "ground" : target.elementId}`;
    const count = (seen.get(name) ?? 0) + 1;
    seen.set(name, count);
    return count === 1 ? name : `${name}:${count}`;
  });
}
