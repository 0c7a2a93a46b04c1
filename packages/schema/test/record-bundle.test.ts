import { describe, expect, it } from "vitest";
import { PublicKey, Signature } from "../src/index.ts";

// RFC 4648 section 3.5: 64 bytes leave four spare bits in the last of 86 signs, 32 bytes two in the last of 43.
describe("a signature and a key have one text only", () => {
  it.each(["A", "Q", "g", "w"])("a signature may end in %s, whose four last bits are zero", (last) => {
    expect(Signature.safeParse("A".repeat(85) + last).success).toBe(true);
  });

  it.each(["B", "I", "h", "_", "="])(
    "a signature ending in %s is refused, though it reads as the same bytes",
    (last) => {
      expect(Signature.safeParse("A".repeat(85) + last).success).toBe(false);
    },
  );

  it("a key ends in a sign whose two last bits are zero", () => {
    expect(PublicKey.safeParse(`${"A".repeat(42)}E`).success).toBe(true);
    expect(PublicKey.safeParse(`${"A".repeat(42)}F`).success).toBe(false);
  });
});
