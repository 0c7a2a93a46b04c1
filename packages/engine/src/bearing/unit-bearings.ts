import { padsNear, unitsNear, type Unit } from "../geometry/building.ts";
import type { PlacedFitting } from "../geometry/place.ts";
import { holdsPoint } from "../geometry/plan-rect.ts";
import { touchMm } from "../geometry/tolerances.ts";
import { beneath, type Beneath } from "./beneath.ts";
import type { Contact, OpenCorner, UnitBearing } from "./contact.ts";
import { fittingContact, isReachable } from "./fitting-contact.ts";
import { railCutUnder } from "./rail-cut-under.ts";
import { railContacts } from "./rail-contacts.ts";
import { sameElement, seatContacts, seated } from "./seat-contacts.ts";
import type { SeatPlace } from "./seat-place.ts";
import type { Structure } from "./structure.ts";
import { fittingOutline } from "./top-parts.ts";

/**
 * All that each unit stands on, in the order of the scheme. A corner that finds something under its fitting bears there. Where it finds nothing, the
 * outermost crossing of its bottom side rail is taken to be packed as a seat, so that a unit off the corners still has
 * a bearing line at each end; crossings further in are taken to stay clear. Where seats are drawn towards that end they
 * bear instead. Posts, beams and pads set under a rail bear.
 */
export function unitBearings(
  structure: Structure,
  carrying: ReadonlySet<string>,
  seatsOf: (unitId: string) => readonly SeatPlace[],
): UnitBearing[] {
  const { units } = structure.building;
  const below = units.map((unit) => beneath(structure, carrying, unit));
  const seats = units.map((unit) => seatContacts(unit, seatsOf(unit.id), carrying));
  const direct = units.map((unit, at) =>
    seated(fittingContacts(structure, below[at] ?? nothing, unit), seats[at] ?? []),
  );
  const taken = new Set(direct.flat().flatMap(({ target }) => (target.on === "pad" ? [target.elementId] : [])));
  return units.map((unit, at) => {
    const supports = { below: below[at] ?? nothing, taken, seats: seats[at] ?? [] };
    return unitBearing(structure, supports, unit, direct[at] ?? []);
  });
}

const nothing: Beneath = { units: [], posts: [], pads: [], beams: [] };

/**
 * What lies under the unit, the pads already under a fitting (those do not bear a rail passing by as well), and the
 * seats drawn for it.
 */
type Supports = { readonly below: Beneath; readonly taken: ReadonlySet<string>; readonly seats: readonly Contact[] };

const fittingContacts = (structure: Structure, below: Beneath, unit: Unit): Contact[] =>
  unit.bottomFittings
    .flatMap((fitting) => fittingContact(structure, below, unit, fitting) ?? [])
    .filter((contact) => isCorner(contact.fitting) || contact.target.on !== "ground");

function unitBearing(structure: Structure, supports: Supports, unit: Unit, own: readonly Contact[]): UnitBearing {
  const borne = new Set(own.map(({ fitting }) => fitting));
  const sides = (["left", "right"] as const).map((side) => sideContacts(structure, supports, unit, side, own));
  return {
    unitId: unit.id,
    contacts: [...own, ...sides.flat()],
    openCorners: unit.bottomFittings
      .filter(({ name }) => isCorner(name) && !borne.has(name))
      .map((fitting) => openCorner(structure, unit, fitting)),
  };
}

const isCorner = (name: string | undefined): boolean => name !== undefined && !name.endsWith("-inner");

function sideContacts(
  structure: Structure,
  { below, taken, seats: drawn }: Supports,
  unit: Unit,
  side: "left" | "right",
  direct: readonly Contact[],
): Contact[] {
  const onSeats = drawn.filter((seat) => seat.side === side && seat.fitting === undefined);
  const isSeated = (contact: Contact) =>
    onSeats.some((seat) => sameElement(seat.target, contact.target) && isBeside(unit, seat, contact));
  const mine = direct.filter((contact) => contact.side === side);
  const corners = mine.filter(({ fitting }) => isCorner(fitting));
  const frontBorne = corners.some(({ localXMm }) => localXMm < 0);
  const doorBorne = corners.some(({ localXMm }) => localXMm > 0);
  const { placed, crossed: met } = railContacts(structure, below, unit, side);
  const crossed = met.filter((contact) => !isSeated(contact) && !mine.some((own) => isBeside(unit, own, contact)));
  const clear = placed.filter(
    (contact) =>
      !isSeated(contact) &&
      !alreadyUnder(mine, contact) &&
      !(contact.target.on === "pad" && taken.has(contact.target.elementId)),
  );
  if (frontBorne && doorBorne) return [...clear, ...onSeats];
  const all = [...mine, ...clear, ...onSeats, ...crossed].toSorted(
    (a, b) => a.localXMm - b.localXMm || a.gapMm - b.gapMm,
  );
  const frontSeated = onSeats.some(({ localXMm }) => localXMm < 0);
  const doorSeated = onSeats.some(({ localXMm }) => localXMm > 0);
  const seats = [frontBorne || frontSeated ? undefined : all[0], doorBorne || doorSeated ? undefined : all.at(-1)];
  const fresh = crossed.filter((contact) => seats.includes(contact));
  return [...clear, ...onSeats, ...fresh];
}

/** A rail does not bear a second time where a fitting of its own already does, as at the inner fittings of a 45 ft unit. */
const isBeside = ({ dimensions }: Unit, own: Contact, contact: Contact): boolean =>
  Math.abs(own.localXMm - contact.localXMm) <= dimensions.fitting.lengthMm;

/** A pad or post that already bears a fitting of this unit does not bear its rail as well. */
const alreadyUnder = (direct: readonly Contact[], { target }: Contact): boolean =>
  direct.some(
    (one) => one.target.on !== "ground" && target.on !== "ground" && one.target.elementId === target.elementId,
  );

function openCorner(structure: Structure, unit: Unit, fitting: PlacedFitting): OpenCorner {
  const { building } = structure;
  const { xMm, yMm } = fitting.at;
  const outline = fittingOutline(unit, fitting.localXMm, fitting.localYMm);
  const below = unitsNear(building, outline).filter(
    (other) =>
      other.id !== unit.id && other.topZMm <= unit.baseZMm + touchMm && holdsPoint(other.outline, xMm, yMm, touchMm),
  );
  const tops = [
    building.groundZMm,
    ...below.map((other) => structure.topParts(other.id).railTopZMm),
    ...padsNear(building, outline)
      .filter((pad) => pad.topZMm <= unit.baseZMm + touchMm && holdsPoint(pad.outline, xMm, yMm))
      .map((pad) => pad.topZMm),
  ];
  const sheet = below.find((other) => isReachable(unit.baseZMm - structure.topParts(other.id).railTopZMm));
  const cutBy = sheet === undefined ? undefined : railCutUnder(structure, sheet, fitting.at, outline);
  return {
    unitId: unit.id,
    fitting: fitting.name,
    at: fitting.at,
    over: sheet === undefined ? "air" : "sheet",
    ...(sheet === undefined ? {} : { elementId: sheet.id }),
    ...(cutBy === undefined ? {} : { cutBy }),
    dropMm: Math.max(0, unit.baseZMm - Math.max(...tops)),
  };
}
