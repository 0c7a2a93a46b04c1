import { unitSystems } from "@cornerway/schema";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readLengthUm } from "../../src/units/length.ts";
import { printLengthUm } from "../../src/units/print-length.ts";

const um = (text: string, units: "SI" | "US" = "SI") => {
  const read = readLengthUm(text, units);
  return read.ok ? read.value : read.why;
};

describe("readLengthUm", () => {
  // By hand with 1 in = 25.4 mm exactly: 63.5 in = 1,612.9 mm; 5 ft = 1,524 mm; 96 in = 2,438.4 mm; 3/8 in = 9.525 mm.
  const alike: [string, number][] = [
    [`5'-3 1/2"`, 1_612_900],
    [`5' 3 1/2"`, 1_612_900],
    [`5'3.5"`, 1_612_900],
    [`5’-3½”`, 1_612_900],
    [`5′ 3,5″`, 1_612_900],
    ["5 ft 3.5 in", 1_612_900],
    ["5ft 3 1/2", 1_612_900],
    ["5 feet 3.5 inches", 1_612_900],
    [`63.5"`, 1_612_900],
    ["63 1/2 in", 1_612_900],
    [`-5'-3 1/2"`, -1_612_900],
    [`−63.5"`, -1_612_900],
    [`8'`, 2_438_400],
    ["8.5 ft", 2_590_800],
    [`3/8"`, 9525],
    [`0'-0 3/8"`, 9525],
    ["1613", 1_613_000],
    ["1613 mm", 1_613_000],
    ["1,613 mm", 1_613_000],
    ["1 613 mm", 1_613_000],
    ["1.613,5 mm", 1_613_500],
    ["1,613.5 mm", 1_613_500],
    ["12,192,000 mm", 12_192_000_000],
    ["1,6 m", 1_600_000],
    ["1.6 m", 1_600_000],
    ["1,613 m", 1_613_000],
    ["161.3 cm", 1_613_000],
    ["0", 0],
  ];

  it.each(unitSystems.flatMap((units) => alike.map(([text, value]) => ({ text, value, units }))))(
    "takes $text as $value µm from whoever reads $units",
    ({ text, value, units }) => expect(um(text, units)).toBe(value),
  );

  it("takes a bare number under a hundred as metres from those who read metres and as feet from those who read feet", () => {
    expect([um("2.438"), um("2,438"), um("-3,0"), um(".5"), um("3")]).toEqual([
      2_438_000, 2_438_000, -3_000_000, 500_000, 3_000_000,
    ]);
    // 2.438 ft × 304.8 mm = 743.1024 mm
    expect([um("2.438", "US"), um("8", "US"), um("-3,5", "US")]).toEqual([743_102, 2_438_400, -1_066_800]);
  });

  it("does not guess what a comma before three figures means where feet are read", () => {
    expect(um("1,613", "US")).toMatch(/comma/);
  });

  it.each([
    "",
    " ",
    "'",
    `"`,
    "m",
    "five",
    "1.2.3",
    "1,2,3",
    "12,34 mm x",
    `5'-14"`,
    `5.5'-3"`,
    `5'-3 2/1"`,
    "1/2",
    "5 3",
    "--5",
    "1e3",
    "NaN",
    "1,61,300 mm",
  ])("refuses %j and says what would do", (text) => {
    for (const units of unitSystems) expect(um(text, units)).toMatch(/^A length, such as/);
  });
});

describe("printLengthUm", () => {
  const value = fc.integer({ min: -99_999_000, max: 99_999_000 });

  it.each(unitSystems)("what is printed in %s is read back as what prints the same", (units) => {
    fc.assert(
      fc.property(value, (typed) => {
        const printed = printLengthUm(typed, units);
        const read = readLengthUm(printed, units);
        expect(read.ok && printLengthUm(read.value, units)).toBe(printed);
        const step = units === "SI" ? 1000 : 25_400 / 16;
        expect(Math.abs((read.ok ? read.value : Number.NaN) - typed)).toBeLessThanOrEqual(step / 2 + 1);
      }),
      { numRuns: 2000 },
    );
  });

  it("what one prints the other reads, feet and inches with their signs being the same in both", () => {
    fc.assert(
      fc.property(value, (typed) => {
        const printed = printLengthUm(typed, "US");
        expect(readLengthUm(printed, "SI")).toEqual(readLengthUm(printed, "US"));
      }),
    );
  });

  it("every sixteenth of an inch up to a hundred feet survives printing and typing", () => {
    for (let sixteenths = -19_200; sixteenths <= 19_200; sixteenths += 1) {
      const exact = Math.round(sixteenths * (25_400 / 16));
      const read = readLengthUm(printLengthUm(exact, "US"), "US");
      expect(read).toEqual({ ok: true, value: exact });
    }
  });
});
