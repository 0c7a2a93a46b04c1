import { describe, expect, it } from "vitest";
import type { Scheme } from "@cornerway/schema";
import { buildingOf } from "../../src/geometry/building.ts";
import { strength } from "../../src/strength.ts";
import { seatParts } from "../../src/strength/seat-parts.ts";
import type { SolvedRun } from "../../src/strength/solve-runs.ts";
import { drawnUnit } from "./drawn-unit.ts";
import { basis } from "./one-run.ts";

/** An upper unit 1.5 m along the one below, its front end on seats on both top rails. */
function overhanging(seat: { readonly lengthUm: number; readonly stiffenerUm?: number }): Scheme {
  const drawn = drawnUnit({ type: "1CC", above: 1 });
  const [lower, upper] = drawn.containers;
  if (lower === undefined || upper === undefined) throw new Error("there are two");
  const place = (yMm: number, n: number): Scheme["seats"][number] => ({
    id: `s${n}`,
    tag: `S${n}`,
    upperId: upper.id,
    lowerId: lower.id,
    xUm: (3029 - 102.5) * 1000,
    yUm: yMm * 1000,
    widthUm: 60_000,
    packingUm: 12_500,
    heldDown: true,
    ...seat,
  });
  return {
    ...drawn,
    containers: [lower, { ...upper, xUm: 1_500_000 }],
    seats: [place(-1189, 1), place(1189, 2)],
  };
}

/** Use of the bottom rail of the upper unit over the corner of the lower one, by what decides there. */
function overTheCorner(scheme: Scheme) {
  const answer = strength(scheme);
  if (!answer.accepted) throw new Error("it is accepted");
  const found = answer.results.find(
    ({ ownerId, element, place }) =>
      ownerId === "u2" && element === "bottom side rail" && place.startsWith("at bottom rail"),
  );
  if (found === undefined) throw new Error("the rail is pressed there");
  return found;
}

describe("a seat that is drawn", () => {
  const short = overTheCorner(overhanging({ lengthUm: 100_000 }));
  const long = overTheCorner(overhanging({ lengthUm: 300_000 }));
  const stiffened = overTheCorner(overhanging({ lengthUm: 100_000, stiffenerUm: 10_000 }));

  it("presses less the longer it is", () => {
    expect(long.utilisation ?? Infinity).toBeLessThan(short.utilisation ?? 0);
  });

  it("is carried past the web by a stiffener over it, which uses less than half of it", () => {
    expect(short.limitState).toBe("web crippling");
    expect(stiffened.utilisation ?? Infinity).toBeLessThan((short.utilisation ?? 0) / 2);
    expect(JSON.stringify(stiffened.working)).toContain("Bearing stiffener in the web");
  });
});

// A 40 ft unit across the middle of one below, on two seats on its top rails: 30 mm of flange come down on plates of 200 × 60 × 12.5.
// By hand at 30 kN: 30/200 = 150 N/mm over n = (200 − 30)/2 = 85 mm, 0.542 kN·m; φ F_y b t²/4 of A36 0.9 · 248.2 · 60 · 12.5²/4 =
// 0.524 kN·m. Use 1.03.
describe("the plate of a seat under a rail that crosses it", () => {
  const bearing = {
    planned: {
      above: { unitId: "u2", seat: { side: "left", rail: "bottom", u: 6000 } },
      below: { point: { unitId: "u1", seat: { side: "left", rail: "top", u: 6000 } } },
      seatId: "s1",
    },
    name: "link",
    on: "link",
    ...{ ownerId: "u2", place: "bottom rail left 6.00 m" },
  } as const;
  const drawn = drawnUnit({ above: 1 });
  const turned = (turnMdeg: number, lengthUm = 200_000): Scheme => ({
    ...drawn,
    containers: drawn.containers.map((one) => (one.id === "u2" ? { ...one, turnMdeg } : one)),
    seats: [
      {
        ...{ id: "s1", tag: "S1", upperId: "u2", lowerId: "u1", xUm: 0, yUm: 1_189_000 },
        ...{ lengthUm, widthUm: 60_000, packingUm: 12_500, heldDown: false },
      },
    ],
  });
  const plateOf = (scheme: Scheme) => {
    const building = buildingOf(scheme);
    const [part] = seatParts([bearing], scheme.seats, building, basis.factored);
    if (part === undefined) throw new Error("a seat has a plate");
    const solved = { bearing: () => [0, 0, 30_000] } as unknown as SolvedRun;
    return part.decide(solved);
  };

  it("bends as two cantilevers beyond the flange", () => {
    const { limitState, utilisation } = plateOf(turned(90_000));
    expect(limitState).toBe("plate bending");
    expect(utilisation / (0.542 / 0.524)).toBeCloseTo(1, 2);
  });

  it("bends more the longer it is, with the square of what it reaches beyond", () => {
    const [short, long] = [plateOf(turned(90_000)), plateOf(turned(90_000, 450_000))];
    expect(long.utilisation / short.utilisation).toBeCloseTo(((210 * 210) / 450 / (85 * 85)) * 200, 3);
  });

  it("is pressed flat under a rail that runs along it", () => {
    expect(plateOf(turned(0)).limitState).toBe("bearing on steel");
  });
});
