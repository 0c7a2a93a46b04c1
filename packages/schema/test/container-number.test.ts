import { describe, expect, it } from "vitest";
import { checkDigit, ContainerNumber, containerNumberWords } from "../src/index.ts";

describe("ContainerNumber", () => {
  // The example of ISO 6346 annex A, worked by hand: C 13, S 30, Q 28, U 32, 3 0 5 4 3 8 times 1, 2, 4 … 512:
  // 13 + 60 + 112 + 256 + 48 + 0 + 320 + 512 + 768 + 4096 = 6185 = 562·11 + 3.
  it("takes the standard's own example, however it is spaced", () => {
    expect(checkDigit("CSQU305438")).toBe(3);
    expect(ContainerNumber.parse("csqu 305438-3")).toBe("CSQU3054383");
    expect(containerNumberWords("CSQU3054383")).toBe("CSQU 305438 3");
  });

  it("gives each letter its value, without 11, 22 and 33", () => {
    // A lone letter in the first place counts once, so the digit is its value modulo 11: A 10 → 0, B 12 → 1, K 21 → 10 → 0, L 23 → 1, U 32 → 10 → 0, V 34 → 1, Z 38 → 5.
    const digits = ["A", "B", "K", "L", "U", "V", "Z"].map((letter) => checkDigit(`${letter}000000000`));
    expect(digits).toEqual([0, 1, 0, 1, 0, 1, 5]);
  });

  it("says which check digit would fit", () => {
    const read = ContainerNumber.safeParse("CSQU3054384");
    expect(read.error?.issues[0]?.message).toBe("the check digit does not fit; for the rest it would be 3");
  });

  it.each(["CSQU305438", "CS1U3054383", "CSQA3054383", "", "CSQU30543833"])("refuses %j", (text) =>
    expect(ContainerNumber.safeParse(text).success).toBe(false),
  );
});
