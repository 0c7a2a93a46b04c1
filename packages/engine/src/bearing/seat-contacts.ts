import type { Unit } from "../geometry/building.ts";
import { toSite } from "../geometry/place.ts";
import { mostPackingMm } from "../geometry/tolerances.ts";
import type { Contact } from "./contact.ts";
import { seatLeftMm, type SeatPlace } from "./seat-place.ts";

/** The seats of one unit that bear, as contacts. A seat left clear by more than packing takes up bears nothing. */
export const seatContacts = (unit: Unit, places: readonly SeatPlace[], carrying: ReadonlySet<string>): Contact[] =>
  places.flatMap((place) => {
    const { seat, lower, upper } = place;
    const left = seatLeftMm(place);
    if (lower === undefined || upper === undefined || left === undefined || left.leftMm > mostPackingMm) return [];
    if (lower.target.on === "beam" && !carrying.has(lower.target.elementId)) return [];
    const { localXMm, localYMm, fitting, side } = upper;
    const zMm = upper.undersideZMm - unit.baseZMm;
    const at = toSite(unit.frame, { xMm: localXMm, yMm: localYMm, zMm });
    return [
      {
        unitId: unit.id,
        ...(fitting === undefined ? {} : { fitting }),
        side,
        at,
        localXMm,
        localYMm,
        target: lower.target,
        offsetXMm: fitting === undefined ? 0 : at.xMm - place.xMm,
        offsetYMm: fitting === undefined ? 0 : at.yMm - place.yMm,
        gapMm: left.leftMm,
        joint: { joint: "seat" },
        seatId: seat.id,
        ...(seat.heldDown ? { heldById: seat.id } : {}),
      } satisfies Contact,
    ];
  });

/**
 * Fittings with the seats drawn under them: a seat under a fitting that bears on the same thing packs it, one under a
 * fitting that found nothing lets it bear. Where the fitting bears on something else already the seat stays idle.
 */
export function seated(direct: readonly Contact[], seats: readonly Contact[]): Contact[] {
  const under = seats.filter(({ fitting }) => fitting !== undefined);
  if (under.length === 0) return [...direct];
  const packed = direct.map((contact) => {
    const seat = under.find(
      ({ fitting, target }) => fitting === contact.fitting && sameElement(target, contact.target),
    );
    return seat === undefined ? contact : { ...contact, ...packing(seat) };
  });
  const fresh = under.filter(
    (seat, at) =>
      !direct.some(({ fitting }) => fitting === seat.fitting) &&
      under.findIndex(({ fitting }) => fitting === seat.fitting) === at,
  );
  return [...packed, ...fresh];
}

const packing = ({ gapMm, joint, seatId, heldById }: Contact) => ({
  gapMm,
  joint,
  ...(seatId === undefined ? {} : { seatId }),
  ...(heldById === undefined ? {} : { heldById }),
});

export const sameElement = (one: Contact["target"], other: Contact["target"]): boolean =>
  one.on !== "ground" && other.on !== "ground" && one.elementId === other.elementId;
