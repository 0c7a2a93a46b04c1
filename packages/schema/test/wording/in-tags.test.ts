import { inTags } from "@cornerway/schema";
import { describe, expect, it } from "vitest";

const names = new Map([
  ["b4", "B4"],
  ["5e1f0a10-0000-4000-8000-000000000900", "P1"],
  ["D", "X9"],
]);

describe("inTags", () => {
  it("puts tags in the stead of ids, whole words only", () => {
    expect(inTags("1.2D + 1.6L: L everywhere, T b4 settled", names)).toBe("1.2D + 1.6L: L everywhere, T B4 settled");
    expect(inTags("ab4 b45 b4, (b4)", names)).toBe("ab4 b45 B4, (B4)");
  });

  it("knows long ids, and leaves what has no tag", () => {
    expect(inTags("T 5e1f0a10-0000-4000-8000-000000000900 settled", names)).toBe("T P1 settled");
    expect(inTags("L unit q7", names)).toBe("L unit q7");
  });
});
