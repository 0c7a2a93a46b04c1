import type { Unit } from "../geometry/building.ts";
import { toLocal, toSite } from "../geometry/place.ts";
import { alongBeam, beamTopMm } from "../geometry/placed-beam.ts";
import { clipLine, overlapDepthMm, planRect, type PlanRect } from "../geometry/plan-rect.ts";
import { leastCrossingSine, leastLapMm } from "../geometry/tolerances.ts";
import type { Beneath } from "./beneath.ts";
import type { Contact, Target } from "./contact.ts";
import { asBuilt, isReachable, plainJoint } from "./fitting-contact.ts";
import { alongRailMm } from "./post-footing.ts";
import type { Structure } from "./structure.ts";

/** Where one bottom side rail of a unit meets what is under it, between its corner fittings, from front to door. */
export type RailContacts = {
  /** Posts, beams and pads: they were put there to bear. */
  readonly placed: readonly Contact[];
  /** Rails and fittings of units below: they bear only where they are packed. */
  readonly crossed: readonly Contact[];
};

export function railContacts(structure: Structure, below: Beneath, unit: Unit, side: "left" | "right"): RailContacts {
  const line = railLine(unit, side);
  const byPlace = (contacts: Contact[]) => contacts.toSorted((a, b) => a.localXMm - b.localXMm);
  return {
    placed: byPlace([...onPosts(below.posts, line), ...onPads(below.pads, line), ...onBeams(below.beams, line)]).map(
      (contact) => asBuilt(structure, contact),
    ),
    crossed: byPlace(onUnits(structure, below.units, line)),
  };
}

/** A bottom side rail between the corner fittings: its strip in plan and its axis. */
export type RailLine = {
  readonly unit: Unit;
  readonly side: "left" | "right";
  readonly strip: PlanRect;
  readonly yMm: number;
  readonly halfLengthMm: number;
  readonly undersideZMm: number;
};

export function railLine(unit: Unit, side: "left" | "right"): RailLine {
  const { lengthMm, widthMm, fitting, bottomRailWidthMm, baseAboveFittingMm } = unit.dimensions;
  const halfLengthMm = lengthMm / 2 - fitting.lengthMm;
  const outer = widthMm / 2;
  const inner = outer - bottomRailWidthMm;
  const [y0, y1] = side === "left" ? [inner, outer] : [-outer, -inner];
  return {
    unit,
    side,
    strip: planRect(unit.frame, -halfLengthMm, halfLengthMm, y0, y1),
    yMm: (y0 + y1) / 2,
    halfLengthMm,
    undersideZMm: unit.baseZMm + baseAboveFittingMm,
  };
}

function contactAt(line: RailLine, localXMm: number, topZMm: number, target: (at: Contact["at"]) => Target): Contact {
  const gapMm = line.undersideZMm - topZMm;
  const at = toSite(line.unit.frame, { xMm: localXMm, yMm: line.yMm, zMm: line.unit.dimensions.baseAboveFittingMm });
  return {
    unitId: line.unit.id,
    side: line.side,
    at,
    localXMm,
    localYMm: line.yMm,
    target: target(at),
    offsetXMm: 0,
    offsetYMm: 0,
    gapMm,
    joint: plainJoint(gapMm),
  };
}

/** Local x of a site place on this rail, when it lies between the corner fittings. */
function placeOn(line: RailLine, xMm: number, yMm: number): number | undefined {
  const local = toLocal(line.unit.frame, { xMm, yMm, zMm: 0 });
  return Math.abs(local.xMm) <= line.halfLengthMm ? local.xMm : undefined;
}

function onPosts(posts: Beneath["posts"], line: RailLine): Contact[] {
  return posts.flatMap((post) => {
    const x = placeOn(line, post.xMm, post.yMm);
    if (x === undefined || !isReachable(line.undersideZMm - post.headZMm)) return [];
    if (overlapDepthMm(line.strip, post.outline) < leastLapMm) return [];
    return [contactAt(line, x, post.headZMm, () => ({ on: "post", elementId: post.id }))];
  });
}

/** A pad bears a rail at its middle, a strip where it crosses under it. */
function onPads(pads: Beneath["pads"], line: RailLine): Contact[] {
  return pads.flatMap((pad) => {
    const x = pad.pad.support === "strip" ? crossingOf(line, pad.outline) : placeOn(line, pad.xMm, pad.yMm);
    if (x === undefined || !isReachable(line.undersideZMm - pad.topZMm)) return [];
    if (overlapDepthMm(line.strip, pad.outline) < leastLapMm) return [];
    return [contactAt(line, x, pad.topZMm, () => ({ on: "pad", elementId: pad.id }))];
  });
}

function onBeams(beams: Beneath["beams"], line: RailLine): Contact[] {
  return beams.flatMap((beam) => {
    const x = crossingOf(line, beam.outline);
    if (x === undefined) return [];
    const at = toSite(line.unit.frame, { xMm: x, yMm: line.yMm, zMm: 0 });
    const { uMm } = alongBeam(beam, at);
    const topZMm = beamTopMm(beam, uMm);
    if (!isReachable(line.undersideZMm - topZMm)) return [];
    return [contactAt(line, x, topZMm, () => ({ on: "beam", elementId: beam.id, uMm }))];
  });
}

function onUnits(structure: Structure, units: Beneath["units"], line: RailLine): Contact[] {
  const found: Contact[] = [];
  for (const below of units) {
    const { fittings, rails, fittingTopZMm, railTopZMm } = structure.topParts(below.id);
    if (isReachable(line.undersideZMm - fittingTopZMm))
      for (const { name, outline, xMm, yMm } of fittings) {
        const x = placeOn(line, xMm, yMm);
        if (x === undefined || overlapDepthMm(line.strip, outline) < leastLapMm) continue;
        found.push(contactAt(line, x, fittingTopZMm, () => ({ on: "fitting", elementId: below.id, fitting: name })));
      }
    if (isReachable(line.undersideZMm - railTopZMm))
      for (const { rail, outline } of rails) {
        const x = crossingOf(line, outline);
        if (x === undefined) continue;
        found.push(
          contactAt(line, x, railTopZMm, (at) => ({
            on: "rail",
            elementId: below.id,
            rail,
            uMm: alongRailMm(below, rail, at),
          })),
        );
      }
  }
  return found.map((contact) => ({ ...contact, joint: { joint: "seat" } }));
}

/** Local x of the middle of a crossing; none where the two run along each other. */
function crossingOf(line: RailLine, rail: PlanRect): number | undefined {
  const { cos, sin } = line.unit.frame;
  const [ax, ay] = rail.halfUMm >= rail.halfVMm ? [rail.ux, rail.uy] : [-rail.uy, rail.ux];
  if (Math.abs(cos * ay - sin * ax) < leastCrossingSine) return undefined;
  const start = toSite(line.unit.frame, { xMm: -line.halfLengthMm, yMm: line.yMm, zMm: 0 });
  const end = toSite(line.unit.frame, { xMm: line.halfLengthMm, yMm: line.yMm, zMm: 0 });
  const cut = clipLine(rail, start.xMm, start.yMm, end.xMm, end.yMm);
  return cut === undefined ? undefined : -line.halfLengthMm + (cut.from + cut.to) * line.halfLengthMm;
}
