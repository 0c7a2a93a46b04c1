import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addElementForces, addElementForceSizes, type Element } from "../../src/elements/element.ts";
import { addUniformLoad, member, memberEndForces, toLocalComponents } from "../../src/elements/member.ts";
import { memberAxes } from "../../src/model/member-axes.ts";
import { panelAxes } from "../../src/model/panel-axes.ts";
import { panelFlow, shearPanel } from "../../src/elements/shear-panel.ts";
import { nodeSpring } from "../../src/elements/spring.ts";
import { cross, plus, times, type Vector } from "../../src/numerics/vector.ts";

const settings = { seed: 20260102, numRuns: 200 };
const place = fc.tuple(
  fc.integer({ min: -4000, max: 4000 }),
  fc.integer({ min: -4000, max: 4000 }),
  fc.integer({ min: -4000, max: 4000 }),
);
const arm = fc.tuple(
  fc.integer({ min: -200, max: 200 }),
  fc.integer({ min: -200, max: 200 }),
  fc.integer({ min: -200, max: 200 }),
);
const released = fc.uniqueArray(fc.integer({ min: 0, max: 11 }), { maxLength: 4 });
const section = { E: 200_000, G: 76_923, A: 1039.5, Iy: 3_477_144, Iz: 135_767, J: 7017 };

interface Placed {
  element: Element;
  places: Vector[];
}

const members = fc
  .record({ start: place, end: place, armI: arm, armJ: arm, released, shear: fc.boolean(), arms: fc.boolean() })
  .map((drawn) => {
    const ends: [Vector, Vector] = drawn.arms
      ? [plus(drawn.start, drawn.armI), plus(drawn.end, drawn.armJ)]
      : [drawn.start, drawn.end];
    const axes = memberAxes(...ends, undefined);
    if (axes === null || axes.lengthMm < 50) return null;
    const withShear = drawn.shear ? { ...section, Asy: 500, Asz: 700 } : section;
    const element = member({
      nodes: [0, 1],
      axes,
      section: withShear,
      released: drawn.released,
      armI: drawn.arms ? drawn.armI : null,
      armJ: drawn.arms ? drawn.armJ : null,
    });
    return { element, places: [drawn.start, drawn.end] as Vector[], ends };
  })
  .filter((drawn) => drawn !== null);

const panels = fc
  .record({
    corner: place,
    along: arm,
    other: arm,
    width: fc.integer({ min: 100, max: 3000 }),
    height: fc.integer({ min: 100, max: 3000 }),
    arms: fc.tuple(arm, arm, arm, arm),
    withArms: fc.boolean(),
  })
  .map((drawn) => {
    const axes = memberAxes([0, 0, 0], drawn.along, drawn.other);
    if (axes === null) return null;
    const [across, up] = [times(axes.x, drawn.width), times(axes.z, drawn.height)];
    const corners = [
      drawn.corner,
      plus(drawn.corner, across),
      plus(plus(drawn.corner, across), up),
      plus(drawn.corner, up),
    ] as [Vector, Vector, Vector, Vector];
    const shape = panelAxes(corners);
    if (shape === null) return null;
    const nodes = drawn.withArms ? corners.map((c, k) => plus(c, times(drawn.arms[k] ?? [0, 0, 0], -1))) : corners;
    const element = shearPanel({
      nodes: [0, 1, 2, 3],
      axes: shape,
      shearStiffness: 115_638,
      uprightStiffness: 340_585,
      alongStiffness: 333,
      arms: drawn.withArms ? drawn.arms : null,
    });
    return { element, places: nodes, shape };
  })
  .filter((drawn) => drawn !== null);

const springs = place.map((at): Placed => ({
  element: nodeSpring(0, 1, [1e6, 2e5, 3e4, 4e8, 5e7, 6e6]),
  places: [at, at],
}));
const family: [string, fc.Arbitrary<Placed>][] = [
  ["member", members],
  ["shear panel", panels],
  ["spring between nodes at one place", springs],
];

function rigid(places: readonly Vector[], shift: Vector, turn: Vector): Float64Array {
  return Float64Array.from(places.flatMap((at) => [...plus(shift, cross(turn, at)), ...turn]));
}

describe.each(family)("every %s", (_, drawn) => {
  it("answers a rigid movement with no force, to 1e-12 of the terms that cancel", () => {
    fc.assert(
      fc.property(drawn, arm, arm, ({ element, places }, shift, turn) => {
        const movement = rigid(places, shift, times(turn, 1e-3));
        const forces = new Float64Array(movement.length);
        const sizes = new Float64Array(movement.length);
        addElementForces(element, movement, forces);
        addElementForceSizes(element, movement, sizes);
        const most = Math.max(...sizes);
        expect(Math.max(...forces.map(Math.abs))).toBeLessThanOrEqual(1e-12 * most + Number.MIN_VALUE);
      }),
      settings,
    );
  });

  it("has a symmetric stiffness, to rounding", () => {
    fc.assert(
      fc.property(drawn, ({ element: { matrix, freedoms } }) => {
        const size = freedoms.length;
        const most = Math.max(...matrix.map(Math.abs));
        for (let i = 0; i < size; i++) {
          for (let j = 0; j < i; j++)
            expect(Math.abs((matrix[i * size + j] ?? 0) - (matrix[j * size + i] ?? 0))).toBeLessThanOrEqual(
              1e-13 * most,
            );
        }
      }),
      settings,
    );
  });

  it("stores no negative energy in any movement, beyond rounding", () => {
    fc.assert(
      fc.property(
        drawn,
        fc.array(fc.integer({ min: -100, max: 100 }), { minLength: 24, maxLength: 24 }),
        ({ element, places }, values) => {
          const movement = Float64Array.from(values.slice(0, places.length * 6), (v, f) =>
            f % 6 < 3 ? v / 10 : v / 1e4,
          );
          const forces = new Float64Array(movement.length);
          const sizes = new Float64Array(movement.length);
          addElementForces(element, movement, forces);
          addElementForceSizes(element, movement, sizes);
          const energy = movement.reduce((sum, v, f) => sum + v * (forces[f] ?? 0), 0);
          const terms = movement.reduce((sum, v, f) => sum + Math.abs(v) * (sizes[f] ?? 0), 0);
          expect(energy).toBeGreaterThanOrEqual(-1e-12 * terms);
        },
      ),
      settings,
    );
  });
});

describe("a member", () => {
  it("passes on to its nodes exactly the resultant of its uniform load, wherever its arms and releases are", () => {
    fc.assert(
      fc.property(members, arm, ({ element, places, ends }, load) => {
        fc.pre(element.drivenBy.length === 0);
        const forces = new Float64Array(12);
        addUniformLoad(element, toLocalComponents(element.facts.axes, load), forces);
        const L = element.facts.axes.lengthMm;
        const total = times(load, L);
        const sum = [0, 1, 2].map((c) => (forces[c] ?? 0) + (forces[6 + c] ?? 0));
        const middle = times(plus(ends[0], ends[1]), 0.5);
        const moment = [0, 1].reduce<Vector>(
          (m, n) => {
            const f = forces.subarray(n * 6, n * 6 + 6);
            return plus(
              m,
              plus(cross(places[n] ?? [0, 0, 0], [f[0] ?? 0, f[1] ?? 0, f[2] ?? 0]), [f[3] ?? 0, f[4] ?? 0, f[5] ?? 0]),
            );
          },
          [0, 0, 0],
        );
        const scale = Math.max(1, ...total.map(Math.abs));
        sum.forEach((value, c) => expect(Math.abs(value - (total[c] ?? 0))).toBeLessThan(1e-10 * scale));
        moment.forEach((value, c) =>
          expect(Math.abs(value - (cross(middle, total)[c] ?? 0))).toBeLessThan(1e-10 * scale * 10_000),
        );
      }),
      settings,
    );
  });

  it("transmits no force through a released freedom", () => {
    fc.assert(
      fc.property(
        members,
        fc.array(fc.integer({ min: -100, max: 100 }), { minLength: 12, maxLength: 12 }),
        ({ element }, values) => {
          const ends = memberEndForces(
            element,
            Float64Array.from(values, (v) => v / 1e3),
            [0, 0, 0],
          );
          for (const r of element.facts.released) expect(ends[r]).toBe(0);
        },
      ),
      settings,
    );
  });
});

describe("a shear panel", () => {
  it("patch: answers a constant shear strain with the flow Gt·g exactly, in any plane", () => {
    fc.assert(
      fc.property(panels, fc.integer({ min: -50, max: 50 }), ({ element, places, shape }, strain) => {
        fc.pre(element.facts.arms === null);
        const g = strain * 1e-5;
        const movement = Float64Array.from(
          places.flatMap((at) => {
            const height = at.reduce((sum, value, c) => sum + (value - (places[0]?.[c] ?? 0)) * (shape.e2[c] ?? 0), 0);
            return [...times(shape.e1, g * height), 0, 0, 0];
          }),
        );
        expect(panelFlow(element, movement)).toBeCloseTo(115_638 * g, 6);
      }),
      settings,
    );
  });
});
