import { describe, expect, it } from "vitest";
import { inOrder } from "../../src/geometry/in-order.ts";
import { analyse } from "../../src/load-path/analysis.ts";
import { buildModel } from "../../src/model/build-model.ts";
import { drawnUnit } from "../strength/drawn-unit.ts";

const railOf = (type: "1AAA" | "1CC") => {
  const { model } = buildModel(analyse(inOrder(drawnUnit({ type }))), [], {});
  const [unit] = model.units;
  const rail = unit?.fragment.beams.find(({ id }) => id.startsWith("bottomRail"));
  const section = unit?.fragment.sections[rail?.section ?? ""];
  if (section === undefined) throw new Error("it has a bottom rail");
  return section;
};

// By hand, plates with square corners, 158×48×30×4.5 of generic purchase specifications: web 158 × 4.5 (711 mm², middle at 79),
// head 43.5 × 4.5 (195.75 at 155.75), foot 25.5 × 4.5 (114.75 at 2.25): centre at 85.09, I = 4.5·158³/12 + 711·6.09² + 195.75·70.66² +
// 114.75·82.84² = 3.270e6 mm⁴. The 162×48×30×4.5 of a 40 ft unit, the same way: 3.481e6 mm⁴.
describe("the bottom side rail of the model", () => {
  it("of a 20 ft unit is that of 20 ft units", () => {
    expect(railOf("1CC").Iy / 3.27e6).toBeCloseTo(1, 2);
  });

  it("of a 40 ft unit is the deeper one", () => {
    expect(railOf("1AAA").Iy / 3.481e6).toBeCloseTo(1, 2);
  });
});
