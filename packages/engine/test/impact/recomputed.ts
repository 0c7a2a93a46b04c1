import type { Drawn } from "@cornerway/engine";
import {
  digestOf,
  elementsOf,
  verdicts,
  type Mark,
  type Scheme,
  type SchemeElement,
  type Verdict,
} from "@cornerway/schema";

// What an edit undoes, worked out once more from whole assessments, whole schemes and digests, by plainer ways.

const rank = (verdict: Verdict) => verdicts.indexOf(verdict);
const idsWhere = (marks: readonly Mark[], is: (mark: Mark) => boolean) =>
  marks
    .filter(is)
    .map(({ id }) => id)
    .toSorted();

export function marksRecomputed(before: Drawn, after: Drawn) {
  const find = ({ result }: Drawn, id: string) => result.marks.find((mark) => mark.id === id);
  const turned = (way: number) =>
    idsWhere(after.result.marks, (mark) => {
      const old = find(before, mark.id);
      return old !== undefined && Math.sign(rank(mark.verdict) - rank(old.verdict)) === way;
    });
  return {
    appeared: idsWhere(after.result.marks, ({ id }) => find(before, id) === undefined),
    gone: idsWhere(before.result.marks, ({ id }) => find(after, id) === undefined),
    worse: turned(1),
    better: turned(-1),
  };
}

/** Ids an element names in any of its fields: what it hangs on. */
const named = (element: SchemeElement): string[] =>
  ["containerId", "elementId", "upperId", "lowerId", "aId", "bId"].flatMap((field) => {
    const value = (element as unknown as Record<string, unknown>)[field];
    return typeof value === "string" ? [value] : [];
  });

/** Digests of all that a judgement on an element covers in one drawing, given the elements that count as it. */
function covered({ scheme, result }: Drawn, roots: readonly string[], around: readonly string[]): string {
  const all = elementsOf(scheme);
  const is = (id: string) => roots.includes(id);
  return digestOf({
    elements: all.filter(({ id }) => around.includes(id)).toSorted((a, b) => (a.id < b.id ? -1 : 1)),
    units: result.units.filter(({ id }) => is(id)),
    bearings: result.bearings.filter(({ unitId, onElementId }) => is(unitId) || is(onElementId ?? "")),
    path: result.path.filter(({ elementId }) => is(elementId)),
    reactions: result.statics.reactions.filter(({ elementId }) => is(elementId)),
    marks: result.marks.filter(({ elements }) => elements.some(is)),
    whole: [scheme.site, scheme.basis, result.engineVersion],
  });
}

/** True where something changed that a judgement on an element rests on. */
export function coverChanged(elementId: string, before: Drawn, after: Drawn): boolean {
  const both = [before, after];
  const rootsIn = ({ scheme }: Drawn) =>
    elementsOf(scheme).flatMap((element) => (element.id === elementId ? named(element) : []));
  const roots = [elementId, ...both.flatMap(rootsIn)];
  const hanging = both.flatMap(({ scheme }) =>
    elementsOf(scheme).flatMap((element) => (named(element).some((id) => roots.includes(id)) ? [element.id] : [])),
  );
  const touching = both.flatMap(({ result }) =>
    result.bearings.flatMap(({ unitId, onElementId = unitId }) =>
      roots.includes(unitId) || roots.includes(onElementId) ? [unitId, onElementId] : [],
    ),
  );
  const around = [...roots, ...hanging, ...touching];
  return covered(before, roots, around) !== covered(after, roots, around);
}

/** Posts that carry, by the strokes drawn in them. */
const carries = ({ result }: Drawn, postId: string) =>
  result.path.some(({ elementId, via, forceTopKn }) => elementId === postId && via === "added post" && forceTopKn > 0);

/** True where the foot of a post comes down within a pad, at its top. */
function grounded({ posts, pads }: Scheme, postId: string): boolean {
  const post = posts.find(({ id }) => id === postId);
  if (post === undefined) return false;
  return pads.some(
    ({ xUm, yUm, lengthUm, widthUm, topZUm }) =>
      Math.abs(post.xUm - xUm) <= lengthUm / 2 && Math.abs(post.yUm - yUm) <= widthUm / 2 && post.baseZUm === topZUm,
  );
}

export const postsRecomputed = (before: Drawn, after: Drawn) => {
  const kept = after.scheme.posts.map(({ id }) => id).filter((id) => before.scheme.posts.some((old) => old.id === id));
  return {
    load: kept.filter((id) => carries(before, id) && !carries(after, id)).toSorted(),
    ground: kept.filter((id) => grounded(before.scheme, id) && !grounded(after.scheme, id)).toSorted(),
  };
};
