import type { Bearing } from "@cornerway/schema";
import { contactNames, type Contact, type OpenCorner } from "../bearing/contact.ts";
import { rounded } from "../units.ts";
import type { Analysis } from "./analysis.ts";

/** Every bearing as it is reported: fittings that bear, rails that bear, and corners with nothing under them. */
export function assessedBearings({ run, bearings }: Analysis): Bearing[] {
  const borne = run.units.flatMap(({ contacts, forcesKn }) => {
    const names = contactNames(contacts);
    return contacts.map((contact, at) => borneAt(contact, names[at] ?? "", forcesKn[at] ?? 0));
  });
  const open = bearings.flatMap(({ openCorners }) => openCorners.map(openAt));
  return [...borne, ...open].toSorted((a, b) => (a.id < b.id ? -1 : 1));
}

const borneAt = (contact: Contact, id: string, forceKn: number): Bearing => ({
  id,
  unitId: contact.unitId,
  ...(contact.fitting === undefined ? {} : { fitting: contact.fitting }),
  at: roundedPoint(contact.at),
  on: contact.target.on,
  ...(contact.target.on === "ground" ? {} : { onElementId: contact.target.elementId }),
  offsetXMm: rounded(contact.offsetXMm),
  offsetYMm: rounded(contact.offsetYMm),
  gapMm: rounded(contact.gapMm),
  joint: contact.joint.joint,
  ...(contact.seatId === undefined ? {} : { seatId: contact.seatId }),
  ...(contact.heldById === undefined ? {} : { heldById: contact.heldById }),
  forceKn: rounded(forceKn),
});

const openAt = ({ unitId, fitting, at, over, elementId, dropMm }: OpenCorner): Bearing => ({
  id: `${unitId}:${fitting}`,
  unitId,
  fitting,
  at: roundedPoint(at),
  on: over,
  ...(elementId === undefined ? {} : { onElementId: elementId }),
  offsetXMm: 0,
  offsetYMm: 0,
  gapMm: rounded(dropMm),
  joint: "none",
  forceKn: 0,
});

const roundedPoint = ({ xMm, yMm, zMm }: Contact["at"]): Contact["at"] => ({
  xMm: rounded(xMm),
  yMm: rounded(yMm),
  zMm: rounded(zMm),
});
