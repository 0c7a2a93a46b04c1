import { assess } from "@cornerway/engine";
import { Assessment, type Scheme } from "@cornerway/schema";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cornerStack, mirrored, moved, quarterTurned, randomScheme } from "../../../tests/support/random-scheme.ts";

const settings = { seed: 668, numRuns: 150 };

/** What must not depend on where or which way round a scheme is drawn: verdicts, mark kinds, forces. */
function essence(scheme: Scheme) {
  const { verdict, units, marks, statics, bearings } = assess(scheme);
  return {
    verdict,
    units: units
      .map(({ id, verdict: own, storey }) => ({ id, own, storey }))
      .toSorted((a, b) => (a.id < b.id ? -1 : 1)),
    kinds: marks.map(({ id }) => id.replaceAll(/front-(left|right)|door-(left|right)/g, "corner")).toSorted(),
    sumKn: statics.reactionKn,
    forces: bearings.map(({ forceKn }) => forceKn).toSorted((a, b) => a - b),
  };
}

function expectSame(one: Scheme, other: Scheme) {
  const a = essence(one);
  const b = essence(other);
  expect({ ...b, forces: [], sumKn: 0 }).toEqual({ ...a, forces: [], sumKn: 0 });
  expect(b.sumKn).toBeCloseTo(a.sumKn, 2);
  expect(b.forces).toHaveLength(a.forces.length);
  a.forces.forEach((force, at) => expect(b.forces[at]).toBeCloseTo(force, 2));
}

describe("assess", () => {
  it("gives an assessment the schema accepts, for any scheme", () => {
    fc.assert(
      fc.property(randomScheme, (scheme) => {
        const parsed = Assessment.safeParse(assess(scheme));
        expect(parsed.error?.issues).toBeUndefined();
      }),
      settings,
    );
  });

  it("gives the same answer whatever order the elements come in, and the same bits for the same scheme", () => {
    fc.assert(
      fc.property(randomScheme, (scheme) => {
        const reversed: Scheme = {
          ...scheme,
          containers: scheme.containers.toReversed(),
          openings: scheme.openings.toReversed(),
          posts: scheme.posts.toReversed(),
          pads: scheme.pads.toReversed(),
          loads: scheme.loads.toReversed(),
        };
        expectSame(scheme, reversed);
        expect(JSON.stringify(assess(scheme))).toBe(JSON.stringify(assess(structuredClone(scheme))));
      }),
      settings,
    );
  });

  it("gives the same verdicts and forces for the scheme moved elsewhere on the site", () => {
    const by = fc.integer({ min: -5_000_000, max: 5_000_000 });
    fc.assert(
      fc.property(randomScheme, by, by, (scheme, x, y) => expectSame(scheme, moved(scheme, x, y))),
      settings,
    );
  });

  it("gives the same verdicts and forces for the scheme turned by a quarter", () => {
    fc.assert(
      fc.property(randomScheme, (scheme) => expectSame(scheme, quarterTurned(scheme))),
      settings,
    );
  });

  it("gives the same verdicts and forces for the scheme in a mirror", () => {
    fc.assert(
      fc.property(randomScheme, (scheme) => expectSame(scheme, mirrored(scheme))),
      settings,
    );
  });

  it("brings every load to the ground, but those of units that fall or hang on what falls", () => {
    fc.assert(
      fc.property(randomScheme, (scheme) => {
        const { statics, marks } = assess(scheme);
        const falls = marks.some(({ fact }) => fact.kind === "mechanism" && fact.direction === "falls");
        expect(statics.loadKn).toBeCloseTo(statics.reactionKn + statics.residualKn, 2);
        if (!falls) expect(statics.residualKn).toBe(0);
        else expect(statics.residualKn).toBeGreaterThan(0);
      }),
      settings,
    );
  });

  it("balances moments as well: where the reactions act is where the loads act, while all stands and no post is off centre", () => {
    let compared = 0;
    fc.assert(
      fc.property(randomScheme, (drawn) => {
        const scheme = { ...drawn, posts: [] };
        const { statics, units, marks } = assess(scheme);
        if (marks.some(({ fact }) => fact.kind === "mechanism" || fact.kind === "tips-over")) return;
        compared += 1;
        for (const axis of ["xMm", "yMm"] as const) {
          const acting = units.reduce((sum, { id, weightKn, imposedKn }) => {
            const container = scheme.containers.find((one) => one.id === id);
            return sum + ((axis === "xMm" ? container?.xUm : container?.yUm) ?? NaN) * (weightKn + imposedKn);
          }, 0);
          const given = statics.reactions.reduce((sum, { at, forceKn }) => sum + at[axis] * 1000 * forceKn, 0);
          // In millimetres of the resultant; forces in the assessment are rounded to 1 N.
          expect(Math.abs(acting - given) / statics.loadKn / 1000).toBeLessThan(0.5);
        }
      }),
      settings,
    );
    expect(compared).toBeGreaterThan(40);
  });

  it("never lowers the sum of reactions when load is added to a unit, while nothing falls", () => {
    fc.assert(
      fc.property(randomScheme, fc.nat(), fc.integer({ min: 1, max: 5000 }), (scheme, which, more) => {
        const at = which % scheme.loads.length;
        const loads = scheme.loads.map((load, index) =>
          index === at ? { ...load, pressurePa: load.pressurePa + more } : load,
        );
        const before = assess(scheme).statics;
        const after = assess({ ...scheme, loads }).statics;
        if (before.residualKn === 0) expect(after.reactionKn).toBeGreaterThan(before.reactionKn);
        expect(after.loadKn).toBeGreaterThan(before.loadKn);
      }),
      settings,
    );
  });

  it("lets no bearing pull", () => {
    fc.assert(
      fc.property(randomScheme, (scheme) => {
        for (const { forceKn } of assess(scheme).bearings) expect(forceKn).toBeGreaterThanOrEqual(0);
      }),
      settings,
    );
  });

  it("says works as built of every uncut stack corner on corner on pads", () => {
    fc.assert(
      fc.property(cornerStack, (scheme) => {
        const { verdict, units, statics } = assess(scheme);
        expect(verdict).toBe("works as built");
        expect(units.every((unit) => unit.verdict === "works as built")).toBe(true);
        expect(statics.residualKn).toBe(0);
      }),
      settings,
    );
  });

  it("says works as built of no unit that is cut", () => {
    fc.assert(
      fc.property(randomScheme, (scheme) => {
        const cut = new Set(scheme.openings.map(({ containerId }) => containerId));
        for (const { id, verdict } of assess(scheme).units) if (cut.has(id)) expect(verdict).not.toBe("works as built");
      }),
      settings,
    );
  });

  it("names each mark once", () => {
    fc.assert(
      fc.property(randomScheme, (scheme) => {
        const ids = assess(scheme).marks.map(({ id }) => id);
        expect(new Set(ids).size).toBe(ids.length);
      }),
      settings,
    );
  });
});
