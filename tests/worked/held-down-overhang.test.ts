import { assess } from "@cornerway/engine";
import { elementNames, markSentences } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { bearingOf, factsOf, reactionOf, verdictOf } from "../support/marks-of.ts";
import { padsUnder, schemeOf } from "../support/scheme-of.ts";

// A 40 ft high cube (1AAA) on another, pushed 6500 mm to the east past it: more than half of it hangs out.
// Hole spacing S = 11 985 mm lengthwise, so its tail holes lie at −5992.5 mm from its middle and the last fitting below
// at 5992.5 − 6500 = −507.5 mm. ISO 668, from memory. Tare: middle of 3800…4200 kg (common practice), 4000 kg × 9.81.
const weightKn = 39.24;
const armMm = 5992.5 - 507.5; // 5485: from the tail to the bearing line
// Moments about the bearing line: pull × 5485 = 39.24 × 507.5.
const pullKn = (weightKn * 507.5) / armMm; // 3.631
const lower = { id: "g1", type: "1AAA", x: 0, y: 0 } as const;
const upper = { ...lower, id: "f1", x: 6500, z: 2896 } as const;

// The lower top rail is 60 wide, its middle at 1219 − 30 = 1189; a fitting comes over it 6 mm above. The upper bottom rail is
// 48 wide, its middle at 1195, and 12.5 mm above the last fitting below (ISO 1496-1, from memory).
const tail = (held: boolean) =>
  [1189, -1189].map((y, at) => ({ id: `s${at}`, upper: "f1", lower: "g1", x: 507.5, y, packing: 6, held }));
const front = [1195, -1195].map((y, at) => ({
  id: `t${at}`,
  upper: "f1",
  lower: "g1",
  x: 5992.5,
  y,
  packing: 12.5,
  width: 48,
}));
const drawn = { units: [lower, upper], pads: padsUnder(lower) };
const held = assess(schemeOf({ ...drawn, seats: [...tail(true), ...front] }));

it("the tail pulls 39.24 × 507.5/5485 = 3.631 kN, the bearing line takes 42.871 kN", () => {
  expect(pullKn).toBeCloseTo(3.631, 3);
  for (const corner of ["front-left", "front-right"])
    expect(bearingOf(held, `f1:${corner}`)?.forceKn).toBeCloseTo(-pullKn / 2, 3);
  for (const side of ["left", "right"])
    expect(bearingOf(held, `f1:${side}-rail:g1`)?.forceKn).toBeCloseTo((weightKn + pullKn) / 2, 3);
});

it("it would tip 507.5 mm outside its last bearing, and is held down: not checked, no longer does not work", () => {
  const [tips] = factsOf(held, "tips-over");
  expect(tips).toMatchObject({ verdict: "not checked", elements: ["f1", "s0", "s1"], heldBy: 2, towards: "east" });
  expect(tips?.heldDownKn).toBeCloseTo(pullKn, 2);
  expect(tips?.outsideMm).toBeCloseTo(507.5, 3);
  expect(verdictOf(held, "f1")).toBe("not checked");
  expect(held.verdict).toBe("not checked");
});

it("the overhang says with how much and where it is held down", () => {
  const [overhang] = factsOf(held, "overhang");
  expect(overhang?.lengthMm).toBeCloseTo(6500, 6);
  expect(overhang?.bearingKn).toBeCloseTo(weightKn + pullKn, 3);
  expect(overhang?.tailReactionKn).toBeCloseTo(-pullKn, 3);
  expect(overhang?.heldDownKn).toBeCloseTo(pullKn, 2);
  const mark = held.marks.find(({ id }) => id.startsWith("overhang:"));
  const names = elementNames(schemeOf({ ...drawn, seats: [...tail(true), ...front] }));
  if (mark === undefined) throw new Error("no overhang was noted");
  expect(markSentences(mark, names, "engineer").body).toContain("held down with 3.6 kN at S7 and S8");
});

it("the unit below hands the pull on: all loads reach its pads, more at the end that bears", () => {
  // Moments of the lower unit about its western holes, x from its middle: its own weight at 0, 42.871 down on the eastern
  // holes, 3.631 up at 507.5. East = 39.24/2 + 42.871 − 3.631 × (507.5 + 5992.5)/11 985; west the rest.
  const east = weightKn / 2 + weightKn + pullKn - (pullKn * (507.5 + 5992.5)) / 11985;
  const atEast = reactionOf(held, "g1-pad-2") + reactionOf(held, "g1-pad-3");
  const atWest = reactionOf(held, "g1-pad-0") + reactionOf(held, "g1-pad-1");
  expect(atEast).toBeCloseTo(east, 2);
  expect(atWest).toBeCloseTo(2 * weightKn - east, 2);
  expect(held.statics.residualKn).toBe(0);
});

it("with every seat drawn to fill its gap it does not rock, and the crossings name their seats", () => {
  expect(factsOf(held, "rocks")).toEqual([]);
  expect(factsOf(held, "seat-packing")).toEqual([]);
  expect(factsOf(held, "seat-off-rail")).toEqual([]);
  const [onRail] = factsOf(held, "borne-on-rail");
  expect(onRail?.crossings.map(({ seatId, gapMm }) => [seatId, gapMm])).toEqual([
    ["s1", 0],
    ["s0", 0],
  ]);
});

it("the same seats without hold-down do not help: it tips and does not work", () => {
  const loose = assess(schemeOf({ ...drawn, seats: [...tail(false), ...front] }));
  expect(factsOf(loose, "tips-over").map(({ verdict, heldDownKn }) => [verdict, heldDownKn])).toEqual([
    ["does not work", undefined],
  ]);
});

describe("held by other means", () => {
  it("made connections at the tail hold it as well", () => {
    const locks = (["front-left", "front-right"] as const).map((fitting) => ({
      id: `l-${fitting}`,
      in: "f1",
      fitting,
      kind: "made connection" as const,
    }));
    const [tips] = factsOf(assess(schemeOf({ ...drawn, locks })), "tips-over");
    expect(tips?.heldDownKn).toBeCloseTo(pullKn, 2);
    expect(tips?.elements).toEqual(["f1", "l-front-left", "l-front-right"]);
  });

  it("one held corner takes the whole pull", () => {
    const one = assess(schemeOf({ ...drawn, seats: [...tail(true).slice(0, 1), ...front] }));
    const [tips] = factsOf(one, "tips-over");
    expect(tips?.elements).toEqual(["f1", "s0"]);
    expect(tips?.heldDownKn).toBeCloseTo(pullKn, 2);
    expect(bearingOf(one, "f1:front-right")?.forceKn).toBeCloseTo(0, 3);
  });

  it("seats held down at the bearing line it turns about do not hold it", () => {
    const there = front.map((seat) => ({ ...seat, held: true }));
    const [tips] = factsOf(assess(schemeOf({ ...drawn, seats: [...tail(false), ...there] })), "tips-over");
    expect(tips?.verdict).toBe("does not work");
  });

  it("a tail that presses under load but pulls when empty is held down when it is empty", () => {
    // 12 kPa over the 20 ft unit on the tail holds it down; without it the pull is the one above less what the empty unit weighs.
    const ballast = { id: "t1", type: "1CCC", x: 6500 - 3067, y: 0, z: 2 * 2896 } as const;
    const scheme = schemeOf({
      units: [lower, { ...upper, x: 8500 }, { ...ballast, x: 8500 - 3067 }],
      pads: padsUnder(lower),
      loads: [{ in: "t1", pa: 12_000 }],
      seats: tail(true).map((seat) => ({ ...seat, x: 2507.5 })),
    });
    const [tips] = factsOf(assess(scheme), "tips-over");
    expect(tips).toMatchObject({ whenEmpty: true, verdict: "not checked", heldBy: 2 });
    // About the line at 5992.5: weight of f1 39.24 × (8500 − 5992.5), of t1 (2300 + 2550)/2 kg × 9.81 at 8500 − 3067 = 5433.
    const t1Kn = (2425 * 9.81) / 1000;
    expect(tips?.heldDownKn).toBeCloseTo((39.24 * 2507.5 - t1Kn * (5992.5 - 5433)) / (5992.5 - 2507.5), 2);
  });

  it("a unit below too light for the pull is lifted off and does not work, until it is held to its pads itself", () => {
    // 20 kN/m² on the last 5 m of the overhang: 20 × 5 × 2.438 = 243.8 kN at 6096 − 2500 = 3596 from the middle of f1. About the
    // bearing line at −507.5 the tail pulls (39.24 × 507.5 + 243.8 × 4103.5)/5485 = 186.0 kN, more than the 39.24 below, though
    // that lies beside its middle: 42.871's share is on its eastern holes.
    const put = [{ id: "q1", in: "f1", x: 7192, y: 0, length: 5000, width: 2438, pa: 20_000 }];
    const pull = (39.24 * 507.5 + 243.8 * 4103.5) / 5485;
    const loaded = { ...drawn, seats: [...tail(true), ...front], put };
    const free = assess(schemeOf(loaded));
    expect(factsOf(free, "tips-over").find(({ elements }) => elements[0] === "f1")?.heldDownKn).toBeCloseTo(pull, 1);
    // The unit below: 39.24 in its middle, 283.04 + 186.0 on its eastern holes, 186.0 up at 507.5 from its middle. Its
    // resultant lies east of the holes: it turns up about them.
    expect(factsOf(free, "tips-over").find(({ elements }) => elements[0] === "g1")?.verdict).toBe("does not work");
    const locks = (["front-left", "front-right"] as const).map((fitting) => ({
      id: `h-${fitting}`,
      in: "g1",
      fitting,
      kind: "hold-down" as const,
    }));
    const held = assess(schemeOf({ ...loaded, locks }));
    const [down] = factsOf(held, "tips-over").filter(({ elements }) => elements[0] === "g1");
    // About its eastern holes: 186.0 × 5485 up against 39.24 × 5992.5, over 11 985.
    expect(down).toMatchObject({ verdict: "not checked", heldBy: 2 });
    expect(down?.heldDownKn).toBeCloseTo((pull * 5485 - 39.24 * 5992.5) / 11985, 1);
    expect(held.statics.residualKn).toBe(0);
  });

  it("a unit that holds one down from above, and is not held itself, lifts when the pull is more than all it weighs", () => {
    // A 10 ft unit (1D, 2438 high, 1300 kg: 12.753 kN) under the tail of a 40 ft one that stands on two posts 4000 mm further
    // on: about them the tail pulls 39.24 × (5992.5 − 4000)/4000 = 19.547 kN.
    const light = { id: "t1", type: "1D", x: 0, y: 0 } as const;
    const over = { id: "f1", type: "1AAA", x: 5992.5, y: 0, z: 2438 } as const;
    const posts = [1195, -1195].map((y, at) => ({ id: `p${at}`, x: 4000, y, foot: 0, head: 2450.5 }));
    const under = posts.map(({ id, x, y }) => ({ id: `${id}-pad`, x, y }));
    const seats = [1189, -1189].map((y, at) => ({
      id: `s${at}`,
      upper: "f1",
      lower: "t1",
      x: 0,
      y,
      packing: 6,
      held: true,
    }));
    const parts = { units: [light, over], pads: [...padsUnder(light), ...under], posts, seats };
    const assessment = assess(schemeOf(parts));
    expect(factsOf(assessment, "tips-over")[0]?.heldDownKn).toBeCloseTo((39.24 * 1992.5) / 4000, 2);
    const free = factsOf(assessment, "mechanism").map(({ direction, elements }) => [direction, elements[0]]);
    expect(free).toEqual([["lifts", "t1"]]);
    expect(verdictOf(assessment, "f1")).toBe("does not work");
    // Held at its four corners it stands, and each hold-down pulls a quarter of 19.547 − 12.753.
    const locks = (["front-left", "front-right", "door-left", "door-right"] as const).map((fitting) => ({
      id: `h-${fitting}`,
      in: "t1",
      fitting,
      kind: "hold-down" as const,
    }));
    const held = assess(schemeOf({ ...parts, locks }));
    const [kept] = factsOf(held, "mechanism");
    expect(kept).toMatchObject({ direction: "lifts", verdict: "not checked", heldBy: 4 });
    expect(kept?.heldDownKn).toBeCloseTo((39.24 * 1992.5) / 4000 - 12.753, 2);
    expect(reactionOf(held, "t1-pad-0")).toBeCloseTo(-((39.24 * 1992.5) / 4000 - 12.753) / 4, 2);
    expect(held.statics.residualKn).toBe(0);
  });
});
