import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { createPrivateKey, generateKeyPairSync, randomUUID, sign, type KeyObject } from "node:crypto";
import { canonicalJson, type BundleEntry, type RecordBundle } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { verifyAnswer } from "../../src/cli/verify-answer.ts";
import { verifyCommand } from "../../src/cli/verify-command.ts";
import { entryLeaf, payloadDigest } from "../../src/record/entry-leaf.ts";
import { makeBundle } from "../../src/record/make-bundle.ts";
import { rawPublicKey, stateKey, type SigningKey } from "../../src/record/record-key.ts";
import { headOver } from "../../src/record/tree-proofs.ts";
import { verifyBundle } from "../../src/record/verify-bundle.ts";

const project = "5f0e1d2c-3b4a-4958-8776-655443322110";
const newKey = (since: string, before?: SigningKey) =>
  stateKey(generateKeyPairSync("ed25519").privateKey, since, before);
const first = newKey("2026-01-01T00:00:00.000Z");
const second = newKey("2026-06-01T00:00:00.000Z", first);

function entry(number: number, withheld = false): BundleEntry {
  const payload = { kind: "note settled", noteId: randomUUID() };
  const salt = String(number).padStart(64, "a");
  return {
    ...{ number, time: `2026-07-0${number}T10:00:00.000Z`, actor: randomUUID(), role: "architect", kind: payload.kind },
    digest: payloadDigest(payload, salt, undefined),
    opened: withheld ? null : { salt, actorName: "Tilda Varrow", payload },
  };
}

const leavesOf = (entries: readonly BundleEntry[]) =>
  entries.map(({ opened: _opened, ...facts }) => entryLeaf({ project, ...facts }));

function bundled(entries: readonly BundleEntry[], keys = [first, second]): string {
  const recorded = { project, name: "Lock Lane", entries, head: headOver(leavesOf(entries)) };
  const signer = keys.at(-1) ?? first;
  return makeBundle(
    { ...recorded, time: "2026-08-01T00:00:00.000Z" },
    keys.map(({ stated }) => stated),
    signer,
  );
}

const entries = [entry(1), entry(2), entry(3, true), entry(4)];
const text = bundled(entries);
const known = { fingerprint: first.stated.fingerprint };
const isWhole = (of: string, outside = {}) => verifyBundle(of, outside).whole;

describe("Ed25519", () => {
  // RFC 8032 section 7.1, test 1: the empty message. From memory.
  it("signs as RFC 8032 prints it", () => {
    const secret = "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60";
    const key: KeyObject = createPrivateKey({
      key: Buffer.from(`302e020100300506032b657004220420${secret}`, "hex"),
      format: "der",
      type: "pkcs8",
    });
    expect(Buffer.from(rawPublicKey(key), "base64url").toString("hex")).toBe(
      "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a",
    );
    expect(sign(null, Buffer.alloc(0), key).toString("hex")).toBe(
      "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b",
    );
  });
});

describe("verifyBundle", () => {
  it("finds an untouched bundle whole, and its origin proved only by something from outside", () => {
    expect(verifyBundle(text, {})).toMatchObject({ whole: true, originProved: false, withheld: 1 });
    expect(verifyBundle(text, known)).toMatchObject({ whole: true, originProved: true });
    const head = { number: 2, head: headOver(leavesOf(entries), 2) };
    expect(verifyBundle(text, { head })).toMatchObject({ whole: true, originProved: true });
  });

  it("catches every flip of a bit in every byte", () => {
    const bytes = Buffer.from(text);
    const passed: number[] = [];
    for (let at = 0; at < bytes.length; at += 1) {
      const altered = Buffer.from(bytes);
      altered[at] = (altered[at] ?? 0) ^ (1 << (at % 8));
      if (isWhole(altered.toString("utf8"))) passed.push(at);
    }
    expect(passed).toEqual([]);
  });

  const read = (): RecordBundle => JSON.parse(text);
  it.each<[string, (bundle: RecordBundle) => RecordBundle]>([
    ["an entry dropped", (bundle) => ({ ...bundle, entries: bundle.entries.toSpliced(1, 1) })],
    ["the last entry dropped", (bundle) => ({ ...bundle, entries: bundle.entries.slice(0, -1) })],
    ["an entry told twice", (bundle) => ({ ...bundle, entries: [...bundle.entries, entries[3] ?? entry(4)] })],
    ["two entries changed about", (bundle) => ({ ...bundle, entries: bundle.entries.toReversed() })],
    ["a key left out", (bundle) => ({ ...bundle, keys: bundle.keys.slice(1) })],
    [
      "a withheld payload opened with another",
      (bundle) => {
        const opened = { salt: "b".repeat(64), actorName: "Tilda Varrow", payload: { kind: "note settled" } };
        return { ...bundle, entries: bundle.entries.map((one) => (one.opened === null ? { ...one, opened } : one)) };
      },
    ],
    ["another name of the project", (bundle) => ({ ...bundle, name: "Lock Lane 2" })],
  ])("catches %s", (_what, alter) => {
    expect(isWhole(canonicalJson(alter(read())))).toBe(false);
  });

  it("finds a bundle rebuilt whole with another key consistent, and catches it by the key or by an earlier head", () => {
    const forged = [entry(1), entry(2), entry(3), entry(4)];
    const rebuilt = bundled(forged, [newKey("2026-01-01T00:00:00.000Z")]);
    expect(verifyBundle(rebuilt, {})).toMatchObject({ whole: true, originProved: false });
    expect(isWhole(rebuilt, known)).toBe(false);
    expect(isWhole(rebuilt, { head: { number: 2, head: headOver(leavesOf(entries), 2) } })).toBe(false);
  });

  it("catches a chain whose second key the first never signed", () => {
    const stranger = newKey("2026-06-01T00:00:00.000Z", newKey("2026-01-01T00:00:00.000Z"));
    const claimed = { ...stranger, stated: { ...stranger.stated, follows: second.stated.follows } };
    expect(isWhole(bundled(entries, [first, claimed]))).toBe(false);
  });
});

describe("cornerway verify", () => {
  it("says what it checked, that origin is not proved without something from outside, and the cautions", () => {
    const plain = verifyCommand("bundle.json", text, {});
    expect(plain.code).toBe(0);
    expect(plain.out).toContain("entries 1 to 4, each in its place, 1 withheld");
    expect(plain.out).toContain("internally consistent, origin not proved");
    expect(plain.out).toContain("Screening, preliminary until sealed by a licensed engineer.");
    expect(verifyCommand("bundle.json", text, known).out).toContain("whole, and from where it was expected");
  });

  it("names what was altered and ends with 1", () => {
    const altered = verifyCommand("bundle.json", text.replace("Tilda", "Hilda"), known);
    expect(altered).toMatchObject({
      code: 1,
      out: "",
      err: "bundle.json: ALTERED: the signature of the bundle does not hold\n",
    });
  });

  it("reads a file with the key or the head that its reader knows, and nothing but that", async () => {
    const folder = mkdtempSync(path.join(tmpdir(), "bundle-"));
    const file = path.join(folder, "bundle.json");
    writeFileSync(file, text);
    const head = `2:${headOver(leavesOf(entries), 2)}`;
    expect(await verifyAnswer([file, "--key", first.stated.fingerprint, "--head", head])).toMatchObject({ code: 0 });
    expect(await verifyAnswer([file, "--head", `2:${"0".repeat(64)}`])).toMatchObject({
      code: 1,
      err: expect.stringContaining("ALTERED: the record up to 2 is not the one whose head is known"),
    });
    for (const words of [[], [file, "--head", "2"], [file, "--key", "abc"], [file, file], [file, "--quick"]])
      expect(await verifyAnswer(words)).toBeUndefined();
    rmSync(folder, { recursive: true });
  });
});
