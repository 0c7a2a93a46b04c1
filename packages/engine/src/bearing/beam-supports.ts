import { jointTolerances } from "../catalog/joint-tolerances.ts";
import { beamsNear, padsNear, postsNear, unitsNear, type Building } from "../geometry/building.ts";
import { alongBeam, beamHeightMm, beamTopMm, onBeam, type PlacedBeam } from "../geometry/placed-beam.ts";
import { clipLine, holdsPoint, overlapDepthMm, type PlanRect } from "../geometry/plan-rect.ts";
import { leastCrossingSine, leastLapMm, mostPackingMm, touchMm } from "../geometry/tolerances.ts";
import type { Target } from "./contact.ts";
import { alongRailMm } from "./post-footing.ts";
import type { Structure } from "./structure.ts";

/** A place where a beam is held up: on something, or its end framed into the side of a post or beam. */
export type BeamSupport = {
  readonly uMm: number;
  readonly target: Exclude<Target, { on: "ground" }>;
  readonly gapMm: number;
  readonly how: "on" | "into";
};

/**
 * All that may hold up a beam, from its start to its end. What touches it bears; of what leaves a gap to pack only the
 * outermost at an end with nothing touching further out, as with the rails of a unit.
 */
export function beamSupports(structure: Structure, beam: PlacedBeam): BeamSupport[] {
  const { building } = structure;
  const found = [
    ...onPosts(building, beam),
    ...onUnits(structure, beam),
    ...onPads(building, beam),
    ...onBeams(building, beam),
  ].toSorted((a, b) => a.uMm - b.uMm || a.gapMm - b.gapMm);
  const bears = ({ gapMm }: BeamSupport, at: number) =>
    gapMm <= jointTolerances.contactGap.value || at === 0 || at === found.length - 1;
  return oncePerPlace(found.filter(bears));
}

/** Two things under one place hold it up once. */
function oncePerPlace(sorted: readonly BeamSupport[]): BeamSupport[] {
  const kept: BeamSupport[] = [];
  for (const support of sorted) {
    const last = kept.at(-1);
    if (last !== undefined && support.uMm - last.uMm < leastSpanMm) {
      if (support.gapMm < last.gapMm) kept[kept.length - 1] = support;
    } else kept.push(support);
  }
  return kept;
}

/** Supports nearer to each other than this are one, mm; hole centres of units side by side are 179 apart. */
const leastSpanMm = 100;

const isPacked = (gapMm: number): boolean => gapMm >= -touchMm && gapMm <= mostPackingMm;
const undersideMm = (beam: PlacedBeam, uMm: number): number => beamTopMm(beam, uMm) - beam.depthMm;

function onPosts(building: Building, beam: PlacedBeam): BeamSupport[] {
  return postsNear(building, widened(beam.outline, mostPackingMm)).flatMap((post): BeamSupport[] => {
    const target = { on: "post", elementId: post.id } as const;
    const { uMm } = alongBeam(beam, post);
    const gapMm = undersideMm(beam, uMm) - post.headZMm;
    if (isPacked(gapMm) && overlapDepthMm(beam.outline, post.outline) >= leastLapMm)
      return [{ uMm, target, gapMm: gapMm - post.levelErrorMm, how: "on" }];
    return endsOf(beam)
      .filter(
        ({ uMm: end, xMm, yMm }) =>
          holdsPoint(post.outline, xMm, yMm, mostPackingMm) &&
          post.headZMm >= beamTopMm(beam, end) - touchMm &&
          post.footZMm <= undersideMm(beam, end) + touchMm,
      )
      .map(({ uMm: end }) => ({ uMm: end, target, gapMm: 0, how: "into" }));
  });
}

const endsOf = (beam: PlacedBeam) => [
  { ...beam.from, uMm: 0 },
  { ...beam.to, uMm: beam.lengthMm },
];

function onUnits({ building, topParts }: Structure, beam: PlacedBeam): BeamSupport[] {
  const { lowMm, highMm } = beamHeightMm(beam);
  return unitsNear(building, beam.outline)
    .filter(({ topZMm }) => topZMm >= lowMm - mostPackingMm - touchMm && topZMm <= highMm)
    .flatMap((unit): BeamSupport[] => {
      const { fittings, rails, fittingTopZMm, railTopZMm } = topParts(unit.id);
      const onFittings = fittings.flatMap(({ name, outline, ...at }): BeamSupport[] => {
        const { uMm } = alongBeam(beam, at);
        const gapMm = undersideMm(beam, uMm) - fittingTopZMm;
        if (!isPacked(gapMm) || overlapDepthMm(beam.outline, outline) < leastLapMm) return [];
        return [{ uMm, target: { on: "fitting", elementId: unit.id, fitting: name }, gapMm, how: "on" }];
      });
      const onRails = rails.flatMap(({ rail, outline }): BeamSupport[] => {
        const uMm = crossingMm(beam, outline);
        if (uMm === undefined) return [];
        const gapMm = undersideMm(beam, uMm) - railTopZMm;
        const target = {
          on: "rail",
          elementId: unit.id,
          rail,
          uMm: alongRailMm(unit, rail, onBeam(beam, uMm)),
        } as const;
        return isPacked(gapMm) ? [{ uMm, target, gapMm, how: "on" }] : [];
      });
      return [...onFittings, ...onRails];
    });
}

/** A pad holds a beam at the middle of what they share, a strip or slab along it at both ends of that. */
function onPads(building: Building, beam: PlacedBeam): BeamSupport[] {
  return padsNear(building, beam.outline).flatMap(({ id, outline, topZMm, levelErrorMm }) => {
    const shared = clipLine(outline, beam.from.xMm, beam.from.yMm, beam.to.xMm, beam.to.yMm);
    if (shared === undefined) return [];
    const from = shared.from * beam.lengthMm;
    const to = shared.to * beam.lengthMm;
    const places = to - from > jointTolerances.longestSinglePad.value ? [from, to] : [(from + to) / 2];
    return places
      .map((uMm): BeamSupport => {
        const gapMm = undersideMm(beam, uMm) - topZMm;
        return { uMm, target: { on: "pad", elementId: id }, gapMm, how: "on" };
      })
      .filter(({ gapMm }) => isPacked(gapMm))
      .map((support) => ({ ...support, gapMm: support.gapMm - levelErrorMm }));
  });
}

function onBeams(building: Building, beam: PlacedBeam): BeamSupport[] {
  return beamsNear(building, widened(beam.outline, mostPackingMm)).flatMap((other): BeamSupport[] => {
    if (other.id === beam.id) return [];
    const crossing = crossingMm(beam, other.outline);
    if (crossing !== undefined) {
      const { uMm } = alongBeam(other, onBeam(beam, crossing));
      const gapMm = undersideMm(beam, crossing) - beamTopMm(other, uMm);
      if (isPacked(gapMm))
        return [{ uMm: crossing, target: { on: "beam", elementId: other.id, uMm }, gapMm, how: "on" }];
    }
    return endsOf(beam).flatMap((end): BeamSupport[] => {
      const { uMm } = alongBeam(other, end);
      if (!framesInto(beam, end, other, uMm)) return [];
      return [{ uMm: end.uMm, target: { on: "beam", elementId: other.id, uMm }, gapMm: 0, how: "into" }];
    });
  });
}

/** An end that meets the side of another beam away from that one's own ends, at a height they share. */
function framesInto(
  beam: PlacedBeam,
  end: { readonly xMm: number; readonly yMm: number; readonly uMm: number },
  other: PlacedBeam,
  uMm: number,
): boolean {
  const top = Math.min(beamTopMm(beam, end.uMm), beamTopMm(other, uMm));
  const underside = Math.max(undersideMm(beam, end.uMm), undersideMm(other, uMm));
  const awayFromEnds = Math.min(uMm, other.lengthMm - uMm) > other.widthMm / 2;
  return top - underside > touchMm && awayFromEnds && holdsPoint(other.outline, end.xMm, end.yMm, mostPackingMm);
}

/** How far along the beam the middle of its crossing with a strip lies; none where the two run along each other. */
export function crossingMm(beam: PlacedBeam, strip: PlanRect): number | undefined {
  const { ux, uy } = beam.outline;
  const [ax, ay] = strip.halfUMm >= strip.halfVMm ? [strip.ux, strip.uy] : [-strip.uy, strip.ux];
  if (Math.abs(ux * ay - uy * ax) < leastCrossingSine) return undefined;
  const cut = clipLine(strip, beam.from.xMm, beam.from.yMm, beam.to.xMm, beam.to.yMm);
  return cut === undefined ? undefined : ((cut.from + cut.to) / 2) * beam.lengthMm;
}

const widened = (rect: PlanRect, byMm: number): PlanRect => ({
  ...rect,
  halfUMm: rect.halfUMm + byMm,
  halfVMm: rect.halfVMm + byMm,
});
