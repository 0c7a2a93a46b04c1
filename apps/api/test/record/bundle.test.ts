import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { createPrivateKey, generateKeyPairSync, randomUUID, sign, type KeyObject } from "node:crypto";
import { canonicalJson, type BundleEntry, type RecordBundle, type ToldEntry } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { verifyAnswer } from "../../src/cli/verify-answer.ts";
import { verifyCommand } from "../../src/cli/verify-command.ts";
import { entryLeaf, payloadDigest } from "../../src/record/entry-leaf.ts";
import { makeBundle } from "../../src/record/make-bundle.ts";
import { signHead } from "../../src/record/sign-head.ts";
import { rawPublicKey, stateKey, type SigningKey } from "../../src/record/record-key.ts";
import { headOver } from "../../src/record/tree-proofs.ts";
import { verifyBundle } from "../../src/record/verify-bundle.ts";

const project = "5f0e1d2c-3b4a-4958-8776-655443322110";
const newKey = (since: string, before?: SigningKey) =>
  stateKey(generateKeyPairSync("ed25519").privateKey, since, before);
const first = newKey("2026-01-01T00:00:00.000Z");
const second = newKey("2026-06-01T00:00:00.000Z", first);

function entry(number: number, withheld = false): ToldEntry {
  const payload = { kind: "note settled", noteId: randomUUID() };
  const salt = String(number).padStart(64, "a");
  return {
    ...{ number, time: `2026-07-0${number}T10:00:00.000Z`, actor: randomUUID(), role: "architect", kind: payload.kind },
    digest: payloadDigest(payload, salt, undefined),
    opened: withheld ? null : { salt, actorName: "Tilda Varrow", payload },
  };
}

const leafOf = ({ opened: _opened, ...facts }: ToldEntry) => entryLeaf({ project, ...facts });
const leavesOf = (entries: readonly BundleEntry[]) => entries.map((one) => ("leaf" in one ? one.leaf : leafOf(one)));
const hidden = (one: ToldEntry): BundleEntry => ({ number: one.number, leaf: leafOf(one) });

function bundled(entries: readonly BundleEntry[], keys = [first, second]): string {
  const recorded = { project, name: "Lock Lane", entries, head: headOver(leavesOf(entries)) };
  const signer = keys.at(-1) ?? first;
  return makeBundle(
    { ...recorded, time: "2026-08-01T00:00:00.000Z" },
    keys.map(({ stated }) => stated),
    signer,
  );
}

const entries = [entry(1), entry(2), entry(3, true), entry(4), hidden(entry(5))];
const text = bundled(entries);
const known = { fingerprint: first.stated.fingerprint };
const isWhole = (of: string, outside = {}) => verifyBundle(of, outside).whole;

describe("Ed25519", () => {
  // RFC 8032 section 7.1, tests 1 to 3, as test suites of several independent implementations copy them.
  it.each([
    {
      test: 1,
      secret: "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60",
      publicKey: "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a",
      message: "",
      signature:
        "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b",
    },
    {
      test: 2,
      secret: "4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb",
      publicKey: "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c",
      message: "72",
      signature:
        "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00",
    },
    {
      test: 3,
      secret: "c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7",
      publicKey: "fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025",
      message: "af82",
      signature:
        "6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac18ff9b538d16f290ae67f760984dc6594a7c15e9716ed28dc027beceea1ec40a",
    },
  ])("signs as RFC 8032 section 7.1 prints it, test $test", ({ secret, publicKey, message, signature }) => {
    const key: KeyObject = createPrivateKey({
      key: Buffer.from(`302e020100300506032b657004220420${secret}`, "hex"),
      format: "der",
      type: "pkcs8",
    });
    expect(Buffer.from(rawPublicKey(key), "base64url").toString("hex")).toBe(publicKey);
    expect(sign(null, Buffer.from(message, "hex"), key).toString("hex")).toBe(signature);
  });
});

describe("verifyBundle", () => {
  it("finds an untouched bundle whole, and its origin proved only by something from outside", () => {
    expect(verifyBundle(text, {})).toMatchObject({ whole: true, originProved: false, withheld: 2 });
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
        return {
          ...bundle,
          entries: bundle.entries.map((one) => ("opened" in one && one.opened === null ? { ...one, opened } : one)),
        };
      },
    ],
    [
      "a hidden entry put in another's place",
      (bundle) => ({ ...bundle, entries: [...bundle.entries.slice(0, 4), hidden(entry(5))] }),
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
    expect(plain.out).toContain("entries 1 to 5, each in its place, 2 withheld");
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
    const signed = path.join(folder, "head.json");
    const give = (head: object) => writeFileSync(signed, JSON.stringify(head));
    const given = signHead(
      { project, number: 2, head: headOver(leavesOf(entries), 2), time: "2026-07-03T00:00:00.000Z" },
      first,
    );
    give(given);
    expect(await verifyAnswer([file, "--head", signed])).toMatchObject({
      code: 0,
      out: expect.stringContaining("whole, and from where it was expected"),
    });
    give({ ...given, time: "2026-07-04T00:00:00.000Z" });
    expect((await verifyAnswer([file, "--head", signed]))?.err).toContain("the head that is known does not hold");
    give({ ...given, project: randomUUID() });
    expect((await verifyAnswer([file, "--head", signed]))?.err).toContain("is of another project");
    give(signHead(given, newKey("2026-01-01T00:00:00.000Z")));
    expect((await verifyAnswer([file, "--head", signed]))?.err).toContain("a key that is not among its keys");
    give({});
    expect((await verifyAnswer([file, "--head", signed]))?.err).toContain("is no signed head");
    for (const words of [[], [file, "--head"], [file, "--key", "abc"], [file, file], [file, "--quick"]])
      expect(await verifyAnswer(words)).toBeUndefined();
    rmSync(folder, { recursive: true });
  });
});
