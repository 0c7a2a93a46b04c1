import { describe, expect, it } from "vitest";
import { decisionSentence } from "../../src/wording/decision-sentence.ts";
import { moneyText } from "../../src/wording/money.ts";

describe("moneyText", () => {
  it.each([
    [35_749.6, "USD", "$35,750"],
    [4, "USD", "$0"],
    [-6104, "USD", "−$6,100"],
    [-3, "USD", "$0"],
    [1_234_567, "EUR", "1,234,570 EUR"],
    [999.99, "USD", "$1,000"],
  ])("%d %s is %s, to the nearest ten", (amount, currency, words) => {
    expect(moneyText(amount, currency)).toBe(words);
  });
});

describe("decisionSentence", () => {
  const digest = "0".repeat(64);
  const id = "00000000-0000-4000-8000-000000000001";
  const decision = {
    ...{ id, revision: "B", requestId: null, decision: "agree" as const, reason: null, contentDigest: digest },
    ...{ costBookDigest: digest, premiumDigest: digest, money: 6104, currency: "USD", forShow: true },
    ...{ author: { id, name: "A", role: "owner" as const }, decidedAt: "2026-03-01T08:00:00.000Z" },
  };
  it("says what was agreed to, of what, and why", () => {
    expect(decisionSentence(decision)).toBe("The owner agreed to $6,100 for revision B.");
    expect(decisionSentence({ ...decision, requestId: id, decision: "decline", reason: "Too dear." })).toBe(
      "The owner declined $6,100 for a change asked for on revision B: Too dear.",
    );
  });
});
