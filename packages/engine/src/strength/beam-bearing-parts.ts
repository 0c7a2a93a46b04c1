import type { CheckBasis } from "../checks/check-basis.ts";
import type { Check } from "../checks/check.ts";
import type { Section } from "../catalog/sections/section.ts";
import type { Building } from "../geometry/building.ts";
import type { PlacedBeam } from "../geometry/placed-beam.ts";
import { sectionSizeMm } from "../catalog/section-size.ts";
import { sectionOf, steelFor } from "./beam-parts.ts";
import { worstUse } from "./force-part.ts";
import { bearingForce, type ModelledBearing } from "./modelled-bearings.ts";
import type { StrengthPart } from "./strength-part.ts";

/** A fitting across its shorter side; a seat or the stated plate of a pad; ISO 1161 from memory, the rest common practice, mm. */
const [FITTING_MM, PLATE_MM] = [162, 100];
/** Share of a tube's loaded face already used by the beam's own bending; assumed, no published source. */
const FACE_USED = 0.5;
/** A branch this much narrower than the tube presses its face and not its side walls: K3.2, from memory. */
const NARROW = 0.85;

type Pressed = {
  readonly beam: PlacedBeam;
  readonly uMm: number;
  readonly bearing: ModelledBearing;
  readonly face: "under" | "on";
};

/** Forces pressed on, or pulling at, added beams where they bear on something and something on them. */
export function beamBearingParts(
  bearings: readonly ModelledBearing[],
  building: Building,
  basis: CheckBasis,
): StrengthPart[] {
  const all = bearings.flatMap((bearing) => pressedAt(bearing, building));
  return all.map((one) => {
    const others = all.filter(({ beam, face }) => beam === one.beam && face !== one.face);
    const bothFlanges = others.some(({ uMm }) => Math.abs(uMm - one.uMm) < one.beam.depthMm / 2);
    return partOf(one, bothFlanges, building, basis);
  });
}

function pressedAt(bearing: ModelledBearing, { beamById }: Building): Pressed[] {
  const { above, below, framed } = bearing.planned;
  return ([above, below] as const).flatMap((end, n): Pressed[] => {
    const beam = "beam" in end ? beamById.get(end.beam) : undefined;
    // an end framed into a side presses no flange
    if (beam === undefined || !("beam" in end) || framed === true) return [];
    return [{ beam, uMm: end.uMm, bearing, face: n === 0 ? "under" : "on" }];
  });
}

function partOf(one: Pressed, bothFlanges: boolean, building: Building, basis: CheckBasis): StrengthPart {
  const { beam, uMm, bearing, face } = one;
  const size = { bearingMm: lengthOn(one, building), toEndMm: Math.min(uMm, beam.lengthMm - uMm) };
  const checksAt = (forceN: number): readonly Check[] =>
    checksOf(sectionOf(beam), { ...size, forceN, bothFlanges }, basis);
  const [pressed, pulled] = [worstUse(checksAt(KILONEWTON)), worstUse(checksAt(-KILONEWTON))];
  const place = `${face === "under" ? "over its support" : `under ${bearing.ownerId}`} at ${metres(uMm)} m`;
  const use = (forceN: number): number => ((forceN > 0 ? pressed : pulled) * Math.abs(forceN)) / KILONEWTON;
  return {
    id: `${beam.id} added beam ${place}, ${bearing.place}`,
    ownerId: beam.id,
    element: "added beam",
    place,
    level: "strength",
    use: (solved) => use(bearingForce(bearing, solved)[2]),
    decide: (solved) => {
      const forceN = bearingForce(bearing, solved)[2];
      return { limitState: "web yielding", utilisation: use(forceN), forceN, checks: () => checksAt(forceN) };
    },
  };
}

/** Every utilisation grows in proportion to its force. */
const KILONEWTON = 1000;
const metres = (mm: number): string => (Math.round(mm / 10) / 100).toFixed(2);

/** How much of the beam's length is pressed, mm. */
function lengthOn({ bearing, face }: Pressed, { postById, beamById }: Building): number {
  const { above, below } = bearing.planned;
  const other = face === "under" ? below : above;
  if ("post" in other) return sectionSizeMm(postById.get(other.post)?.post.section ?? "").depthMm;
  if ("beam" in other) return beamById.get(other.beam)?.widthMm ?? PLATE_MM;
  return "corner" in other || ("point" in other && "corner" in other.point) ? FITTING_MM : PLATE_MM;
}

function checksOf(
  section: Section,
  force: { bearingMm: number; toEndMm: number; forceN: number; bothFlanges: boolean },
  basis: CheckBasis,
): readonly Check[] {
  const steel = steelFor(section);
  const element = "added beam" as const;
  if (section.kind === "I") return basis.forceOnBeam({ section, steel, ...force });
  if (section.kind !== "tube")
    return [{ ok: false, element, limitState: "web yielding", why: "shape not covered by this check" }];
  const narrow = force.bearingMm <= NARROW * section.widthMm;
  return basis.forceOnTubeBeam({ section, steel, useOfFace: FACE_USED }, force, narrow);
}
