import { assess, impact, type Drawn, type Impact } from "@cornerway/engine";
import { digestOf, standingJudgements, type Given, type Judgement, type Scheme } from "@cornerway/schema";
import { beforeAll, describe, expect, it } from "vitest";
import { drawn, edits, propped, shifted, type Edit } from "./edits.ts";
import { given } from "./given.ts";
import { coverChanged, marksRecomputed, postsRecomputed } from "./recomputed.ts";

const assessed = new Map<Scheme, Drawn>();
function judged(scheme: Scheme): Drawn {
  const known = assessed.get(scheme) ?? { scheme, result: assess(scheme) };
  assessed.set(scheme, known);
  return known;
}

const standing = new Map<Scheme, { given: Given; judgements: Judgement[] }>();
beforeAll(() => {
  for (const scheme of [propped, shifted]) {
    const all = given(judged(scheme));
    standing.set(scheme, { given: all, judgements: standingJudgements(all, { letter: "A", ...judged(scheme) }) });
  }
});
const judgementsOn = (scheme: Scheme) => standing.get(scheme)?.judgements ?? [];

const found = new Map<Edit, Impact>();
function impactOf(edit: Edit): Impact {
  const known = found.get(edit) ?? impact(judged(edit.before), judged(edit.after), judgementsOn(edit.before));
  found.set(edit, known);
  return known;
}

const ids = (named: readonly { id: string }[]) => named.map(({ id }) => id).toSorted();

describe("what an edit would undo", () => {
  it("is tried on more than fifty edits, and on a judgement of every kind", () => {
    expect(edits.length).toBeGreaterThanOrEqual(50);
    expect(new Set(judgementsOn(shifted).map(({ of }) => of.kind)).size).toBe(8);
  });

  it.each(edits)("$name: the marks that turn are those of the two whole assessments", (edit) => {
    const [was, is] = [judged(edit.before), judged(edit.after)];
    const { verdicts } = impactOf(edit);
    const turned = (pairs: readonly { after: { id: string } }[]) => ids(pairs.map((pair) => pair.after));
    const { appeared, gone, worse, better } = verdicts;
    const told = { appeared: ids(appeared), gone: ids(gone), worse: turned(worse), better: turned(better) };
    expect(told).toEqual(marksRecomputed(was, is));
  });

  it.each(edits)("$name: what goes stale is what covers something whose digest changed", (edit) => {
    const [was, is] = [judged(edit.before), judged(edit.after)];
    const stale = ids(impactOf(edit).stale);
    expect(stale).toEqual(staleRecomputed(edit.before, was, is));
  });

  it.each(edits)("$name: posts lose what their strokes and pads say they lose", (edit) => {
    const [was, is] = [judged(edit.before), judged(edit.after)];
    const lost = impactOf(edit).supports;
    const losing = (what: string) => ids(lost.filter(({ loses }) => loses === what));
    expect({ load: losing("its load"), ground: losing("its ground") }).toEqual(postsRecomputed(was, is));
  });

  it("finds every way of losing in these edits, so that none of the lists is empty throughout", () => {
    const all = edits.map(impactOf);
    expect(all.filter(({ supports }) => supports.some(({ loses }) => loses === "its load")).length).toBeGreaterThan(5);
    expect(all.filter(({ supports }) => supports.some(({ loses }) => loses === "its ground")).length).toBeGreaterThan(
      2,
    );
    expect(all.filter(({ verdicts }) => verdicts.worse.length > 0).length).toBe(1);
    expect(all.filter(({ verdicts }) => verdicts.better.length > 0).length).toBe(1);
    expect(all.filter(({ verdicts }) => verdicts.heavier.length > 0).length).toBeGreaterThan(5);
    expect(all.filter(({ verdicts }) => verdicts.units.length > 0).length).toBeGreaterThan(5);
    const kinds = new Set(all.flatMap(({ stale }) => stale.map(({ kind }) => kind)));
    expect(kinds.size).toBe(8);
  });

  it("names what stood on what is taken away: the upper unit on its post", () => {
    const without = drawn(shifted, [{ kind: "post.remove", id: "p1" }]);
    expect(impact(judged(shifted), judged(without), []).stoodOn).toEqual([{ id: "f1", on: ["p1"] }]);
    const moved = drawn(shifted, [{ kind: "post.move", id: "p1", xUm: 0, yUm: -5_000_000 }]);
    expect(impact(judged(shifted), judged(moved), []).stoodOn).toEqual([]);
  });

  it("undoes nothing that did not stand before: the same edit a second time", () => {
    const once = drawn(shifted, [{ kind: "post.remove", id: "p1" }]);
    const twice = drawn(once, [{ kind: "post.remove", id: "p2" }]);
    const first = new Set(impact(judged(shifted), judged(once), judgementsOn(shifted)).stale.map(({ id }) => id));
    const second = impact(judged(once), judged(twice), judgementsOn(shifted)).stale.map(({ id }) => id);
    expect(second.filter((id) => first.has(id))).toEqual([]);
  });
});

/** Ids of the judgements whose ground has another digest after the edit. */
function staleRecomputed(scheme: Scheme, was: Drawn, is: Drawn): string[] {
  const { questions = [], stamps = [], seal, decisions = [], requests = [] } = standing.get(scheme)?.given ?? {};
  const changed = digestOf(was.scheme) !== digestOf(is.scheme);
  const markOf = ({ result }: Drawn, id: string) => result.marks.find((mark) => mark.id === id) ?? null;
  const onMark = ({ disposition: { id, markId } }: NonNullable<typeof seal>["dispositions"][number]) => {
    const touched =
      digestOf(markOf(was, markId)) !== digestOf(markOf(is, markId)) ||
      (markOf(was, markId)?.elements ?? []).some((element) => coverChanged(element, was, is));
    return touched ? [id] : [];
  };
  const whole = [
    ...stamps.filter(({ stamp }) => stamp.elementId === undefined).map(({ stamp }) => stamp.id),
    ...(seal?.checks ?? []).map(({ check }) => check.id),
    ...(seal?.issues ?? []).map(({ issue }) => issue.id),
  ];
  const removedPads = requests.filter(({ operations }) =>
    operations.some(
      (operation) =>
        operation.kind === "pad.set" &&
        digestOf(is.scheme.pads.find(({ id }) => id === operation.pad.id) ?? null) !== digestOf(operation.pad),
    ),
  );
  return [
    ...questions.filter(({ elementId }) => coverChanged(elementId, was, is)).map(({ id }) => id),
    ...stamps.flatMap(({ stamp: { id, elementId } }) =>
      elementId !== undefined && coverChanged(elementId, was, is) ? [id] : [],
    ),
    ...(changed ? [...whole, ...decisions.map(({ decision }) => decision.id)] : []),
    ...(seal?.dispositions ?? []).flatMap(onMark),
    ...(was.scheme.site.edition === is.scheme.site.edition ? [] : (seal?.confirmations ?? []).map(({ id }) => id)),
    ...removedPads.map(({ id }) => id),
  ].toSorted();
}
