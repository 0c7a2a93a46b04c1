import { describe, expect, it } from "vitest";
import { seal, unseal } from "../../src/webhooks/seal.ts";

const key = "0123456789abcdef".repeat(4);

describe("seal(key, belongsTo, secret)", () => {
  it("is opened by the same key for the same thing, and is another text each time", () => {
    const [one, other] = [seal(key, "hook 1", "the secret"), seal(key, "hook 1", "the secret")];
    expect(one).not.toBe(other);
    expect(one).not.toContain("secret");
    expect([unseal(key, "hook 1", one), unseal(key, "hook 1", other)]).toEqual(["the secret", "the secret"]);
  });

  it("is not opened by another key, for another thing, or once altered", () => {
    const sealed = seal(key, "hook 1", "the secret");
    expect(() => unseal(`f${key.slice(1)}`, "hook 1", sealed)).toThrow();
    expect(() => unseal(key, "hook 2", sealed)).toThrow();
    const bytes = Buffer.from(sealed, "base64url");
    bytes[bytes.length - 1] = (bytes[bytes.length - 1] ?? 0) ^ 1;
    expect(() => unseal(key, "hook 1", bytes.toString("base64url"))).toThrow();
  });
});
