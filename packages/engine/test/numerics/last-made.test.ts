import { describe, expect, it } from "vitest";
import { LastMade } from "../../src/numerics/last-made.ts";

describe("what was last made of an object", () => {
  it("is given again as long as all it hangs on is the same, and made anew where anything is another", () => {
    const last = new LastMade<string>();
    const [of, besides] = [{}, [{}, "text", 3]];
    let made = 0;
    const make = (): string => `${++made}`;
    expect([last.take(of, besides, make), last.take(of, [...besides], make)]).toEqual(["1", "1"]);
    expect(last.take(of, [{}, "text", 3], make)).toBe("2");
    expect(last.take(of, [...besides, 4], make)).toBe("3");
    expect(last.take({}, [...besides, 4], make)).toBe("4");
  });
});
