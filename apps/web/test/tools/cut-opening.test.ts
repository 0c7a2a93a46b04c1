import { containerDimensions } from "@cornerway/engine";
import { describe, expect, it } from "vitest";
import { cutOpening } from "../../src/tools/cut-opening.ts";
import { openWall, wallAgainst } from "../../src/tools/open-wall.ts";
import { schemeOf, unitAt } from "../support/schemes.ts";

const g1 = unitAt("g1", "G1", 0, 0, 0);
const scheme = schemeOf([g1]);

describe("cutOpening(scheme, unit, face, from, to, reach)", () => {
  it("takes the rectangle between two points, whichever is first, on the 10 mm grid", () => {
    const one = cutOpening(scheme, g1, "right", { uMm: 3004, vMm: 912 }, { uMm: 5006, vMm: 2098 }, 0);
    const other = cutOpening(scheme, g1, "right", { uMm: 5006, vMm: 2098 }, { uMm: 3004, vMm: 912 }, 0);
    expect(one).toMatchObject({ offsetUm: 3_000_000, sillUm: 910_000, widthUm: 2_010_000, heightUm: 1_190_000 });
    expect(other).toMatchObject({ offsetUm: 3_000_000, sillUm: 910_000, widthUm: 2_010_000, heightUm: 1_190_000 });
  });

  it("is drawn to the edge of the sheet within reach, so that the rail stays whole", () => {
    const { v0 } = containerDimensions("1AAA").sheetZone("right");
    const door = cutOpening(scheme, g1, "right", { uMm: 3000, vMm: v0 + 40 }, { uMm: 4000, vMm: 2200 }, 60);
    expect(door?.sillUm).toBe(v0 * 1000);
    expect(door?.use).toBe("door");
  });

  it("never leaves the face", () => {
    const cut = cutOpening(scheme, g1, "right", { uMm: -500, vMm: -500 }, { uMm: 99_000, vMm: 9000 }, 0);
    expect(cut).toMatchObject({ offsetUm: 0, sillUm: 0, widthUm: 12_192_000, heightUm: 2_896_000 });
  });

  it("is nothing while the rectangle is under 100 mm", () => {
    expect(cutOpening(scheme, g1, "right", { uMm: 3000, vMm: 900 }, { uMm: 3060, vMm: 2000 }, 0)).toBeNull();
  });

  it("high in the wall is a window, in the roof a hatch", () => {
    const high = cutOpening(scheme, g1, "left", { uMm: 3000, vMm: 1000 }, { uMm: 4000, vMm: 2000 }, 0);
    const roof = cutOpening(scheme, g1, "roof", { uMm: 3000, vMm: 500 }, { uMm: 4000, vMm: 1500 }, 0);
    expect([high?.use, high?.tag, roof?.use]).toEqual(["window", "W1", "hatch"]);
  });
});

describe("openWall(scheme, unit, face)", () => {
  const g2 = unitAt("g2", "G2", 0, 2438, 0);
  const pair = schemeOf([g1, g2]);

  it("finds the wall of the unit that stands against this one, back to back", () => {
    expect(wallAgainst(pair, g1, "left")).toMatchObject({ unit: { id: "g2" }, face: "right" });
    expect(wallAgainst(pair, g1, "right")).toBeNull();
  });

  it("takes out both sheets where two units stand side by side, one where the wall is free", () => {
    const cuts = openWall(pair, g1, "left").map((operation) => operation.kind === "opening.cut" && operation.opening);
    expect(cuts).toMatchObject([
      { containerId: "g1", face: "left", use: "open-wall" },
      { containerId: "g2", face: "right", use: "open-wall" },
    ]);
    expect(openWall(pair, g1, "right")).toHaveLength(1);
  });
});
