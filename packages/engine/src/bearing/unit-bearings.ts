import { padsNear, unitsNear, type Unit } from "../geometry/building.ts";
import type { PlacedFitting } from "../geometry/place.ts";
import { holdsPoint } from "../geometry/plan-rect.ts";
import { touchMm } from "../geometry/tolerances.ts";
import { beneath, type Beneath } from "./beneath.ts";
import type { Contact, OpenCorner, UnitBearing } from "./contact.ts";
import { fittingContact, isReachable } from "./fitting-contact.ts";
import { railCutUnder } from "./rail-cut-under.ts";
import { railContacts } from "./rail-contacts.ts";
import type { Structure } from "./structure.ts";
import { fittingOutline } from "./top-parts.ts";

/**
 * All that each unit stands on, in the order of the scheme. A corner that finds something under its fitting bears there. Where it finds nothing, the
 * outermost crossing of its bottom side rail is taken to be packed as a seat, so that a unit off the corners still has
 * a bearing line at each end; crossings further in are taken to stay clear. Posts and pads set under a rail bear.
 */
export function unitBearings(structure: Structure, carrying: ReadonlySet<string>): UnitBearing[] {
  const { units } = structure.building;
  const below = units.map((unit) => beneath(structure, carrying, unit));
  const direct = units.map((unit, at) => fittingContacts(structure, below[at] ?? nothing, unit));
  const taken = new Set(direct.flat().flatMap(({ target }) => (target.on === "pad" ? [target.elementId] : [])));
  return units.map((unit, at) =>
    unitBearing(structure, { below: below[at] ?? nothing, taken }, unit, direct[at] ?? []),
  );
}

const nothing: Beneath = { units: [], posts: [], pads: [] };

/** What lies under the unit, and the pads already under a fitting: those do not bear a rail passing by as well. */
type Supports = { readonly below: Beneath; readonly taken: ReadonlySet<string> };

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
  { below, taken }: Supports,
  unit: Unit,
  side: "left" | "right",
  direct: readonly Contact[],
): Contact[] {
  const mine = direct.filter((contact) => contact.side === side);
  const corners = mine.filter(({ fitting }) => isCorner(fitting));
  const frontBorne = corners.some(({ localXMm }) => localXMm < 0);
  const doorBorne = corners.some(({ localXMm }) => localXMm > 0);
  const { placed, crossed: met } = railContacts(structure, below, unit, side);
  const crossed = met.filter((contact) => !mine.some((own) => isBeside(unit, own, contact)));
  const clear = placed.filter(
    (contact) => !alreadyUnder(mine, contact) && !(contact.target.on === "pad" && taken.has(contact.target.elementId)),
  );
  if (frontBorne && doorBorne) return clear;
  const all = [...mine, ...clear, ...crossed].toSorted((a, b) => a.localXMm - b.localXMm || a.gapMm - b.gapMm);
  const seats = [frontBorne ? undefined : all[0], doorBorne ? undefined : all.at(-1)];
  const fresh = crossed.filter((contact) => seats.includes(contact));
  return [...clear, ...fresh];
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
