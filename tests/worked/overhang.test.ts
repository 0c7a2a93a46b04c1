import { assess } from "@cornerway/engine";
import { expect, it } from "vitest";
import { bearingOf, factsOf, verdictOf } from "../support/marks-of.ts";
import { padsUnder, schemeOf } from "../support/scheme-of.ts";

// A 40 ft high cube (1AAA) on another, pushed `overhang` mm to the east past it. Hole spacing S = 11 985 mm.
// The tail's fittings come down on the lower top rail (gap 6 mm: fittings stand 6 above the roof), the bottom rail on
// the lower unit's end fittings (gap 12.5 mm: base recess). ISO 1496-1, from memory.
// Statics of a rigid body on two lines S − overhang apart, its weight in the middle, S/2 from the tail:
//   front = W · (S/2) / (S − overhang), tail = W − front.
const spacing = 11985;
// Tare: middle of 3800…4200 kg (common practice) = 4000 kg × 9.81 = 39.240 kN.
const weightKn = 39.24;

const pushed = (overhangMm: number, loads: { in: string; pa: number }[] = []) =>
  assess(
    schemeOf({
      units: [
        { id: "g1", type: "1AAA", x: 0, y: 0 },
        { id: "f1", type: "1AAA", x: overhangMm, y: 0, z: 2896 },
      ],
      pads: padsUnder({ id: "g1", type: "1AAA", x: 0, y: 0 }),
      loads,
    }),
  );

it("3.0 m past the end: front line 39.24 × 5992.5/8985 = 26.171 kN, tail 13.069 kN", () => {
  const [overhang] = factsOf(pushed(3000), "overhang");
  expect(overhang?.lengthMm).toBeCloseTo(3000, 6);
  expect(overhang?.towards).toBe("east");
  expect(overhang?.bearingKn).toBeCloseTo((weightKn * (spacing / 2)) / (spacing - 3000), 3);
  expect(overhang?.bearingKn).toBeCloseTo(26.171, 3);
  expect(overhang?.tailReactionKn).toBeCloseTo(13.069, 3);
});

it("its strength is not checked, and neither is that of the unit below it", () => {
  const assessment = pushed(3000);
  expect(factsOf(assessment, "overhang").map(({ verdict }) => verdict)).toEqual(["not checked"]);
  expect(verdictOf(assessment, "f1")).toBe("not checked");
  expect(verdictOf(assessment, "g1")).toBe("not checked");
});

it("the tail hangs over the rail by 6 mm, the front rail over the fitting by 12.5 mm, so it rocks 6.5 mm unpacked", () => {
  const assessment = pushed(3000);
  expect(bearingOf(assessment, "f1:front-left")).toMatchObject({ on: "rail", gapMm: 6, joint: "seat" });
  expect(bearingOf(assessment, "f1:left-rail:g1")).toMatchObject({ on: "fitting", gapMm: 12.5, joint: "seat" });
  expect(factsOf(assessment, "rocks").map(({ gapMm }) => gapMm)).toEqual([6.5]);
});

it("the load leaves the corners: along the lower top rail from the tail, 3.0 m from a fitting", () => {
  const assessment = pushed(3000);
  const [onRail] = factsOf(assessment, "borne-on-rail");
  expect(onRail?.crossings.map(({ toNearestFittingMm }) => toNearestFittingMm)).toEqual([3000, 3000]);
  // Lever rule on the rail: each tail corner gives 13.069/2 = 6.535 kN, 3000 mm along a span of 11 985 mm.
  const toFar = assessment.path.find(({ id }) => id.startsWith("rail:g1:left:f1") && id.endsWith("door-left"));
  expect(toFar?.forceTopKn).toBeCloseTo((6.535 * 3000) / 11985, 2);
  expect(toFar?.leavesCorners).toBe(true);
});

it("the tail lifts and it tips when more than half of it hangs out, S/2 = 5.99 m, whatever the even load", () => {
  for (const loads of [[], [{ in: "f1", pa: 3400 }]]) {
    expect(factsOf(pushed(5900, loads), "tips-over")).toEqual([]);
    const [tips] = factsOf(pushed(6100, loads), "tips-over");
    expect(tips?.verdict).toBe("does not work");
    expect(tips?.outsideMm).toBeCloseTo(6100 - spacing / 2, 3);
    expect(tips?.towards).toBe("east");
  }
});

it("what tips comes wholly on its last line as it begins to turn: 39.24/2 on each seat, nothing at the tail", () => {
  const assessment = pushed(6500);
  expect(bearingOf(assessment, "f1:left-rail:g1")?.forceKn).toBeCloseTo(39.24 / 2, 3);
  expect(bearingOf(assessment, "f1:front-left")?.forceKn).toBe(0);
  // The moment to be held: 39.24 · (6500 − 5992.5)/1000 = 19.914 kN m.
  expect(factsOf(assessment, "tips-over")[0]?.momentKnm).toBeCloseTo(19.914, 3);
  expect(assessment.statics.residualKn).toBe(0);
});

it("a unit set on the tail holds it down again", () => {
  const assessment = assess(
    schemeOf({
      units: [
        { id: "g1", type: "1AAA", x: 0, y: 0 },
        { id: "f1", type: "1AAA", x: 6500, y: 0, z: 2896 },
        // A 20 ft unit flush with the tail: its own centre is 12 192/2 − 6058/2 = 3067 mm west of the centre of f1.
        { id: "t1", type: "1CCC", x: 6500 - 3067, y: 0, z: 2 * 2896 },
      ],
      pads: padsUnder({ id: "g1", type: "1AAA", x: 0, y: 0 }),
      loads: [{ in: "t1", pa: 5000 }],
    }),
  );
  expect(factsOf(assessment, "tips-over")).toEqual([]);
});
