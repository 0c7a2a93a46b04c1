import { describe, expect, it } from "vitest";
import {
  acos,
  asin,
  atan,
  atan2,
  cbrt,
  cos,
  cosDegThousandths,
  exp,
  hypot,
  log,
  log10,
  pow,
  sin,
  sinDegThousandths,
  tan,
  tanh,
} from "../../src/numerics/elementary.ts";

/** Distance in units in the last place of the outside reference, the host's own Math (accurate to about 1 ulp). */
function unitsApart(value: number, reference: number): number {
  if (Object.is(value, reference) || (Number.isNaN(value) && Number.isNaN(reference))) return 0;
  const size = Math.abs(reference);
  const ulp = Math.max(2 ** (Math.floor(Math.log2(size)) - 52), Number.MIN_VALUE);
  return Math.abs(value - reference) / ulp;
}

/** A fixed multiplicative generator (Lehmer, modulus 2^31 − 1) so that the grid is the same everywhere. */
function grid(count: number, low: number, high: number): number[] {
  let state = 20260101;
  return Array.from({ length: count }, () => {
    state = (state * 48271) % 2147483647;
    return low + ((high - low) * state) / 2147483647;
  });
}

function worst(points: readonly number[], ours: (x: number) => number, host: (x: number) => number): number {
  return points.reduce((most, x) => Math.max(most, unitsApart(ours(x), host(x))), 0);
}

describe("elementary functions against the host's Math", () => {
  const angles = [...grid(20000, -10, 10), ...grid(20000, -1e6, 1e6), ...grid(2000, -1e-8, 1e-8)];

  it("sin and cos lie within 1 ulp for angles up to a million radians", () => {
    expect(worst(angles, sin, Math.sin)).toBeLessThanOrEqual(1);
    expect(worst(angles, cos, Math.cos)).toBeLessThanOrEqual(1);
  });

  it("sin and cos lie within 1 ulp of the host at the doubles nearest to multiples of a quarter turn", () => {
    const near = Array.from({ length: 4000 }, (_, n) => (n - 2000) * (Math.PI / 2));
    expect(worst(near, sin, Math.sin)).toBeLessThanOrEqual(1);
    expect(worst(near, cos, Math.cos)).toBeLessThanOrEqual(1);
  });

  it("tan lies within 3 ulp", () => expect(worst(angles, tan, Math.tan)).toBeLessThanOrEqual(3));

  it("atan lies within 1 ulp, atan2 within 2 ulp all around", () => {
    expect(worst([...grid(20000, -8, 8), ...grid(5000, -1e9, 1e9)], atan, Math.atan)).toBeLessThanOrEqual(1);
    const xs = grid(20000, -5, 5);
    const ys = grid(40000, -5, 5).slice(20000);
    const most = xs.reduce((m, x, k) => Math.max(m, unitsApart(atan2(ys[k] ?? 0, x), Math.atan2(ys[k] ?? 0, x))), 0);
    expect(most).toBeLessThanOrEqual(2);
  });

  it("atan2 agrees exactly with the host on axes, signed zeros and infinities", () => {
    const special = [0, -0, 1, -1, Infinity, -Infinity, NaN];
    for (const y of special) for (const x of special) expect(atan2(y, x), `atan2(${y}, ${x})`).toBe(Math.atan2(y, x));
  });

  it("asin and acos lie within 3 ulp away from the ends of their range", () => {
    expect(worst(grid(10000, -0.99, 0.99), asin, Math.asin)).toBeLessThanOrEqual(3);
    expect(worst(grid(10000, -0.99, 0.99), acos, Math.acos)).toBeLessThanOrEqual(3);
  });

  it("exp lies within 1 ulp over its whole range, tanh within 4", () => {
    expect(worst([...grid(20000, -700, 709), ...grid(5000, -1, 1)], exp, Math.exp)).toBeLessThanOrEqual(1);
    expect(worst([...grid(20000, -20, 20), ...grid(5000, -0.5, 0.5)], tanh, Math.tanh)).toBeLessThanOrEqual(4);
    expect([exp(Infinity), exp(-Infinity), exp(0), exp(710), exp(-746)]).toEqual([Infinity, 0, 1, Infinity, 0]);
  });

  it("log lies within 1 ulp for small, middle and large arguments", () => {
    const points = [...grid(20000, 1e-3, 10), ...grid(5000, 1e-300, 1e-290), ...grid(5000, 1, 1e300), 5e-324];
    expect(worst(points, log, Math.log)).toBeLessThanOrEqual(1);
    expect([log(0), log(1), log(Infinity)]).toEqual([-Infinity, 0, Infinity]);
    expect(log10(1e15)).toBe(15);
  });

  it("pow lies within 1 ulp for bases 1e-3 to 1e3 and exponents −40 to 40", () => {
    const bases = [...grid(20000, 1e-3, 3), ...grid(5000, 3, 1000)];
    const exponents = grid(60000, -40, 40).slice(30000);
    const most = bases.reduce(
      (m, x, k) => Math.max(m, unitsApart(pow(x, exponents[k] ?? 1), Math.pow(x, exponents[k] ?? 1))),
      0,
    );
    expect(most).toBeLessThanOrEqual(1);
  });

  it("pow agrees exactly with the host on special values", () => {
    const special = [0, -0, 1, -1, 0.5, -0.5, 2, -2, 3, -3, Infinity, -Infinity, NaN, 1e300, 1e-300];
    for (const x of special) for (const y of special) expect(pow(x, y), `pow(${x}, ${y})`).toBe(Math.pow(x, y));
  });

  it("cbrt lies within 1 ulp, and is exact on cubes of whole numbers", () => {
    expect(
      worst([...grid(20000, -1000, 1000), ...grid(2000, 1e-300, 1e-299), 5e-324, 1e308], cbrt, Math.cbrt),
    ).toBeLessThanOrEqual(1);
    for (let n = -50; n <= 50; n++) expect(cbrt(n * n * n)).toBe(n);
  });

  it("hypot lies within 2 ulp and neither overflows nor underflows", () => {
    const xs = grid(20000, -100, 100);
    expect(xs.reduce((m, x) => Math.max(m, unitsApart(hypot(x, 3.7), Math.hypot(x, 3.7))), 0)).toBeLessThanOrEqual(2);
    expect(unitsApart(hypot(3e300, 4e300), 5e300)).toBeLessThanOrEqual(1);
    expect(unitsApart(hypot(3e-300, 4e-300), 5e-300)).toBeLessThanOrEqual(1);
    expect(hypot(1, 2, 2)).toBe(3);
  });
});

describe("elementary functions against closed values", () => {
  it("sin π/6 is a half and cos π/3 is a half to 1 ulp (geometry of the hexagon)", () => {
    expect(unitsApart(sin(Math.PI / 6), 0.5)).toBeLessThanOrEqual(1);
    expect(unitsApart(cos(Math.PI / 3), 0.5)).toBeLessThanOrEqual(1);
  });

  it("sin and cos in thousandths of a degree are exact at every quarter turn, forwards and backwards", () => {
    for (let turn = -8; turn <= 8; turn++) {
      const quarter = ((turn % 4) + 4) % 4;
      expect(sinDegThousandths(turn * 90_000) + 0).toBe([0, 1, 0, -1][quarter]);
      expect(cosDegThousandths(turn * 90_000) + 0).toBe([1, 0, -1, 0][quarter]);
    }
  });

  it("sin² + cos² stays within 2e-16 of one at every degree, and sin 30° is exactly a half", () => {
    for (let degree = 0; degree < 360; degree++) {
      const [s, c] = [sinDegThousandths(degree * 1000), cosDegThousandths(degree * 1000)];
      expect(Math.abs(s * s + c * c - 1)).toBeLessThanOrEqual(2.3e-16);
    }
    expect(sinDegThousandths(30_000)).toBe(0.5);
    expect(cosDegThousandths(-60_000)).toBe(0.5);
  });

  it("an angle beyond 2^20 quarter turns, or a fraction of a thousandth of a degree, is refused as misuse", () => {
    expect(() => sin(1e7)).toThrow(RangeError);
    expect(() => sinDegThousandths(0.5)).toThrow(RangeError);
  });
});
