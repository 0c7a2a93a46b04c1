import { describe, expect, it } from "vitest";
import { containerMembers, pressedChannel } from "../../src/catalog/sections/container-members.ts";
import { corrugatedSheet, folds } from "../../src/catalog/sections/corrugated-sheet.ts";
import { doorPost } from "../../src/catalog/sections/door-post.ts";
import { findSection, namedSections } from "../../src/catalog/sections/find-section.ts";
import { openSection } from "../../src/catalog/sections/open-section.ts";
import { rolledChannels, rolledIShapes } from "../../src/catalog/sections/rolled-shapes.ts";
import { roundedTube } from "../../src/catalog/sections/rounded-tube.ts";
import { structuralTubes } from "../../src/catalog/sections/structural-tubes.ts";
import { channelShearCentre } from "../../src/codes/steel/compression.ts";

/** Half a unit in the last digit printed, in the unit printed (cm). */
const expectPrinted = (ours: number, printed: number, half: number) =>
  expect(Math.abs(ours - printed), `ours ${ours}, printed ${printed}`).toBeLessThanOrEqual(half * 1.001);

describe("container members, against the table of generic members (derived there, centreline model)", () => {
  const printed = [
    ["bottom side rail, 20 ft", 1022, 326.7, 13.6, 18.9, 38.4, 3.5, 0.69],
    ["bottom side rail", 1040, 347.8, 13.7, 19.5, 39.9, 3.5, 0.702],
    ["cross member", 796, 167.4, 12.5, 3.8, 26.8, 3.6, 0.425],
    ["cross member at a board joint", 916, 201.9, 39.2, 33.6, 28.8, 6.7, 0.489],
    ["door post inner", 2028, 312.1, 23.4, 0, 55.2, 8.6, 9.73],
    ["front corner post", 2580, 850, 967, -410, 83.6, 90.6, 3.1],
  ] as const;

  it.each(printed)(
    "%s has A %d mm², Ix %d, Iy %d, Ixy %d cm⁴, Wx %d, Wy %d cm³, J %d cm⁴",
    (name, a, ix, iy, ixy, wx, wy, j) => {
      const section = containerMembers[name];
      expectPrinted(section.areaMm2, a, 0.5);
      expectPrinted(section.ixMm4 / 1e4, ix, 0.5);
      expectPrinted(section.iyMm4 / 1e4, iy, 0.5);
      expectPrinted(section.ixyMm4 / 1e4, ixy, 0.5);
      expectPrinted(section.sxMm3 / 1e3, wx, 0.05);
      expectPrinted(section.syMm3 / 1e3, wy, 0.05);
      expectPrinted(section.jMm4 / 1e4, j, 0.005);
    },
  );

  it("the front post has principal moments 1323 and 495 cm⁴ and r_min 43.8 mm", () => {
    const post = containerMembers["front corner post"];
    expectPrinted(post.iMaxMm4 / 1e4, 1323, 0.5);
    expectPrinted(post.iMinMm4 / 1e4, 495, 0.5);
    expectPrinted(Math.sqrt(post.iMinMm4 / post.areaMm2), 43.8, 0.05);
  });

  it("the door post has A 4230 mm², Ix 1312, Iy 574, J 928 cm⁴", () => {
    expectPrinted(doorPost.areaMm2, 4230, 0.5);
    expectPrinted(doorPost.ixMm4 / 1e4, 1312, 0.5);
    expectPrinted(doorPost.iyMm4 / 1e4, 574, 0.5);
    expectPrinted(doorPost.jMm4 / 1e4, 928, 0.6);
  });

  it.each([
    ["top side rail", 684, 37.1, 12.4, 55.6],
    ["top side rail, heavy", 896, 46.9, 15.6, 70.2],
  ] as const)("%s has A %d mm², I %d cm⁴, W %d cm³, J %d cm⁴ with square corners", (name, a, i, w, j) => {
    const section = containerMembers[name];
    expectPrinted(section.areaMm2, a, 0.5);
    // The table counts I on the wall's centreline; ours is the solid section, b⁴ − (b − 2t)⁴ over 12: up to 0.4 % more.
    expect(Math.abs(section.ixMm4 / 1e4 / i - 1)).toBeLessThan(0.005);
    expect(Math.abs(section.sxMm3 / 1e3 / w - 1)).toBeLessThan(0.008);
    // The table has the closed part 4 A²t/Σ alone; the open part adds t²Σ²/(12 A²) of it: 0.4 % and 0.7 %, and rounding.
    expect(section.jMm4 / 1e4 / j).toBeGreaterThan(0.999);
    expect(section.jMm4 / 1e4 / j).toBeLessThan(1.008);
  });
});

describe("openSection", () => {
  const [h, b, t] = [200, 60, 3];
  const channel = openSection(
    [
      { xMm: b, yMm: 0 },
      { xMm: 0, yMm: 0 },
      { xMm: 0, yMm: h },
      { xMm: b, yMm: h },
    ],
    t,
  );

  it("puts the shear centre of a channel 3b²t/(6bt + ht) behind its web", () => {
    expect(channel.shearCentre.xMm).toBeCloseTo(-(3 * b * b) / (6 * b + h), 1);
    expect(channel.shearCentre.yMm).toBeCloseTo(h / 2, 9);
  });

  it("gives a channel the warping constant t b³h²/12 · (3b + 2h)/(6b + h)", () => {
    const closed = ((t * b ** 3 * h ** 2) / 12) * ((3 * b + 2 * h) / (6 * b + h));
    expect(Math.abs(channel.cwMm6 / closed - 1)).toBeLessThan(0.002); // the formula leaves walls' own t³ out
  });

  it("gives a Z the shear centre at its centroid and Cw = t b³h²/12 · (b + 2h)/(2b + h)", () => {
    const z = openSection(
      [
        { xMm: -b, yMm: 0 },
        { xMm: 0, yMm: 0 },
        { xMm: 0, yMm: h },
        { xMm: b, yMm: h },
      ],
      t,
    );
    expect(z.shearCentre.xMm).toBeCloseTo(z.centroid.xMm, 6);
    expect(z.shearCentre.yMm).toBeCloseTo(z.centroid.yMm, 6);
    const closed = ((t * b ** 3 * h ** 2) / 12) * ((b + 2 * h) / (2 * b + h));
    expect(Math.abs(z.cwMm6 / closed - 1)).toBeLessThan(0.002);
  });

  it("gives an angle the shear centre at its corner and next to no warping", () => {
    const angle = openSection(
      [
        { xMm: 80, yMm: 0 },
        { xMm: 0, yMm: 0 },
        { xMm: 0, yMm: 80 },
      ],
      6,
    );
    expect(Math.abs(angle.shearCentre.xMm)).toBeLessThan(0.5);
    expect(Math.abs(angle.shearCentre.yMm)).toBeLessThan(0.5);
    expect(angle.cwMm6).toBeLessThan(1e-3 * angle.iMaxMm4 * 80 * 80);
  });

  it("mirrored sections have the same principal moments, J, Cw and r_0", () => {
    const rail = containerMembers["bottom side rail"];
    const mirrored = openSection(
      rail.outline.map(({ xMm, yMm }) => ({ xMm: -xMm, yMm })),
      rail.thicknessMm,
    );
    for (const key of ["iMaxMm4", "iMinMm4", "jMm4", "cwMm6", "r0Mm"] as const)
      expect(Math.abs(mirrored[key] / rail[key] - 1)).toBeLessThan(1e-9);
  });

  it("a thicker channel is never worth less", () => {
    const values = [3, 4, 4.5, 6].map((thicknessMm) =>
      pressedChannel("x", { depthMm: 158, headMm: 48, footMm: 30, thicknessMm }),
    );
    for (const key of ["areaMm2", "ixMm4", "iMinMm4", "jMm4"] as const)
      expect(values.map((value) => value[key])).toEqual(values.map((value) => value[key]).toSorted((a, c) => a - c));
  });
});

describe("structural tubes, from memory, reproduced by geometry (outside corner 2t)", () => {
  it.each(structuralTubes.map((tube) => [tube.name, tube] as const))(
    "%s keeps within 0.7 %% of its geometry",
    (_, tube) => {
      const made = roundedTube({ ...tube, cornerMm: 2 * tube.wallMm });
      for (const key of ["areaMm2", "ixMm4", "sxMm3", "zxMm3", "iyMm4", "rxMm", "ryMm"] as const)
        expect(Math.abs(made[key] / tube[key] - 1), key).toBeLessThan(0.007);
      expect(Math.abs(made.jMm4 / tube.jMm4 - 1), "J").toBeLessThan(0.02);
    },
  );
});

describe("rolled shapes, from memory", () => {
  it.each(rolledIShapes.map((shape) => [shape.name, shape] as const))(
    "%s agrees with r = √(I/A), S = 2I/d and Cw = Iy h0²/4",
    (_, shape) => {
      expect(Math.abs(Math.sqrt(shape.ixMm4 / shape.areaMm2) / shape.rxMm - 1)).toBeLessThan(0.006);
      expect(Math.abs(Math.sqrt(shape.iyMm4 / shape.areaMm2) / shape.ryMm - 1)).toBeLessThan(0.006);
      expect(Math.abs((2 * shape.ixMm4) / shape.depthMm / shape.sxMm3 - 1)).toBeLessThan(0.006);
      const h0 = shape.depthMm - shape.flangeMm;
      expect(Math.abs((shape.iyMm4 * h0 * h0) / 4 / shape.cwMm6 - 1)).toBeLessThan(0.012);
    },
  );

  it.each(rolledChannels.map((shape) => [shape.name, shape] as const))(
    "%s agrees with thin-walled Cw within 15 %% and with S, r within 1 %%",
    (_, shape) => {
      // Printed values count the tapered flanges; the formula does not.
      const bm = shape.flangeWidthMm - shape.webMm / 2;
      const hm = shape.depthMm - shape.flangeMm;
      const { flangeMm: tf, webMm: tw } = shape;
      const closed = ((tf * bm ** 3 * hm ** 2) / 12) * ((3 * bm * tf + 2 * hm * tw) / (6 * bm * tf + hm * tw));
      expect(Math.abs(closed / shape.cwMm6 - 1)).toBeLessThan(0.15);
      expect(Math.abs((2 * shape.ixMm4) / shape.depthMm / shape.sxMm3 - 1)).toBeLessThan(0.01);
      expect(Math.abs(Math.sqrt(shape.iyMm4 / shape.areaMm2) / shape.ryMm - 1)).toBeLessThan(0.01);
      expect(channelShearCentre(shape)).toBeGreaterThan(shape.centroidFromBackMm);
    },
  );

  it("every name is found and none is given twice", () => {
    expect(new Set(namedSections.map(({ name }) => name)).size).toBe(namedSections.length);
    for (const section of namedSections) expect(findSection(section.name)).toBe(section);
    expect(findSection("W99x1")).toBeUndefined();
  });
});

describe("corrugatedSheet, against the table of folds (derived there)", () => {
  it.each([
    ["side", 1.6, 1.0643, 1.703, 360.7, 190.7],
    ["side", 2, 1.0643, 2.129, 451.2, 235.9],
    ["end", 2, 1.2482, 2.496, 1026, 423.3],
    ["roof", 2, 1.1017, 2.203, 190.2, 172.9],
  ] as const)("%s %d has s/w %d, A %d mm²/mm, I %d mm⁴/mm, W/10 %d mm³/mm", (panel, t, ratio, a, i, w) => {
    const sheet = corrugatedSheet(folds[panel], t);
    expect(sheet.developedMm / sheet.pitchMm).toBeCloseTo(ratio, 3);
    expect(sheet.areaMm2PerMm).toBeCloseTo(a, 2);
    expect(Math.abs(sheet.iMm4PerMm / i - 1)).toBeLessThan(0.001);
    expect(Math.abs((sheet.sMm3PerMm * 10) / w - 1)).toBeLessThan(0.001);
  });
});
