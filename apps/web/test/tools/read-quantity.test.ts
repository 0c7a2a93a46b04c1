import { describe, expect, it } from "vitest";
import { readAngleMdeg, readLengthUm, readPressurePa, writeMetres } from "../../src/tools/read-quantity.ts";

describe("readLengthUm(text)", () => {
  it.each([
    ["2.438", 2_438_000],
    ["2,438", 2_438_000],
    ["2.438 m", 2_438_000],
    ["305 mm", 305_000],
    ["30,5 cm", 305_000],
    ["-3", -3_000_000],
    ["−0,5", -500_000],
    [" 12 192 mm ", 12_192_000],
    [".5", 500_000],
  ])("reads %j as %d µm", (text, um) => {
    expect(readLengthUm(text)).toEqual({ ok: true, value: um });
  });

  it.each(["", "two", "1.2.3", "5 ft", "1e3", "1,000.5"])("refuses %j and says what a length looks like", (text) => {
    expect(readLengthUm(text)).toMatchObject({ ok: false, why: expect.stringContaining("metres") });
  });

  it("reads back what writeMetres wrote, to the millimetre", () => {
    for (const um of [0, 1000, 2_438_000, -3_000_000])
      expect(readLengthUm(writeMetres(um))).toEqual({ ok: true, value: um });
  });
});

describe("readAngleMdeg(text)", () => {
  it("turns every angle into 0 to 360°", () => {
    expect([readAngleMdeg("90"), readAngleMdeg("-90°"), readAngleMdeg("450"), readAngleMdeg("12,5")]).toEqual(
      [90_000, 270_000, 90_000, 12_500].map((value) => ({ ok: true, value })),
    );
  });
});

describe("readPressurePa(text)", () => {
  it("reads kilopascals without a unit and pascals with one", () => {
    expect([readPressurePa("2,4"), readPressurePa("2400 Pa"), readPressurePa("1 kPa")]).toEqual(
      [2400, 2400, 1000].map((value) => ({ ok: true, value })),
    );
    expect(readPressurePa("-1").ok).toBe(false);
  });
});
