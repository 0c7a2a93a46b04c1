import { describe, expect, it } from "vitest";
import { weekOf } from "../../src/screens/desk/week-of.ts";

describe("weekOf(moments, now)", () => {
  const noon = new Date(2027, 2, 12, 12).getTime();
  const hoursAgo = (hours: number) => new Date(noon - hours * 3_600_000).toISOString();

  it("counts each moment on its own day, oldest day first, today last", () => {
    const days = weekOf([hoursAgo(1), hoursAgo(2), hoursAgo(25), hoursAgo(24 * 6)], noon);
    expect(days.map(({ count }) => count)).toEqual([1, 0, 0, 0, 0, 1, 2]);
    expect(days.map(({ today }) => today)).toEqual([false, false, false, false, false, false, true]);
    expect(days.at(-1)?.label).toBe("Fri 12");
  });

  it("leaves out what is older than the week", () => {
    expect(weekOf([hoursAgo(24 * 8)], noon).every(({ count }) => count === 0)).toBe(true);
  });
});
