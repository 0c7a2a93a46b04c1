import { demoCostBook, type Assessment, type Mark, type Remedy, type Scheme } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { assess } from "../../src/assess.ts";
import { assessStrength } from "../../src/assess-strength.ts";
import { premium } from "../../src/cost/premium.ts";
import { strengthMemory } from "../../src/strength/strength-memory.ts";
import { strengthOf } from "../../src/strength/strength-of.ts";
import { strengthBasisFor } from "../../src/strength.ts";
import { drawn, listed, listOf, searching } from "./listed.ts";
import { smallSchemes } from "./small-schemes.ts";

const schemeOfMark = (markId: string): Scheme => {
  const found = smallSchemes.find((one) => one.markId === markId);
  if (found === undefined) throw new Error(`no small scheme has ${markId}`);
  return found.scheme;
};

const memory = strengthMemory();
/** The whole assessment made anew, on one memory. */
const assessed = (scheme: Scheme): Assessment =>
  assessStrength(scheme, undefined, (drawing) => strengthOf(drawing, strengthBasisFor(drawing.site.edition), memory))
    .assessment;

const ids = (marks: readonly Mark[], verdict: Mark["verdict"]) =>
  marks.filter((mark) => mark.verdict === verdict).map(({ id }) => id);

/** Marks that do not work after and did not before, by the whole assessment made anew. */
function fallen(before: Assessment, after: Assessment): string[] {
  const known = new Set(before.marks.filter(({ verdict }) => verdict === "does not work").map(({ id }) => id));
  return ids(after.marks, "does not work").filter((id) => !known.has(id));
}

describe("remedies", () => {
  it.each(smallSchemes)(
    "settle the mark where $what, and bring nothing that does not work",
    { timeout: 240_000 },
    ({ scheme, markId }) => {
      const list = listOf(scheme, markId);
      expect(list.offered.length, JSON.stringify(list.failed.slice(0, 3))).toBeGreaterThan(0);
      const before = assessed(scheme);
      const was = before.marks.find(({ id }) => id === markId);
      for (const { operations } of list.offered) {
        const after = assessed(drawn(scheme, operations));
        const now = after.marks.find(({ id }) => id === markId);
        if (was?.verdict === "does not work") expect(now?.verdict).not.toBe("does not work");
        expect(fallen(before, after)).toEqual([]);
      }
    },
  );

  it(
    "come cheapest first, each at what its premium is above the scheme's, worked out anew",
    { timeout: 240_000 },
    () => {
      const scheme = schemeOfMark("made-connection:t+g");
      const list = listOf(scheme, "made-connection:t+g");
      const money = list.offered.map((remedy) => remedy.premium?.money ?? NaN);
      expect(money).toEqual(money.toSorted((a, b) => a - b));
      for (const { operations, premium: said } of list.offered)
        expect(said?.money).toBeCloseTo(
          premium(drawn(scheme, operations), demoCostBook).total - premium(scheme, demoCostBook).total,
          6,
        );
    },
  );

  // Four made connections by hand, rates for show of the demo's book: two plates 150 × 100 × 12 mm at 7850 kg/m³ are
  // 2 × 1.413 = 2.826 kg at 3.20; weld once round each, 2 × 0.5 = 1.0 m at 0.24 h/m and 130; one hour of engineering at 150.
  // 9.0432 + 31.20 + 150 = 190.2432 each; four are 760.97.
  it("price four made connections at 760.97, worked by hand", { timeout: 240_000 }, () => {
    const list = listOf(schemeOfMark("made-connection:t+g"), "made-connection:t+g");
    const connected = list.offered.find(({ change }) => change.kind === "made connections");
    expect(connected?.premium?.money).toBeCloseTo(4 * (2 * 0.15 * 0.1 * 0.012 * 7850 * 3.2 + 1 * 0.24 * 130 + 150), 6);
    expect(connected?.premium?.money).toBeCloseTo(760.97, 2);
    expect(connected?.premium?.forShow).toBe(true);
  });

  it("are the same list for the same scheme, whatever order its elements come in", { timeout: 240_000 }, () => {
    const scheme = schemeOfMark("member-cut:d+g:top-side-rail");
    const turned: Scheme = { ...scheme, pads: scheme.pads.toReversed(), containers: scheme.containers.toReversed() };
    const once = listOf(scheme, "member-cut:d+g:top-side-rail");
    expect(listed(scheme, "member-cut:d+g:top-side-rail").list).toEqual(once);
    expect(listed(turned, "member-cut:d+g:top-side-rail").list).toEqual(once);
  });

  it(
    "mirror with the scheme: a unit pushed the other way is pushed back as far, at the same price",
    { timeout: 240_000 },
    () => {
      const scheme = schemeOfMark("tips-over:t");
      // half a turn about the middle of the lower unit is a mirror image of both its axes
      const mirrored: Scheme = {
        ...scheme,
        containers: scheme.containers.map((unit) =>
          unit.id === "t" ? { ...unit, xUm: -unit.xUm, turnMdeg: 180_000 } : unit,
        ),
      };
      const back = (list: readonly Remedy[]) =>
        list.flatMap(({ change, premium: said }) =>
          change.kind === "shorter overhang" ? [[change.byMm, Math.round(said?.money ?? 0)]] : [],
        );
      const [one, other] = [scheme, mirrored].map((each) => back(listOf(each, "tips-over:t").offered));
      expect(one).not.toEqual([]);
      expect(other).toEqual(one);
    },
  );

  it("tell what they prove as they go, and may be left at any step", { timeout: 240_000 }, () => {
    const search = searching(schemeOfMark("made-connection:t+g"), "made-connection:t+g");
    const first = search.next();
    expect(first.done).toBe(false);
    if (first.done === true) return;
    expect(first.value.kind).toBe("proving");
    expect(first.value.done).toBeLessThan(first.value.of);
    expect(search.return({ accepted: false, refusals: [] }).done).toBe(true);
    expect(search.next().done).toBe(true);
  });

  it("refuse a mark the scheme does not have", () => {
    expect(() => listed(schemeOfMark("made-connection:t+g"), "tips-over:t")).toThrow(RangeError);
  });

  it("start from marks the load path itself notes", () => {
    for (const { scheme, markId } of smallSchemes.filter((one) => !one.markId.startsWith("overstressed")))
      expect(assess(scheme).marks.map(({ id }) => id)).toContain(markId);
  });
});
