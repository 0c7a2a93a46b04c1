import { describe, expect, it } from "vitest";
import type { Scheme } from "@cornerway/schema";
import { strength } from "../../src/strength.ts";
import { drawnUnit } from "./drawn-unit.ts";

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
