import { expect, it } from "vitest";
import { postSizeMm } from "../../src/catalog/post-size.ts";

it.each([
  ["HSS4x4x1/4", 101.6],
  ["HSS 102x102x6.4", 102],
  ["W6x15", 152.4],
  ["SHS 100×100×6", 100],
  ["column", 100],
] as const)("postSizeMm reads %s as %d mm wide", (section, widthMm) => {
  expect(postSizeMm(section)).toBeCloseTo(widthMm, 9);
});
