import { assess } from "@cornerway/engine";
import { expect, it } from "vitest";
import { factsOf } from "../support/marks-of.ts";
import { padsUnder, schemeOf } from "../support/scheme-of.ts";

const g = { id: "g", type: "1CC" as const, x: 0, y: 0 };
const moved = (x: number, y: number) =>
  factsOf(assess(schemeOf({ units: [g, { ...g, id: "u", x, y, z: 2591 }], pads: padsUnder(g) })), "made-connection");

// 20 mm along is past the lock's 10 mm and within the full bearing of 38 mm; 60 mm is past both (ISO 668 and ISO 1496-1,
// from memory).
it("a made connection keeps its name when the reason for it changes, so that what was said of it stays with it", () => {
  expect(moved(20, 0)).toMatchObject([{ id: "made-connection:u+g", why: "hole centres apart", offsetMm: 20 }]);
  expect(moved(60, 0)).toMatchObject([{ id: "made-connection:u+g", why: "bears off the corner", offsetMm: 60 }]);
});

// Turned by 0.4° about its middle (within the 1° of a lock) and moved 20 mm along, the corners of u lie
// 2926.5 × sin 0.4° = 20.4 mm to either side and 20 ± 1129.5 × sin 0.4° = 20 ± 7.9 mm along: all within 38 and 25.4 mm.
// Moved 6 mm across as well, one end lies 26.4 mm across, past 25.4: that end is the one told.
it("where the corners of one pair differ, the one that bears off the corner is told", () => {
  const turned = factsOf(
    assess(schemeOf({ units: [g, { ...g, id: "u", x: 20, y: 6, z: 2591, turn: 0.4 }], pads: padsUnder(g) })),
    "made-connection",
  );
  expect(turned).toHaveLength(1);
  expect(turned[0]).toMatchObject({ why: "bears off the corner" });
});
