import type { Author, ChangeRequest, Decision, DecisionShown, RevisionSummary, Stamp } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { revisionLetter } from "../../src/services/revision-letter.ts";
import { whoseTurn } from "../../src/services/whose-turn.ts";

const author: Author = { id: "00000000-0000-4000-8000-000000000001", name: "A", role: "engineer" };
const digest = "0".repeat(64);
const at = (hour: number) => `2026-03-01T${String(hour).padStart(2, "0")}:00:00.000Z`;

const stamp: Stamp = {
  ...{ id: author.id, revision: "B", disposition: "Revise and resubmit", text: "x" },
  ...{ contentDigest: digest, resultDigest: digest, author, pressedAt: at(9) },
};
const revision = (more: Partial<RevisionSummary> = {}): RevisionSummary => ({
  ...{ letter: "B", contentDigest: digest, resultDigest: digest, sentAt: at(5), sentBy: author, remark: null },
  ...{ verdict: "not checked", assessment: "done", stamp: null },
  ...more,
});
const request = (more: Partial<ChangeRequest> = {}): ChangeRequest => ({
  ...{ id: author.id, number: 1, revision: "B", contentDigest: digest, text: "x", operations: [], author },
  ...{ madeAt: at(6), state: "open", answer: null },
  ...more,
});
const answered = (state: "taken in" | "declined") =>
  request({ state, answer: { by: author, at: at(7), reason: null } });

const confirmed = { confirmed: 1, waitingSince: null };
const free = { decisions: [], priced: new Set<string>() };

const decided = (hour: number, of: Partial<Decision> = {}, shown: Partial<DecisionShown> = {}): DecisionShown => ({
  decision: {
    ...{ id: author.id, revision: "B", requestId: author.id, decision: "agree", reason: null, contentDigest: digest },
    ...{ costBookDigest: digest, premiumDigest: digest, money: 1, currency: "USD", forShow: true, author },
    ...{ decidedAt: at(hour), ...of },
  },
  ...{ stale: [], latest: true, ...shown },
});

describe("whoseTurn", () => {
  it.each([
    ["nothing is sent", undefined, [], { waitsFor: "architect", since: at(1) }],
    ["the server has not assessed yet", revision({ assessment: "waiting" }), [], { waitsFor: null, since: at(5) }],
    ["a revision lies there", revision(), [], { waitsFor: "engineer", since: at(5) }],
    ["a request is open", revision(), [request()], { waitsFor: "architect", since: at(6) }],
    ["a request was taken in", revision(), [answered("taken in")], { waitsFor: "architect", since: at(7) }],
    ["all requests were declined", revision(), [answered("declined")], { waitsFor: "engineer", since: at(5) }],
    [
      "requests are of older revisions",
      revision(),
      [request({ revision: "A" })],
      { waitsFor: "engineer", since: at(5) },
    ],
    ["it is stamped", revision({ stamp }), [request()], { waitsFor: "architect", since: at(9) }],
  ] as const)("when %s", (_when, latest, requests, turn) => {
    expect(whoseTurn(at(1), latest, requests, confirmed, free)).toEqual(turn);
  });

  it.each([
    ["nobody comes as the engineer", 0, null, { waitsFor: "engineer", since: at(5) }],
    ["the only engineer came before the revision and is not confirmed", 0, at(3), { waitsFor: "owner", since: at(5) }],
    ["the only engineer came after the revision and is not confirmed", 0, at(8), { waitsFor: "owner", since: at(8) }],
    ["one engineer is confirmed and another is not", 1, at(8), { waitsFor: "engineer", since: at(5) }],
  ] as const)("when a revision lies there and %s", (_when, confirmedCount, waitingSince, turn) => {
    const engineers = { confirmed: confirmedCount, waitingSince };
    expect(whoseTurn(at(1), revision(), [], engineers, free)).toEqual(turn);
  });

  it("stays the architect's while they draw, whoever waits to be confirmed", () => {
    const engineers = { confirmed: 0, waitingSince: at(2) };
    expect(whoseTurn(at(1), undefined, [], engineers, free)).toEqual({ waitsFor: "architect", since: at(1) });
  });
});

describe("whoseTurn with prices", () => {
  const priced = new Set([author.id]);
  const owners = { waitsFor: "owner", since: at(6) } as const;
  it.each([
    ["has a price nobody decided on", [], owners],
    ["is agreed to", [decided(8)], { waitsFor: "architect", since: at(8) }],
    ["is declined by the owner", [decided(8, { decision: "decline" })], { waitsFor: "architect", since: at(8) }],
    ["was agreed to before the cost book changed", [decided(8, {}, { stale: ["cost book"] })], owners],
    ["is undecided while the revision is agreed to", [decided(8, { requestId: null })], owners],
  ] as const)("when an open request %s", (_when, decisions, turn) => {
    expect(whoseTurn(at(1), revision(), [request()], confirmed, { decisions, priced })).toEqual(turn);
  });

  it("is the architect's while any open request can be answered", () => {
    const requests = [request(), request({ id: "00000000-0000-4000-8000-000000000002", madeAt: at(7) })];
    const turn = { waitsFor: "architect", since: at(7) };
    expect(whoseTurn(at(1), revision(), requests, confirmed, { decisions: [], priced })).toEqual(turn);
  });

  it.each([
    ["No exceptions taken", [], { waitsFor: "owner", since: at(9) }],
    ["Make corrections noted", [decided(8, { requestId: null })], { waitsFor: "architect", since: at(8) }],
    ["Rejected", [], { waitsFor: "architect", since: at(9) }],
  ] as const)("when the stamp says %s", (disposition, decisions, turn) => {
    const stamped = revision({ stamp: { ...stamp, disposition } });
    expect(whoseTurn(at(1), stamped, [], confirmed, { decisions, priced })).toEqual(turn);
  });
});

describe("revisionLetter", () => {
  it.each([
    [1, "A"],
    [26, "Z"],
    [27, "AA"],
    [52, "AZ"],
    [53, "BA"],
    [702, "ZZ"],
  ] as const)("%i is %s", (ordinal, letter) => {
    expect(revisionLetter(ordinal)).toBe(letter);
  });
  it.each([0, 703, 1.5])("throws on %s", (ordinal) => expect(() => revisionLetter(ordinal)).toThrow(RangeError));
});
