import { expect, it } from "vitest";
import { WorkingId } from "../src/index.ts";

it("WorkingId takes the names of parts and places, and nothing a database or an address cannot carry", () => {
  for (const id of ["f2 bottom side rail right over 0.00–11.99 m", "D+L 1"])
    expect(WorkingId.parse(id), JSON.stringify(id)).toBe(id);
  for (const id of ["", "\0", "f2\0", "f2\nrail", "\ud800", "x".repeat(401)])
    expect(WorkingId.safeParse(id).success, JSON.stringify(id)).toBe(false);
});
