import type { Mark } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { brokenWays } from "../../src/drawing/broken-ways.ts";
import { elevationModel } from "../../src/drawing/elevation-model.ts";
import { drawnUnit } from "../strength/drawn-unit.ts";

const scheme = drawnUnit({ above: 1, openings: [{ face: "right", framed: true, fromMm: 1603.5, widthMm: 3000 }] });
const south = elevationModel(scheme, "south");
const [face] = south.faces.filter(({ openings }) => openings.length > 0);
const [opening] = face?.openings ?? [];
if (opening === undefined) throw new Error("drawn");

const markOf = (fact: Mark["fact"], elements: string[], verdict: Mark["verdict"]): Mark => ({
  ...{ id: "m", fact, verdict, elements, certainty: "derived", basis: "" },
  at: { xMm: opening.u0Mm + 1000, yMm: -1219, zMm: 2896 },
});
const over = { kind: "load-over-opening", forceKn: 60, railCut: false } as const;
const tips = { kind: "tips-over", outsideMm: 10, weightKn: 1, momentKnm: 1, towards: "south" } as const;

describe("the ways load would have to go", () => {
  it("lead to either side round an opening that nothing bridges, never over it", () => {
    const ways = brokenWays([markOf(over, [opening.opening.id], "does not work")], south);
    expect(ways).toHaveLength(2);
    for (const { points } of ways)
      for (const { uMm, vMm } of points) {
        const inside = uMm > opening.u0Mm && uMm < opening.u1Mm && vMm > opening.z0Mm && vMm < opening.z1Mm;
        expect(inside).toBe(false);
      }
  });

  it("lead straight down to the ground from what tips over", () => {
    const [way] = brokenWays([markOf(tips, ["u2"], "does not work")], south);
    expect(way?.points).toEqual([
      { uMm: opening.u0Mm + 1000, vMm: 2896 },
      { uMm: opening.u0Mm + 1000, vMm: 0 },
    ]);
  });

  it("are none of what works, is not checked, or is not seen from here", () => {
    expect(brokenWays([markOf(over, [opening.opening.id], "works with steel")], south)).toEqual([]);
    expect(brokenWays([markOf(tips, ["u2"], "not checked")], south)).toEqual([]);
    expect(brokenWays([markOf(tips, ["elsewhere"], "does not work")], south)).toEqual([]);
  });
});
