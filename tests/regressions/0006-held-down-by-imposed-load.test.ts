import { assess } from "@cornerway/engine";
import { expect, it } from "vitest";
import { factsOf, verdictOf } from "../support/marks-of.ts";
import { padsUnder, schemeOf } from "../support/scheme-of.ts";

// b stands out 7.3 m beyond a; c, a 20 ft unit, stands on its tail. In b's own plan, front end to −x:
//   b's bearing line: S/2 − 7300 = 5992.5 − 7300 = −1307.5 mm.
//   c's middle: −6096 + 3029 = −3067 mm. Weights, middle of the tare ranges: b 39.24 kN, c 2425 kg × 9.81 = 23.789 kN.
// Empty: 23.789 × −3067 / (39.24 + 23.789) = −1157.6 mm, 149.9 mm outside the line: it tips.
// With 5 kPa in c, 5 × 6.058 × 2.438 = 73.847 kN: 97.636 × −3067 / 136.876 = −2187.7 mm: it stands.
const a = { id: "a", type: "1AAA" as const, x: 0, y: 0 };
const b = { ...a, id: "b", x: 7300, z: 2896 };
const c = { id: "c", type: "1CCC" as const, x: 7300 - 6096 + 3029, y: 0, z: 2 * 2896 };
const of = (pa: number, surface: "imposed" | "finish") =>
  assess(schemeOf({ units: [a, b, c], pads: padsUnder(a), loads: pa === 0 ? [] : [{ in: "c", pa, case: surface }] }));

it("what tips when empty does not work, whatever imposed load holds it down", () => {
  const assessment = of(5000, "imposed");
  const [tips] = factsOf(assessment, "tips-over");
  expect(tips).toMatchObject({ id: "tips-over:b", whenEmpty: true, towards: "east" });
  expect(tips?.outsideMm).toBeCloseTo(149.9, 0);
  expect(tips?.weightKn).toBeCloseTo(63.029, 2);
  expect(verdictOf(assessment, "b")).toBe("does not work");
});

it("the same weight built in holds it down for good", () => {
  expect(factsOf(of(5000, "finish"), "tips-over")).toEqual([]);
});

it("drawn without the load it tips by the same figures and the same mark", () => {
  const [tips] = factsOf(of(0, "imposed"), "tips-over");
  expect(tips?.id).toBe("tips-over:b");
  expect(tips?.whenEmpty).toBeUndefined();
  expect(tips?.outsideMm).toBeCloseTo(149.9, 0);
});
