import type { Mark, MarkFact } from "@cornerway/schema";
import type { Footing } from "../bearing/post-footing.ts";
import { unitsNear, type PlacedPost, type Unit } from "../geometry/building.ts";
import type { Analysis } from "../load-path/analysis.ts";
import { rounded } from "../units.ts";
import { markOf } from "./mark-of.ts";
import { openingAround, throughUnit } from "./post-in-unit.ts";

/**
 * What is to be said of one added post: its foot, what it holds up, what it stands in the way of. Of one drawn into a
 * pad that has been said, and its foot decides nothing more.
 */
export function postMarks(analysis: Analysis, post: PlacedPost, inPad: boolean): Mark[] {
  return [...(inPad ? [] : footMarks(analysis, post)), ...headMarks(analysis, post), ...wayMarks(analysis, post)];
}

const footPlace = ({ xMm, yMm, footZMm }: PlacedPost) => ({ xMm, yMm, zMm: footZMm });
const headPlace = ({ xMm, yMm, headZMm }: PlacedPost) => ({ xMm, yMm, zMm: headZMm });

function footMarks({ footings }: Analysis, post: PlacedPost): Mark[] {
  const footing = footings.get(post.id) ?? { on: "air" };
  const under = underOf[footing.on];
  if (under === undefined) return [];
  return [
    markOf({
      fact: { kind: "post-without-ground", under },
      verdict: footing.on === "ground" || footing.on === "top rail" ? "not checked" : "does not work",
      certainty: "common practice",
      elements: [post.id, ...("elementId" in footing ? [footing.elementId] : [])],
      named: 1,
      at: footPlace(post),
      basis:
        "A post needs its own way to the ground; on an unsupported rail it only ties two weak rails together. Common practice, no published source.",
    }),
  ];
}

type Under = Extract<MarkFact, { kind: "post-without-ground" }>["under"];
const underOf: Record<Footing["on"], Under | undefined> = {
  pad: undefined,
  post: undefined,
  fitting: undefined,
  beam: undefined,
  "top rail": "rail",
  "bottom rail": "rail",
  sheet: "sheet",
  ground: "ground",
  air: "air",
};

function headMarks(analysis: Analysis, post: PlacedPost): Mark[] {
  const holds = holdsOf(analysis, post);
  if (!analysis.carrying.has(post.id)) return [];
  const forceKn = rounded(analysis.run.postsKn.get(post.id) ?? 0);
  const fact: MarkFact = holds.length > 0 ? { kind: "post-carries", forceKn, holds } : { kind: "post-holds-nothing" };
  return [
    markOf({
      fact,
      verdict: "not checked",
      certainty: holds.length > 0 ? "common practice" : "derived",
      elements: [post.id, ...holds],
      named: 1,
      at: headPlace(post),
      basis:
        holds.length > 0
          ? "Force by statics from tare at the middle of its range, finishes and imposed loads, unfactored, ± not known. Strength of the post and its pad not judged."
          : "Geometry: no fitting, rail, post or beam within 25 mm above its head or framed into it.",
    }),
  ];
}

/** Units, posts and beams on its head or framed into it, and units whose top rail it holds. */
function holdsOf({ bearings, supports, footings, beamSupports }: Analysis, post: PlacedPost): string[] {
  const onHead = bearings
    .filter(({ contacts }) => contacts.some(({ target }) => target.on === "post" && target.elementId === post.id))
    .map(({ unitId }) => unitId);
  const rails = supports.filter(({ postId }) => postId === post.id).map(({ unitId }) => unitId);
  const posts = [...footings].filter(([, footing]) => footing.on === "post" && footing.elementId === post.id);
  const beams = [...beamSupports].filter(([, own]) =>
    own.some(({ target }) => target.on === "post" && target.elementId === post.id),
  );
  return [...new Set([...onHead, ...rails, ...[...posts, ...beams].map(([id]) => id)])].toSorted();
}

function wayMarks({ structure }: Analysis, post: PlacedPost): Mark[] {
  return unitsNear(structure.building, post.outline).flatMap((unit) => [
    ...inOpeningMarks(unit, post),
    ...throughMarks(unit, post),
  ]);
}

function inOpeningMarks(unit: Unit, post: PlacedPost): Mark[] {
  const opening = openingAround(unit, post);
  if (opening === undefined) return [];
  return [
    markOf({
      fact: { kind: "post-through-opening" },
      verdict: "not checked",
      certainty: "derived",
      elements: [post.id, opening.id, unit.id],
      at: footPlace(post),
      basis: "Geometry: the post stands within the clear width of the opening.",
    }),
  ];
}

function throughMarks(unit: Unit, post: PlacedPost): Mark[] {
  return throughUnit(unit, post).map((through) =>
    markOf({
      fact: { kind: "post-through-unit", through },
      verdict: through === "roof" || through === "floor" ? "not checked" : "does not work",
      certainty: "common practice",
      elements: [post.id, unit.id],
      part: through,
      at: headPlace(post),
      basis:
        "Geometry: the post is drawn where the container has this part. Member sizes of the generic specification.",
    }),
  );
}
