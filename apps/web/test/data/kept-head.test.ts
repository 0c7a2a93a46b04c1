import { createHash } from "node:crypto";
import type { SignedHead } from "@cornerway/schema";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { checkKeptHead, continuesKept } from "../../src/data/kept-head.ts";

const project = "00000000-0000-4000-8000-000000000009";
const kept = new Map<string, unknown>();
const shelf = {
  get: async (key: string): Promise<unknown> => kept.get(key),
  put: async (key: string, value: unknown): Promise<void> => void kept.set(key, value),
};
const check = () => checkKeptHead(project, shelf);

/** RFC 9162 section 2.1.1 written out for four leaves; apart from the code. */
const sha256 = (...parts: Buffer[]) => createHash("sha256").update(Buffer.concat(parts)).digest();
const leaf = (text: string) => sha256(Buffer.of(0), Buffer.from(text));
const node = (left: Buffer, right: Buffer) => sha256(Buffer.of(1), left, right);
const hex = (bytes: Buffer) => bytes.toString("hex");
const [a, b, c, d] = ["a", "b", "c", "d"].map(leaf) as [Buffer, Buffer, Buffer, Buffer];
const three = node(node(a, b), c);
const four = node(node(a, b), node(c, d));
/** From three to four leaves, section 2.1.4.1: c, d, and the node over a and b. */
const fromThree = [c, d, node(a, b)].map(hex);

const signed = (number: number, head: Buffer): SignedHead => ({
  ...{ project, number, head: hex(head), time: "2027-03-10T09:00:00.000Z" },
  ...{ fingerprint: "f".repeat(64), signature: "A".repeat(86) },
});

describe("a record", () => {
  it("continues the head kept of it when the proof leads from one to the other, and not otherwise", () => {
    expect(continuesKept(signed(3, three), { head: signed(4, four), proof: fromThree })).toBe(true);
    expect(continuesKept(signed(3, three), { head: signed(3, three), proof: [] })).toBe(true);
    const altered = node(node(a, leaf("other")), c);
    expect(continuesKept(signed(3, altered), { head: signed(4, four), proof: fromThree })).toBe(false);
    expect(continuesKept(signed(4, four), { head: signed(3, three), proof: [] })).toBe(false);
    const elsewhere = { ...signed(4, four), project: "00000000-0000-4000-8000-000000000008" };
    expect(continuesKept(signed(3, three), { head: elsewhere, proof: fromThree })).toBe(false);
  });
});

describe("the head kept in this browser", () => {
  let answers: Record<string, unknown>;
  beforeEach(() => {
    kept.clear();
    answers = {};
    vi.stubGlobal("fetch", async (request: Request) => {
      const name = new URL(request.url).pathname.split("/").at(-1) ?? "";
      return new Response(JSON.stringify(answers[name]), { headers: { "content-type": "application/json" } });
    });
  });
  afterEach(() => vi.unstubAllGlobals());

  it("is the first one seen, and moves on with a record that continues it", async () => {
    answers["head"] = signed(3, three);
    expect(await check()).toMatchObject({ is: "first seen" });
    answers["head"] = signed(4, four);
    answers["continuation"] = { from: 3, proof: fromThree, head: signed(4, four) };
    expect(await check()).toMatchObject({ is: "continued", head: { number: 4 } });
    expect([...kept.values()]).toEqual([signed(4, four)]);
  });

  it.each([
    ["an entry before it was altered", signed(4, node(node(a, leaf("other")), node(c, d))), fromThree],
    ["an older copy was put back", signed(2, node(a, b)), []],
    ["an entry at its own place was altered", signed(3, node(node(a, b), leaf("other"))), []],
  ])("stays, and the record is said to be broken, when %s", async (_what, present, proof) => {
    answers["head"] = signed(3, three);
    await check();
    answers["head"] = present;
    answers["continuation"] = { from: 3, proof, head: present };
    expect(await check()).toEqual({ is: "broken", kept: signed(3, three), present });
    expect(await check()).toMatchObject({ is: "broken" });
    expect([...kept.values()]).toEqual([signed(3, three)]);
  });
});
