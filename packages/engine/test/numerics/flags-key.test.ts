import { describe, expect, it } from "vitest";
import fc from "fast-check";
import { flagsKey } from "../../src/numerics/flags-key.ts";

describe("the key of flags", () => {
  it("is equal exactly for equal flags", () => {
    const flags = fc.uint8Array({ minLength: 37, maxLength: 37, max: 1 });
    fc.assert(
      fc.property(flags, fc.integer({ min: 0, max: 36 }), (one, at) => {
        expect(flagsKey(one)).toBe(flagsKey(one.slice()));
        const other = one.map((flag, n) => (n === at ? 1 - flag : flag));
        expect(flagsKey(other)).not.toBe(flagsKey(one));
      }),
      { seed: 20260101, numRuns: 200 },
    );
  });
});
