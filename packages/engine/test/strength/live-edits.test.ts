import type { Scheme } from "@cornerway/schema";
import { describe, expect, it, vi } from "vitest";
import { sampleHazards } from "../codes-loads/sample-hazards.ts";
import { drawnUnit } from "./drawn-unit.ts";

const drawn: Scheme = (() => {
  const window = { face: "right", framed: true, fromMm: 1500, widthMm: 1200 } as const;
  const two = drawnUnit({ type: "1CC", above: 1, openings: [window] });
  return { ...two, basis: { ...two.basis, hazards: sampleHazards({ wind: { mph: 110 } }), soil: { class: "sand" } } };
})();

const first = <T>(list: readonly T[], change: (one: T) => T): T[] =>
  list.map((one, n) => (n === 0 ? change(one) : one));

/** One of each kind of act, each on the scheme as drawn. */
const edits: Readonly<Record<string, (scheme: Scheme) => Scheme>> = {
  "an opening farther on": (scheme) => ({
    ...scheme,
    openings: first(scheme.openings, (one) => ({ ...one, offsetUm: one.offsetUm + 200_000 })),
  }),
  "an opening that is wider": (scheme) => ({
    ...scheme,
    openings: first(scheme.openings, (one) => ({ ...one, widthUm: one.widthUm + 300_000 })),
  }),
  "the upper unit shifted": (scheme) => ({
    ...scheme,
    containers: scheme.containers.map((one, n) => (n === 1 ? { ...one, xUm: one.xUm + 4_000 } : one)),
  }),
  "another finish": (scheme) => ({
    ...scheme,
    loads: [
      ...scheme.loads,
      { id: "z9", containerId: "u1", surface: "floor", case: "finish", pressurePa: 700 } satisfies Scheme["loads"][0],
    ],
  }),
  "a larger pad": (scheme) => ({
    ...scheme,
    pads: first(scheme.pads, (one) => ({ ...one, lengthUm: one.lengthUm + 200_000 })),
  }),
  "a post in the wall": (scheme) => {
    const { posts, pads } = drawnUnit({ type: "1CC", posts: [4500] });
    const own = pads.filter(({ id }) => id.startsWith("q"));
    return { ...scheme, posts, pads: [...scheme.pads, ...own] };
  },
  "more wind": (scheme) => ({ ...scheme, basis: { ...scheme.basis, hazards: sampleHazards({ wind: { mph: 130 } }) } }),
};

/** An engine in which nothing was asked before. */
async function freshEngine() {
  vi.resetModules();
  const { strengthWhileDrawing } = await import("../../src/strength-while-drawing.ts");
  return strengthWhileDrawing();
}

const drawnUp = await (async () => {
  const engine = await freshEngine();
  engine.full(drawn);
  return engine;
})();

/** As a thread gets it: a copy, whatever was drawn before. */
const sent = (scheme: Scheme): Scheme => structuredClone(scheme);

describe("a live answer after other edits", () => {
  // every edit is looked at twice, so that what is kept of each is asked for under all the others
  const answers = Object.values(edits).map((edit) => drawnUp.live(sent(edit(drawn))));

  it.each(Object.keys(edits))("is that of an engine in which nothing but the full run was asked: %s", async (name) => {
    const edit = edits[name];
    if (edit === undefined) throw new Error(`no edit ${name}`);
    const again = drawnUp.live(sent(edit(drawn)));
    const fresh = await freshEngine();
    fresh.full(drawn);
    expect(again).toEqual(fresh.live(edit(drawn)));
    expect(again).toEqual(answers[Object.keys(edits).indexOf(name)]);
  });

  it("is another after every one of them", () => {
    const parts = answers.map((answer) => JSON.stringify(answer.accepted && answer.parts));
    expect(new Set(parts).size).toBe(parts.length);
  });
});
