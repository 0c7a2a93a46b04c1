import { jointTolerances } from "../catalog/joint-tolerances.ts";
import type { Unit } from "../geometry/building.ts";
import type { PlacedFitting } from "../geometry/place.ts";
import { alongBeam, beamTopMm, onBeam } from "../geometry/placed-beam.ts";
import { holdsPoint, overlapDepthMm, type PlanRect } from "../geometry/plan-rect.ts";
import { leastLapMm, mostPackingMm, touchMm } from "../geometry/tolerances.ts";
import type { Beneath } from "./beneath.ts";
import type { Contact } from "./contact.ts";
import { fittingJoint } from "./joint.ts";
import { alongRailMm } from "./post-footing.ts";
import type { Structure } from "./structure.ts";
import { fittingOutline } from "./top-parts.ts";

/**
 * What this bottom fitting bears on: of the fittings, rails, posts, beams and pads under it within the packing of a seat, the
 * one with the least gap as drawn (at equal gaps in that order: fitting, post, beam, pad, rail); failing these the ground itself.
 */
export function fittingContact(
  structure: Structure,
  below: Beneath,
  unit: Unit,
  fitting: PlacedFitting,
): Contact | undefined {
  const outline = fittingOutline(unit, fitting.localXMm, fitting.localYMm);
  const found = [
    ...onUnits(structure, below.units, unit, fitting, outline),
    ...onPosts(below.posts, unit, fitting, outline),
    ...onPads(below.pads, unit, fitting),
    ...onBeams(below.beams, unit, fitting, outline),
  ];
  const least = found.toSorted(bySmallestGap)[0];
  return least === undefined ? onGround(structure, below, unit, fitting) : asBuilt(structure, least);
}

/** With the level error drawn of what is under it: built high it closes the gap, or stands proud of it (negative). */
export function asBuilt({ building }: Structure, contact: Contact): Contact {
  const { target } = contact;
  const errorMm =
    target.on === "pad"
      ? building.padById.get(target.elementId)?.levelErrorMm
      : target.on === "post"
        ? building.postById.get(target.elementId)?.levelErrorMm
        : undefined;
  if (errorMm === undefined || errorMm === 0) return contact;
  const gapMm = contact.gapMm - errorMm;
  return { ...contact, gapMm, joint: plainJoint(gapMm) };
}

const order = ["fitting", "post", "beam", "pad", "rail", "ground"];
const rank = ({ target }: Contact) => order.indexOf(target.on);
const idOf = ({ target }: Contact) => (target.on === "ground" ? "" : target.elementId);

function bySmallestGap(a: Contact, b: Contact): number {
  const gaps = Math.round(a.gapMm * 1000) - Math.round(b.gapMm * 1000);
  if (gaps !== 0) return gaps;
  if (rank(a) !== rank(b)) return rank(a) - rank(b);
  const offsets = Math.round(offsetMm(a) * 1000) - Math.round(offsetMm(b) * 1000);
  if (offsets !== 0) return offsets;
  return idOf(a) < idOf(b) ? -1 : 1;
}

const offsetMm = ({ offsetXMm, offsetYMm }: Contact) => Math.abs(offsetXMm) + Math.abs(offsetYMm);

type Found = Pick<Contact, "target" | "gapMm" | "joint"> & { xMm: number; yMm: number };

const contact = (unit: Unit, fitting: PlacedFitting, found: Found): Contact => ({
  unitId: unit.id,
  fitting: fitting.name,
  side: fitting.localYMm > 0 ? "left" : "right",
  at: fitting.at,
  localXMm: fitting.localXMm,
  localYMm: fitting.localYMm,
  target: found.target,
  offsetXMm: fitting.at.xMm - found.xMm,
  offsetYMm: fitting.at.yMm - found.yMm,
  gapMm: found.gapMm,
  joint: found.joint,
});

export const isReachable = (gapMm: number): boolean => gapMm >= -touchMm && gapMm <= mostPackingMm;
export const plainJoint = (gapMm: number) =>
  ({ joint: gapMm <= jointTolerances.contactGap.value ? "bearing" : "seat" }) as const;

/** No stock lock reaches over a gap to be packed. */
const seat = { joint: "seat" } as const;

function onUnits(
  structure: Structure,
  units: Beneath["units"],
  unit: Unit,
  fitting: PlacedFitting,
  outline: PlanRect,
): Contact[] {
  const found: Contact[] = [];
  for (const below of units) {
    if (overlapDepthMm(outline, below.outline) < leastLapMm) continue;
    const parts = structure.topParts(below.id);
    const gapMm = unit.baseZMm - parts.fittingTopZMm;
    const railGapMm = unit.baseZMm - parts.railTopZMm;
    if (isReachable(gapMm))
      for (const top of parts.fittings) {
        if (overlapDepthMm(outline, top.outline) < leastLapMm) continue;
        const met = fittingJoint(unit, below, fitting.at.xMm - top.xMm, fitting.at.yMm - top.yMm);
        const joint = met.joint === "lock" && gapMm > jointTolerances.contactGap.value ? seat : met;
        const target = { on: "fitting", elementId: below.id, fitting: top.name } as const;
        found.push(contact(unit, fitting, { target, gapMm, joint, xMm: top.xMm, yMm: top.yMm }));
      }
    if (isReachable(railGapMm))
      for (const piece of parts.rails) {
        if (overlapDepthMm(outline, piece.outline) < leastLapMm) continue;
        const uMm = alongRailMm(below, piece.rail, fitting.at);
        const target = { on: "rail", elementId: below.id, rail: piece.rail, uMm } as const;
        const axis = nearestOnAxis(piece.outline, fitting.at.xMm, fitting.at.yMm);
        found.push(contact(unit, fitting, { target, gapMm: railGapMm, joint: { joint: "seat" }, ...axis }));
      }
  }
  return found;
}

/** The nearest point of a strip's long axis. */
function nearestOnAxis({ cxMm, cyMm, ux, uy, halfUMm, halfVMm }: PlanRect, xMm: number, yMm: number) {
  const [ax, ay] = halfUMm >= halfVMm ? [ux, uy] : [-uy, ux];
  const half = Math.max(halfUMm, halfVMm);
  const along = Math.max(-half, Math.min(half, (xMm - cxMm) * ax + (yMm - cyMm) * ay));
  return { xMm: cxMm + along * ax, yMm: cyMm + along * ay };
}

function onPosts(posts: Beneath["posts"], unit: Unit, fitting: PlacedFitting, outline: PlanRect): Contact[] {
  return posts
    .filter((post) => isReachable(unit.baseZMm - post.headZMm) && overlapDepthMm(outline, post.outline) >= leastLapMm)
    .map((post) => {
      const gapMm = unit.baseZMm - post.headZMm;
      const target = { on: "post", elementId: post.id } as const;
      return contact(unit, fitting, { target, gapMm, joint: plainJoint(gapMm), xMm: post.xMm, yMm: post.yMm });
    });
}

function onBeams(beams: Beneath["beams"], unit: Unit, fitting: PlacedFitting, outline: PlanRect): Contact[] {
  return beams.flatMap((beam) => {
    const { uMm } = alongBeam(beam, fitting.at);
    const gapMm = unit.baseZMm - beamTopMm(beam, uMm);
    if (!isReachable(gapMm) || overlapDepthMm(outline, beam.outline) < leastLapMm) return [];
    const target = { on: "beam", elementId: beam.id, uMm } as const;
    const { xMm, yMm } = onBeam(beam, uMm);
    return [contact(unit, fitting, { target, gapMm, joint: plainJoint(gapMm), xMm, yMm })];
  });
}

function onPads(pads: Beneath["pads"], unit: Unit, fitting: PlacedFitting): Contact[] {
  return pads
    .filter((pad) => isReachable(unit.baseZMm - pad.topZMm) && holdsPoint(pad.outline, fitting.at.xMm, fitting.at.yMm))
    .map((pad) => {
      const gapMm = unit.baseZMm - pad.topZMm;
      const target = { on: "pad", elementId: pad.id } as const;
      return contact(unit, fitting, { target, gapMm, joint: plainJoint(gapMm), xMm: pad.xMm, yMm: pad.yMm });
    });
}

/** The ground at its level; below it the bottom of the pit a unit is drawn in, unless it stands on another unit there. */
function onGround({ building }: Structure, below: Beneath, unit: Unit, fitting: PlacedFitting): Contact | undefined {
  const aboveMm = unit.baseZMm - building.groundZMm;
  const inPit = aboveMm < -jointTolerances.contactGap.value;
  if (inPit ? below.units.length > 0 : aboveMm > jointTolerances.contactGap.value) return undefined;
  const gapMm = inPit ? 0 : aboveMm;
  const { xMm, yMm } = fitting.at;
  return contact(unit, fitting, { target: { on: "ground" }, gapMm, joint: { joint: "bearing" }, xMm, yMm });
}
