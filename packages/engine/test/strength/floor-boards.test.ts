import { describe, expect, it } from "vitest";
import { checkBasisOf } from "../../src/checks/check-basis.ts";
import { floorResults } from "../../src/strength/floor-results.ts";
import { pressed } from "./one-run.ts";
import { drawnUnit } from "./drawn-unit.ts";
import { basis } from "./one-run.ts";

/**
 * By hand, boards over 308 mm: a wheel of 3630 · 9.81 = 35 610 N on 142 cm², 180 wide, 78.9 long, bends 488 mm of them with
 * 35 610 (308/4 − 78.9/8)/488 = 4899 N·mm/mm (ISO 1496-1 test 8, from memory); 0.9 of it, as judged.
 */
const CAN = 0.9 * ((35_610.3 * (77 - 78.889 / 8)) / 488);

describe("floor boards", () => {
  it("under 5 kPa and 9 kN at one place: 0.005 · 308²/8 + 9000/4 over what the wheel proves", () => {
    const load = { pressurePa: 5000, pointN: 9000, meaning: "a load", spanMm: 308 };
    const check = checkBasisOf("IBC 2021", "LRFD").floorBoards(load);
    expect(check.ok && check.utilisation).toBeCloseTo(((0.005 * 308 * 308) / 8 + 2250) / CAN, 4);
  });

  it("are judged under finishes and imposed load: 1.2 · 1 + 1.6 · 2.4 kPa", () => {
    const scheme = drawnUnit({ type: "1CC", imposedPa: 2400 });
    const [result, ...others] = floorResults(scheme, [pressed(scheme, 2400)], basis);
    expect(others).toEqual([]);
    expect(result?.utilisation).toBeCloseTo((((1.2 * 1000 + 1.6 * 2400) / 1e6) * 308 * 308) / 8 / CAN, 4);
    expect(result?.covered).toBe("bounded");
  });
});
