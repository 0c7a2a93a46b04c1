import type { Scheme } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { strengthBasisFor } from "../../src/strength.ts";
import { governingVectors, strengthLive, type LiveStrength } from "../../src/strength/live-strength.ts";
import { strengthMemory } from "../../src/strength/strength-memory.ts";
import { strengthOf, type Strength } from "../../src/strength/strength-of.ts";
import { sampleHazards } from "../codes-loads/sample-hazards.ts";
import { drawnUnit } from "./drawn-unit.ts";
import { ordinarySchemes } from "./ordinary-schemes/ordinary-schemes.ts";

type Live = Extract<LiveStrength, { accepted: true }>;
type Full = Extract<Strength, { accepted: true }>;

const withWindow = (fromMm: number): Scheme => {
  const drawn = drawnUnit({
    type: "1CC",
    above: 1,
    openings: [{ face: "right", framed: true, fromMm, widthMm: 1200 }],
  });
  return {
    ...drawn,
    basis: { ...drawn.basis, hazards: sampleHazards({ wind: { mph: 110 } }), soil: { class: "sand" } },
  };
};
const before = withWindow(1500);
const after = withWindow(2100);
const basis = strengthBasisFor(before.site.edition);
const accepted = <T extends { readonly accepted: boolean }>(answer: T): Extract<T, { accepted: true }> => {
  if (!answer.accepted) throw new Error("the sample is accepted");
  return answer as Extract<T, { accepted: true }>;
};

const memory = strengthMemory();
const full: Full = accepted(strengthOf(before, basis, memory));
const governed = governingVectors(full);
const live: Live = accepted(strengthLive(before, basis, memory, governed));
const condensedBefore = memory.cache.condensed;
const edited: Live = accepted(strengthLive(after, basis, memory, governed));
const condensedByEdit = memory.cache.condensed - condensedBefore;

/** The edited scheme run whole on a memory of its own. */
const own = strengthMemory();
const again: Full = accepted(strengthOf(after, basis, own));

const close = (ours: number | null, theirs: number | undefined): void => {
  if (theirs === undefined) return expect(ours).toBeNull();
  expect(Math.abs((ours ?? NaN) - theirs)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(theirs)));
};

/** The same but for rounding in the utilisations; parts that are used alike may come the other way round. */
function expectAlike(one: Live, other: Live): void {
  const byId = ({ parts }: Live) => parts.toSorted((a, b) => (a.id < b.id ? -1 : 1));
  const [ours, theirs] = [byId(one), byId(other)];
  const without = (parts: Live["parts"]) => parts.map((part) => ({ ...part, utilisation: undefined }));
  expect({ ...one, parts: without(ours) }).toEqual({ ...other, parts: without(theirs) });
  ours.forEach(({ utilisation }, n) => close(utilisation, theirs[n]?.utilisation ?? undefined));
}

/** Parts that a vector governed which a live answer looks at, in both answers. */
function pairs(one: Live, other: Full) {
  const looked = new Map(one.looked.map(({ assumptions, runs }) => [assumptions, new Set(runs)]));
  const byId = new Map(one.parts.map((part) => [part.id, part]));
  return other.results.flatMap((result) => {
    const part = byId.get(result.id);
    const isIn = looked.get(result.assumptions)?.has(result.governingRun) === true;
    return part !== undefined && isIn ? [{ part, result }] : [];
  });
}

describe("strength while one draws", () => {
  it("finds the utilisation and the governing run of the full run for every part that a vector it looks at governed", () => {
    const same = pairs(live, full);
    expect(same.length).toBeGreaterThan(20);
    for (const { part, result } of same) {
      close(part.utilisation, result.utilisation);
      expect(part.run).toBe(result.governingRun);
      expect(part.held).toEqual(result.held);
    }
  });

  it("is never above the full run of an edited scheme, and equal where one of its vectors governs there for the same owner", () => {
    const byId = new Map(again.results.map((result) => [result.id, result]));
    for (const { id, utilisation, held } of edited.parts) {
      const result = byId.get(id);
      if (result === undefined || result.held.length !== held.length) continue;
      expect(utilisation ?? Infinity).toBeLessThanOrEqual((result.utilisation ?? Infinity) * (1 + 1e-9));
    }
    const equal = pairs(edited, again).filter(({ part, result }) => part.run === result.governingRun);
    expect(equal.length).toBeGreaterThan(20);
    for (const { part, result } of equal) close(part.utilisation, result.utilisation);
  });

  it("has the same answer on a memory of its own: what is kept from before changes nothing", () => {
    expectAlike(accepted(strengthLive(after, basis, strengthMemory(), governed)), edited);
  });

  it("condenses only the edited container anew: once as it is, once with soft walls for the lean", () => {
    expect(condensedByEdit).toBe(2);
  });

  it("with the lean of an earlier run given does not ask it, and is that run under its vectors where they lean alike", () => {
    const lastRun = [governingVectors(again), again.enlargement] as const;
    const condensed = own.cache.condensed;
    accepted(strengthLive(withWindow(2400), basis, own, ...lastRun));
    expect(own.cache.condensed - condensed).toBe(1);
    const same = pairs(accepted(strengthLive(after, basis, own, ...lastRun)), again);
    expect(again.enlargement).toBeGreaterThan(1);
    expect(same.length).toBeGreaterThan(20);
    for (const { part, result } of same) {
      close(part.utilisation, result.utilisation);
      expect(part.run).toBe(result.governingRun);
    }
  });

  it("leaves a full run after it as it is on a memory of its own", () => {
    expect(accepted(strengthOf(after, basis, memory))).toEqual(again);
  });

  it("says which vectors it looked at, how many it did not, and that it waits for the full run", () => {
    expect(live.waitsFor).toBe("the full run");
    expect(live.looked.map(({ assumptions }) => assumptions)).toEqual(["locks at play", "locks tied"]);
    const gravity = live.looked[0]?.runs.filter((run) => run.startsWith("1.4D") || run.startsWith("1.2D + 1.6L"));
    expect(gravity?.length).toBeGreaterThan(1);
    expect(live.vectors).toBe(live.looked.reduce((sum, { runs }) => sum + runs.length, 0));
    expect(live.notLooked).toBeGreaterThan(live.vectors);
    const sets = full.envelope.map(({ assumptions }) => assumptions);
    expect([...live.looked.map(({ assumptions }) => assumptions), ...live.setsWaiting]).toEqual(sets);
    expect(live.checks).toBeLessThan(full.checks / 10);
  });

  it("before any full run looks at gravity loads alone", () => {
    const first = accepted(strengthLive(before, basis, strengthMemory(), new Map()));
    for (const { runs } of first.looked) for (const run of runs) expect(run).not.toMatch(/ W| E| T /);
    expect(first.parts.length).toBeGreaterThan(20);
  });
});

const farther = (scheme: Scheme, byMm: number): Scheme => {
  const [first, ...others] = scheme.openings;
  if (first === undefined) return scheme;
  return { ...scheme, openings: [{ ...first, offsetUm: first.offsetUm + byMm * 1000 }, ...others] };
};

/** One on the ground, one joined to another, one that stands out over the one below. */
describe.each(["a window in the middle of a 20 ft side", "two 20 ft joined by 2 m", "an overhang of 1 m"])(
  "what is kept while one draws %s",
  (name) => {
    const drawn = ordinarySchemes[name];
    if (drawn === undefined) throw new Error(`no scheme ${name}`);

    it("changes no live answer after edits", () => {
      const kept = strengthMemory();
      const ofDrawn = accepted(strengthOf(drawn, basis, kept));
      const lastRun = [governingVectors(ofDrawn), ofDrawn.enlargement] as const;
      strengthLive(farther(drawn, 20), basis, kept, ...lastRun);
      const moved = farther(drawn, 50);
      const byKept = accepted(strengthLive(moved, basis, kept, ...lastRun));
      expectAlike(byKept, accepted(strengthLive(moved, basis, strengthMemory(), ...lastRun)));
    });

    it("makes no difference to forces recovered for a few runs: they are those of a container that a full run looked into", () => {
      const [atHand, few] = [strengthMemory(), strengthMemory()];
      const ofDrawn = accepted(strengthOf(drawn, basis, atHand));
      const lastRun = [governingVectors(ofDrawn), ofDrawn.enlargement] as const;
      const byInfluences = accepted(strengthLive(drawn, basis, atHand, ...lastRun));
      expectAlike(accepted(strengthLive(drawn, basis, few, ...lastRun)), byInfluences);
      expect(few.influences.size).toBe(0);
      expect(byInfluences.vectors).toBeGreaterThan(3);
    });
  },
);
