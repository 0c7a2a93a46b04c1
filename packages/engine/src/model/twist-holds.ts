import type { SideName, UnitLines } from "./unit-lines.ts";

/**
 * A bottom rail beside a seat or the foot of a post: what holds there across holds at its lower face and twists it. The cross
 * members on either side, welded to its web, keep it from turning and share the couple as end moments, by the lever; so do
 * corners. u from the front post axis, mm; members count cross members from the front, 0 and `floorBays` being the corners. The
 * far one is the next on the other side of the seat, or the same where the seat stands right under it.
 */
export type TwistHold = {
  readonly side: SideName;
  readonly seatU: number;
  readonly holdU: number;
  readonly farU: number;
  readonly member: number;
  readonly farMember: number;
};

/** Of every stub that comes down from a bottom side rail. */
export function twistHolds({ seats, posts, lengthMm, floorBays }: UnitLines): TwistHold[] {
  const feet = posts.filter(({ footed }) => footed);
  return [...seats.filter(({ rail }) => rail === "bottom"), ...feet].flatMap(({ side, u }): TwistHold[] => {
    if (side !== "left" && side !== "right") return [];
    const member = Math.min(Math.max(Math.round((u * floorBays) / lengthMm), 0), floorBays);
    const holdU = (lengthMm * member) / floorBays;
    const other = member + (u > holdU ? 1 : u < holdU ? -1 : 0);
    return [{ side, seatU: u, holdU, farU: (lengthMm * other) / floorBays, member, farMember: other }];
  });
}

/** Whether a cross member keeps its end moment on this side. */
export const holdsTwist = (holds: readonly TwistHold[], side: SideName, member: number): boolean =>
  holds.some((hold) => hold.side === side && (hold.member === member || hold.farMember === member));

/** Whether a place of a bottom rail lies between the cross members on either side of a seat. */
export const inSpaceOf = (hold: TwistHold, side: SideName, u: number): boolean =>
  hold.side === side && isBetween(u, hold.holdU, hold.farU);

const isBetween = (u: number, a: number, b: number): boolean => Math.min(a, b) < u && u < Math.max(a, b);
