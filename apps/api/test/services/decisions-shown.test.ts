import type { Decision } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { decisionsShown } from "../../src/services/decisions-shown.ts";

const [content, other, book] = ["1", "2", "3"].map((figure) => figure.repeat(64)) as [string, string, string];
const author = { id: "00000000-0000-4000-8000-000000000001", name: "A", role: "owner" as const };
const decision = (id: string, more: Partial<Decision> = {}): Decision => ({
  ...{ id, revision: "A", requestId: null, decision: "agree", reason: null, contentDigest: content },
  ...{ costBookDigest: book, premiumDigest: other, money: 1, currency: "USD", forShow: true, author },
  ...{ decidedAt: "2026-03-01T08:00:00.000Z", ...more },
});
const staleness = (made: Decision, latest: { letter: string; contentDigest: string }, costBookDigest = book) =>
  decisionsShown([made], { latest, costBookDigest })[0]?.stale;

describe("decisionsShown", () => {
  it("lets a decision stand while revision and cost book are those it was made on", () => {
    expect(staleness(decision("a"), { letter: "A", contentDigest: content })).toEqual([]);
  });

  it("calls it stale once the cost book, the content or both are others", () => {
    const made = decision("a");
    expect(staleness(made, { letter: "A", contentDigest: content }, other)).toEqual(["cost book"]);
    expect(staleness(made, { letter: "B", contentDigest: other })).toEqual(["content"]);
    expect(staleness(made, { letter: "B", contentDigest: other }, other)).toEqual(["content", "cost book"]);
  });

  it("lets a decision on a request stand on its revision, and in a later one that is the revision with the request", () => {
    const made = decision("a", { requestId: author.id, contentDigest: other });
    expect(staleness(made, { letter: "A", contentDigest: content })).toEqual([]);
    expect(staleness(made, { letter: "B", contentDigest: other })).toEqual([]);
    expect(staleness(made, { letter: "B", contentDigest: book })).toEqual(["content"]);
  });

  it("marks the last word on each subject", () => {
    const made = [decision("a"), decision("b", { requestId: author.id }), decision("c", { decision: "decline" })];
    const shown = decisionsShown(made, { latest: { letter: "A", contentDigest: content }, costBookDigest: book });
    expect(shown.map(({ latest }) => latest)).toEqual([false, true, true]);
  });
});
