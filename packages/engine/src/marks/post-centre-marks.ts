import type { Mark } from "@cornerway/schema";
import { jointTolerances } from "../catalog/joint-tolerances.ts";
import type { PlacedPad, PlacedPost } from "../geometry/building.ts";
import { toLocal, planFrame } from "../geometry/place.ts";
import { onBeam } from "../geometry/placed-beam.ts";
import type { Analysis } from "../load-path/analysis.ts";
import { resultantOf, type PointForce } from "../load-path/resultant.ts";
import { rounded } from "../units.ts";
import { markOf } from "./mark-of.ts";

/** Where a post stands off the middle of the fittings it holds or of its pad: the moment goes nowhere in the run-down. */
export function postCentreMarks(analysis: Analysis, post: PlacedPost): Mark[] {
  if (!analysis.carrying.has(post.id)) return [];
  const forceKn = analysis.run.postsKn.get(post.id) ?? 0;
  return [...headMarks(analysis, post), ...footMarks(analysis, post, forceKn)];
}

const mostMm = jointTolerances.postOffCentre.value;

/** Fittings and beams that share a head balance each other: what counts is where all they bring comes down. */
function headMarks({ run, structure: { building } }: Analysis, post: PlacedPost): Mark[] {
  const beams = run.beams.flatMap(({ beamId, supports, reactionsKn }) => {
    const beam = building.beamById.get(beamId);
    return supports.flatMap(({ target, uMm, how }, index) =>
      beam !== undefined && how === "on" && target.on === "post" && target.elementId === post.id
        ? [{ unitId: beamId, forceKn: reactionsKn[index] ?? 0, ...onBeam(beam, uMm) }]
        : [],
    );
  });
  const fittings = run.units.flatMap(({ unitId, contacts, forcesKn }) =>
    contacts.flatMap(({ target, fitting, at }, index) =>
      target.on === "post" && target.elementId === post.id && fitting !== undefined
        ? [{ unitId, forceKn: forcesKn[index] ?? 0, xMm: at.xMm, yMm: at.yMm }]
        : [],
    ),
  );
  const held = [...fittings, ...beams];
  if (held.length === 0) return [];
  const middle = middleOf(held);
  const offsetMm = lengthMm(middle.xMm - post.xMm, middle.yMm - post.yMm);
  if (offsetMm <= mostMm) return [];
  const units = [...new Set(held.map(({ unitId }) => unitId))].toSorted();
  return [offCentreMark(post, "head", offsetMm, middle.forceKn, units)];
}

/** Where nothing presses yet the fittings count alike. */
function middleOf(held: readonly PointForce[]): PointForce {
  const pressed = resultantOf(held);
  if (rounded(pressed.forceKn) !== 0) return pressed;
  return { ...resultantOf(held.map((one) => ({ ...one, forceKn: 1 }))), forceKn: 0 };
}

function footMarks({ structure: { building }, footings }: Analysis, post: PlacedPost, forceKn: number): Mark[] {
  const footing = footings.get(post.id);
  const pad = footing?.on === "pad" ? building.padById.get(footing.elementId) : undefined;
  if (pad === undefined) return [];
  const offsetMm = offMiddleMm(pad, post);
  return offsetMm <= mostMm ? [] : [offCentreMark(post, "foot", offsetMm, forceKn, [pad.id])];
}

function offMiddleMm({ pad, outline }: PlacedPad, post: PlacedPost): number {
  const frame = planFrame(pad.xUm, pad.yUm, pad.topZUm, pad.turnMdeg);
  const { xMm, yMm } = toLocal(frame, { xMm: post.xMm, yMm: post.yMm, zMm: 0 });
  if (pad.support === "slab") return 0;
  const longestMm = Math.max(outline.halfUMm, outline.halfVMm);
  const isLong = (halfMm: number) =>
    2 * halfMm > jointTolerances.longestSinglePad.value || (pad.support === "strip" && halfMm === longestMm);
  const counted = (offMm: number, halfMm: number) => (isLong(halfMm) ? 0 : offMm);
  return lengthMm(counted(xMm, outline.halfUMm), counted(yMm, outline.halfVMm));
}

const offCentreMark = (
  post: PlacedPost,
  end: "head" | "foot",
  offsetMm: number,
  forceKn: number,
  others: readonly string[],
): Mark =>
  markOf({
    fact: {
      kind: "post-off-centre",
      end,
      offsetMm: rounded(offsetMm),
      momentKnm: rounded((forceKn * offsetMm) / 1000),
    },
    verdict: "not checked",
    certainty: "common practice",
    elements: [post.id, ...others],
    named: 1,
    part: end,
    at: { xMm: post.xMm, yMm: post.yMm, zMm: end === "head" ? post.headZMm : post.footZMm },
    basis:
      "Geometry: axis of the post against the hole centres of the fittings, or the middle of the pad; up to 25 mm passes as setting out (common practice, no published source). The run-down takes the force along the axis; the moment is not carried.",
  });

const lengthMm = (x: number, y: number): number => Math.sqrt(x * x + y * y);
