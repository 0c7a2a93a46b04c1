import { assess, placeContainer, toSite } from "@cornerway/engine";
import { Assessment, type Scheme } from "@cornerway/schema";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { freeForce } from "../src/load-path/free-force.ts";
import { withJoints } from "../../../tests/support/random-joints.ts";
import {
  cornerStack,
  mirrored,
  moved,
  quarterTurned,
  randomScheme as plainScheme,
} from "../../../tests/support/random-scheme.ts";

/** Half of the schemes with beams, seats, ties, locks, level errors and free loads. */
const randomScheme = fc.oneof(plainScheme, withJoints(plainScheme));

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
          freeLoads: scheme.freeLoads.toReversed(),
          beams: scheme.beams.toReversed(),
          seats: scheme.seats.toReversed(),
          ties: scheme.ties.toReversed(),
          locks: scheme.locks.toReversed(),
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
        const free = marks.flatMap(({ fact, verdict }) =>
          fact.kind === "mechanism" && verdict === "does not work" ? [fact.direction] : [],
        );
        const falls = free.includes("falls");
        if (free.includes("lifts")) return;
        expect(statics.loadKn).toBeCloseTo(statics.reactionKn + statics.residualKn, 2);
        if (!falls) expect(statics.residualKn).toBe(0);
        else expect(statics.residualKn).toBeGreaterThan(0);
      }),
      settings,
    );
  });

  it("balances moments as well: where the reactions act is where the loads act, while all stands on no post or beam, whose axis is taken", () => {
    let compared = 0;
    fc.assert(
      fc.property(randomScheme, (drawn) => {
        const scheme = { ...drawn, posts: [], beams: [] };
        const { statics, units, marks } = assess(scheme);
        if (marks.some(({ fact }) => fact.kind === "mechanism" || fact.kind === "tips-over")) return;
        compared += 1;
        for (const axis of ["xMm", "yMm"] as const) {
          const acting = units.reduce((sum, { id, weightKn, imposedKn }) => {
            const container = scheme.containers.find((one) => one.id === id);
            const at = (axis === "xMm" ? container?.xUm : container?.yUm) ?? NaN;
            return sum + at * (weightKn + imposedKn) + offMiddle(scheme, id)[axis] * 1000;
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

  it("lets no bearing pull but those held down", () => {
    let pulls = 0;
    fc.assert(
      fc.property(randomScheme, (scheme) => {
        for (const { forceKn, heldById } of assess(scheme).bearings) {
          if (heldById === undefined) expect(forceKn).toBeGreaterThanOrEqual(0);
          else if (forceKn < 0) pulls += 1;
        }
      }),
      settings,
    );
    expect(pulls).toBeGreaterThan(5);
  });

  it("holds nothing down worse for a hold-down more: what stands without it stands with it", () => {
    fc.assert(
      fc.property(withJoints(plainScheme), (scheme) => {
        const loose = {
          ...scheme,
          locks: [],
          seats: scheme.seats.map((seat) => ({ ...seat, heldDown: false })),
        };
        const tipping = (one: Scheme) =>
          assess(one).marks.flatMap(({ id, fact, verdict }) =>
            fact.kind === "tips-over" && verdict === "does not work" && fact.whenEmpty === undefined ? [id] : [],
          );
        const before = tipping(loose);
        // Pulls load what is below: only the units on top of all others are sure to gain.
        const onTop = (id: string) => {
          const unit = scheme.containers.find((one) => `tips-over:${one.id}` === id);
          return unit !== undefined && scheme.containers.every(({ zUm }) => zUm <= unit.zUm);
        };
        for (const id of tipping(scheme).filter(onTop)) expect(before).toContain(id);
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

  it("meets beams, seats, ties, locks and free loads of every kind that is drawn at random", () => {
    const met = new Set<string>();
    for (const scheme of fc.sample(withJoints(plainScheme), settings))
      for (const { fact } of assess(scheme).marks) met.add(fact.kind);
    const drawn = ["borne-on-beam", "beam-carries", "beam-end-without-support", "beam-lifts", "seat-without-bearing"];
    const joined = ["seat-packing", "tie-cannot-serve", "lock-cannot-serve", "load-off-unit", "section-unknown"];
    expect([...met]).toEqual(expect.arrayContaining([...drawn, ...joined]));
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

/** Moment of the free loads of a unit about its middle, in site axes, kN mm. */
function offMiddle(scheme: Scheme, unitId: string): { xMm: number; yMm: number } {
  const unit = scheme.containers.find(({ id }) => id === unitId);
  if (unit === undefined) return { xMm: NaN, yMm: NaN };
  const frame = placeContainer(unit);
  const { lengthMm, widthMm } = frame.dimensions;
  return scheme.freeLoads
    .filter(({ containerId }) => containerId === unitId)
    .flatMap((load) => freeForce(load, lengthMm, widthMm) ?? [])
    .reduce(
      (sum, { forceKn, xMm, yMm }) => {
        const at = toSite(frame.frame, { xMm, yMm, zMm: 0 });
        return {
          xMm: sum.xMm + forceKn * (at.xMm - frame.frame.xMm),
          yMm: sum.yMm + forceKn * (at.yMm - frame.frame.yMm),
        };
      },
      { xMm: 0, yMm: 0 },
    );
}
