import { describe, expect, it } from "vitest";
import { beamFields, lockFields, postFields, seatFields, tieFields } from "../../src/twin/fields/added-steel-fields.ts";
import { basisFields, hazardFields } from "../../src/twin/fields/basis-fields.ts";
import { padFields } from "../../src/twin/fields/ground-fields.ts";
import { openingFields } from "../../src/twin/fields/opening-fields.ts";
import { overrideFields, unitFields } from "../../src/twin/fields/unit-fields.ts";
import { usUnits } from "../../src/twin/fields/us-units.ts";
import { fieldLabel, printValue, readValue } from "../../src/twin/part/part-field.ts";

const all = [
  ...[...unitFields, ...openingFields, ...seatFields, ...tieFields, ...lockFields, ...beamFields, ...postFields],
  ...[...padFields, ...overrideFields(true), ...hazardFields, ...basisFields],
];
/** Written alike in both: seconds, shares of gravity, degrees. */
const sameInBoth = ["", "s", "g", "°"];

describe("the forms of what is drawn, in US units", () => {
  it("show no number in a metric unit", () => {
    const metric = all.filter((field) => field.as === "number" && !sameInBoth.includes(field.unit ?? "") && !field.us);
    expect(metric.map(({ label }) => label)).toEqual([]);
    expect(
      all.map((field) => fieldLabel(field, "US")).filter((label) => /MPa|kPa|kN|N\/mm|, mm?$|kg/.test(label)),
    ).toEqual([]);
  });

  // NIST SP 811 (2008), table of factors in alphabetical order, from memory, to the figures it prints.
  it.each([
    ["mph", 0.44704],
    ["psi", 0.006894757],
    ["ksi", 6.894757],
    ["kipPerInch", 175.1268],
    ["pci", 271.4471],
  ] as const)("%s is %f of what is stored", (name, each) => {
    expect(usUnits[name].each).toBeCloseTo(each, 3);
    expect(usUnits[name].each / each).toBeCloseTo(1, 6);
  });

  it("take a yield of 50 ksi as 344.7 MPa and show it again", () => {
    const field = all.find(({ path }) => path === "yieldMpa");
    if (field === undefined) throw new Error("there is no field for the yield");
    const read = readValue(field, "50", "US");
    expect(read).toMatchObject({ ok: true });
    if (!read.ok) return;
    expect(read.value).toBeCloseTo(344.74, 2);
    expect(printValue(field, read.value, "US")).toBe("50");
  });
});
