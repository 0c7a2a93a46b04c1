import { describe, expect, it } from "vitest";
import { isoProofLoad } from "../../src/checks/iso-proof-load.ts";
import { strengthBasisFor } from "../../src/strength.ts";
import { forcePart } from "../../src/strength/force-part.ts";
import type { SolvedRun } from "../../src/strength/solve-runs.ts";

const { factored: basis } = strengthBasisFor("IBC 2021");
const named = { ownerId: "unit", element: "corner fitting", place: "at a corner", level: "strength" } as const;
/** Pressed by as many newtons in any run. */
const pressedBy = (forceN: number, by: unknown, times: number) => {
  let asked = 0;
  const part = forcePart(
    named,
    () => forceN,
    (force) => {
      asked++;
      return [basis.cornerFitting("compression", times * force, isoProofLoad({ edition: "1990" }))];
    },
    { basis, by },
  );
  // nothing is asked of the run
  return { use: part.use({} as SolvedRun), asked };
};

describe("a part under one force", () => {
  const first = pressedBy(84_800, "a fitting of its own", 1);
  const alike = pressedBy(169_600, "a fitting of its own", 1);
  const other = pressedBy(84_800, "a fitting under a lever", 3);

  it("shares its working at a kilonewton with parts of which all it hangs on is the same", () => {
    expect([first.asked, alike.asked]).toEqual([1, 0]);
    expect(alike.use).toBeCloseTo(2 * first.use, 12);
  });

  it("has a working of its own where anything is different", () => {
    expect(other.asked).toBe(1);
    expect(other.use).toBeCloseTo(3 * first.use, 12);
  });
});
