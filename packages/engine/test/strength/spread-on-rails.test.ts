import { describe, expect, it } from "vitest";
import { buildingOf } from "../../src/geometry/building.ts";
import type { ActionCase } from "../../src/loads/action-case.ts";
import { spreadOnRails } from "../../src/strength/spread-on-rails.ts";
import { drawnUnit } from "./drawn-unit.ts";

const scheme = drawnUnit({});
const turned = { ...scheme, containers: scheme.containers.map((unit) => ({ ...unit, turnMdeg: 90_000 })) };
const push = (zN: number): ActionCase => ({
  id: "E",
  symbol: "Eh",
  loads: [{ kind: "point", elementId: "u1", at: { xMm: 600, yMm: -120, zMm: 2896 }, xN: 3000, yN: 10_000, zN }],
});

describe("spreadOnRails", () => {
  // Turning about the middle: 600·10 000 + 120·3000 = 6.36 kN·m.
  it.each([
    ["along x", scheme],
    ["turned a quarter", turned],
  ])("keeps the resultant and its turning moment of 6.36 kN·m, unit %s", (_, drawn) => {
    const { loads } = spreadOnRails(push(0), buildingOf(drawn));
    let [x, y, turning] = [0, 0, 0];
    for (const load of loads) {
      if (load.kind !== "point") continue;
      x += load.xN;
      y += load.yN;
      turning += load.at.xMm * load.yN - load.at.yMm * load.xN;
    }
    expect(loads).toHaveLength(40);
    expect(x).toBeCloseTo(3000, 6);
    expect(y).toBeCloseTo(10_000, 6);
    expect(turning).toBeCloseTo(6.36e6, 3);
  });

  it("leaves weights of machines where they stand", () => {
    expect(spreadOnRails(push(-500), buildingOf(scheme))).toEqual(push(-500));
  });
});
