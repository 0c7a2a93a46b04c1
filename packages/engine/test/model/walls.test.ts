import { describe, expect, it } from "vitest";
import { wallCases, wallReadings } from "./support/wall-cases.ts";

// Source: shared/reference/walls.json, judged as the file says.
describe.each(wallCases.map((wall) => [wall.name, wall] as const))("wall: %s", (_name, wall) => {
  it.each(wallReadings(wall).map((reading) => [reading.what, reading] as const))(
    "%s agrees with the explicit sheet as the file asks",
    (_what, { reference, allowed, ours }) => {
      const own = ours();
      if ("absolute" in allowed) return expect(Math.abs(own - reference)).toBeLessThan(allowed.absolute);
      expect(own / reference - 1).toBeGreaterThan(-allowed.short);
      expect(own / reference - 1).toBeLessThan(allowed.over);
    },
  );
});
