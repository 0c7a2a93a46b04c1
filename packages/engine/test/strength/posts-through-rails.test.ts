import { describe, expect, it } from "vitest";
import { assessStrength } from "../../src/assess-strength.ts";
import { padsUnder, schemeOf } from "../../../../tests/support/scheme-of.ts";

// A 20 ft unit across the middle of another: its two bottom rails cross the two top rails of the one below at four places, each
// with a post right below in the wall (axes of wall posts as in post-under-seat.test.ts).
const RAIL_MM = 1195;
const lower = { id: "g", type: "1CCC" as const, x: 0, y: 0 };
const upper = { id: "t", type: "1CCC" as const, x: 0, y: 0, z: 2896, turn: 90 };
const posts = [-1, 1].flatMap((side) =>
  [-1, 1].map((end) => {
    return { id: `p${side + 2}${end + 2}`, x: end * RAIL_MM, y: side * (2438 / 2 - 51), foot: 170.5, head: 2830 };
  }),
);
const feet = posts.map(({ id, x, y }) => ({ id: `b-${id}`, x, y, top: 12.5, length: 900, width: 900 }));
const answer = assessStrength(schemeOf({ units: [lower, upper], posts, pads: [...padsUnder(lower), ...feet] }));

// By hand, N and mm. A fourth of the unit above at 1.2 D + 1.6 Lr: 2550 kg (upper tare of the catalogue) and 20 psf (958 Pa, ASCE 7
// table 4.3-1) on 6.058 × 2.438 m. Notional loads and what the stiff posts draw add up to a few hundredths.
const pressed = (1.2 * 2550 * 9.81 + 1.6 * 958 * 6.058 * 2.438) / 4;
// The rail above, a channel 158×48×30×4.5 with web 153 flat, over 100 mm: AISI S100 G5, one flange inside, R = t (from memory).
const crippling =
  0.85 * 13 * 4.5 ** 2 * 235 * (1 - 0.32) * (1 + 0.1 * Math.sqrt(100 / 4.5)) * (1 - 0.01 * Math.sqrt(153 / 4.5));
// The rail below, a tube 60×60×3 on its sheet: M = 0.50 P ∛(E I/T), T = √(G t·E_v) of the side sheet (walls.json: 115.64 and
// 340.58 kN/mm), against 0.9 F_y S.
const local = 0.5 * Math.cbrt((200_000 * 371_412) / Math.sqrt(115_638 * 340_585));
const bending = 0.9 * 235 * 12_380.4;

describe("a post under a pair of rails that cross", () => {
  if (!answer.accepted) throw new Error("gravity alone has no hazards to refuse");
  const { results } = answer.proof.report;
  const of = (ownerId: string, part: string, place: RegExp) =>
    results.filter((each) => each.ownerId === ownerId && each.part === part && place.test(each.place));
  const above = of("t", "bottom side rail", /on it$/);
  const below = of("g", "top side rail", /t bottom rail .* on it$/);

  it("has both rails of each pair judged under what crosses it, the sheet under none", () => {
    expect([above.length, below.length]).toEqual([4, 4]);
    expect(of("g", "side sheet", /on it$/)).toEqual([]);
  });

  it("presses the rail above by its web and the rail below by its local moment, as by hand within 5 %", () => {
    for (const { check, utilisation } of above) {
      expect(check).toBe("web crippling");
      expect(Math.abs((utilisation ?? Number.NaN) / (pressed / crippling) - 1)).toBeLessThan(0.05);
    }
    for (const { check, utilisation } of below) {
      expect(check).toBe("local moment at a seat");
      expect(Math.abs((utilisation ?? Number.NaN) / ((local * pressed) / bending) - 1)).toBeLessThan(0.05);
    }
  });
});
