import { catalogRows, containerDimensions, containerTypeRows } from "@cornerway/engine";
import { certainties, containerTypes, digestOf, faces } from "@cornerway/schema";
import { describe, expect, it } from "vitest";

describe("containerTypeRows", () => {
  it.each([
    ["1EEE", 13716, 2896],
    ["1EE", 13716, 2591],
    ["1AAA", 12192, 2896],
    ["1AA", 12192, 2591],
    ["1A", 12192, 2438],
    ["1BBB", 9125, 2896],
    ["1BB", 9125, 2591],
    ["1CCC", 6058, 2896],
    ["1CC", 6058, 2591],
    ["1C", 6058, 2438],
    ["1D", 2991, 2438],
  ] as const)("%s is %i × 2438 × %i mm (ISO 668:2013, table of external dimensions)", (type, lengthMm, heightMm) => {
    const dimensions = containerDimensions(type);
    expect([dimensions.lengthMm, dimensions.widthMm, dimensions.heightMm]).toEqual([lengthMm, 2438, heightMm]);
  });

  it("has hole spacings that follow from sizes at mid-tolerance, within 0.5 mm", () => {
    // ISO 668 (from memory): S = L − tolL/2 − 2(101.5 − 1.5/2), P = W − 5/2 − 2(89 − 1.5/2); edge distances 101.5 and
    // 89 mm by ISO 668:1995 Annex A, each +0/−1.5.
    for (const type of containerTypes) {
      const row = containerTypeRows[type];
      const along = row.length.value - row.lengthTolerance.value / 2 - 2 * (101.5 - 0.75);
      const across = row.width.value - row.widthTolerance.value / 2 - 2 * (89 - 0.75);
      expect(Math.abs(row.holeSpacingLengthwise.value - along)).toBeLessThanOrEqual(0.5);
      expect(Math.abs(row.holeSpacingCrosswise.value - across)).toBeLessThanOrEqual(0.5);
    }
  });

  it("has members that leave the least door opening: 2286 wide, 2566, 2261 or 2134 high (ISO 1496-1, from memory)", () => {
    const leastHeight: Record<number, number> = { 2896: 2566, 2591: 2261, 2438: 2134 };
    for (const type of containerTypes) {
      const dimensions = containerDimensions(type);
      const { u0, u1, v0, v1 } = dimensions.sheetZone("door");
      expect(u1 - u0).toBe(2286);
      expect(v1 - v0).toBe(leastHeight[dimensions.heightMm]);
    }
  });

  it("leaves 18.5 mm between roof and base of stacked units: 6 + 12.5 (ISO 1496-1, from memory)", () => {
    for (const type of containerTypes) {
      const { proudOfRoofMm, baseAboveFittingMm } = containerDimensions(type);
      expect(proudOfRoofMm + baseAboveFittingMm).toBe(18.5);
    }
  });

  it("keeps corrugations whose flats and slopes add up to their pitch", () => {
    const { corrugationPitchMm } = containerDimensions("1AAA");
    // Generic specification: side 72 + 68 + 70 + 68, end 110 + 18 + 104 + 18, roof 91 + 13.5 + 91 + 13.5.
    expect(corrugationPitchMm).toEqual({
      side: 72 + 68 + 70 + 68,
      end: 110 + 18 + 104 + 18,
      roof: 91 + 13.5 + 91 + 13.5,
    });
  });

  it("has every tare range the right way round and below the rating", () => {
    for (const type of containerTypes) {
      const { tareLeast, tareMost, rating } = containerTypeRows[type];
      expect(tareLeast.value).toBeLessThan(tareMost.value);
      expect(tareMost.value).toBeLessThan(rating.value);
    }
  });

  it("has a sheet inside the outline of every face of every type", () => {
    for (const type of containerTypes)
      for (const face of faces) {
        const whole = containerDimensions(type).face(face);
        const sheet = containerDimensions(type).sheetZone(face);
        expect(sheet.u0).toBeGreaterThan(whole.u0);
        expect(sheet.u1).toBeLessThan(whole.u1);
        expect(sheet.v0).toBeGreaterThan(whole.v0);
        expect(sheet.v1).toBeLessThan(whole.v1);
      }
  });
});

describe("catalogRows", () => {
  it("says of every value where it is from and how far that goes", () => {
    for (const row of catalogRows) {
      expect(row.source.length, `${row.key} ${row.property}`).toBeGreaterThan(10);
      expect(certainties).toContain(row.certainty);
      expect(Number.isFinite(row.value)).toBe(true);
    }
  });

  it("names each value once and can be digested", () => {
    const names = catalogRows.map(({ key, property }) => `${key} ${property}`);
    expect(new Set(names).size).toBe(names.length);
    expect(digestOf(catalogRows)).toMatch(/^[0-9a-f]{64}$/);
  });

  it("calls published only what was read in a published source", () => {
    const published = catalogRows.filter(({ certainty }) => certainty === "published");
    for (const { source } of published) expect(source).toMatch(/^ISO 668:2013|^standard gravity/);
  });
});
