import { canonicalJson, type SignedHead } from "@cornerway/schema";
import { createPublicKey, generateKeyPairSync, verify } from "node:crypto";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { makeSet } from "../../src/permit-set/make-set.ts";
import type { Block } from "../../src/permit-set/paper/ink.ts";
import type { Page } from "../../src/permit-set/paper/page.ts";
import { stateKey } from "../../src/record/record-key.ts";
import { signHead } from "../../src/record/sign-head.ts";
import { listKeys, rotateKey } from "../../src/record/signing-key.ts";
import { gatherSource } from "../../src/services/permit-sets/gather-source.ts";
import { lastNumber } from "../../src/store/record-rows.ts";
import { openReviewRoom, signInAll, type ReviewRoom } from "../support/review-room.ts";
import { place } from "../support/sample.ts";
import { smallScheme, sourceOf } from "../support/sample-set.ts";
import { startService, type TestService } from "../support/service.ts";

const wordsOf = (blocks: readonly Block[]): string[] =>
  blocks.flatMap(({ inks, children }) => [
    ...inks.flatMap((ink) => (ink.kind === "text" ? [ink.text] : [])),
    ...wordsOf(children ?? []),
  ]);
const textOf = ({ blocks }: Page): string => wordsOf(blocks).join("\n");

describe("the head on the pages of a set", () => {
  const key = stateKey(generateKeyPairSync("ed25519").privateKey, "2026-01-01T00:00:00.000Z");
  const source = sourceOf(smallScheme());
  const { number, head, at } = source.record;
  const project = "00000000-0000-4000-8000-000000000000";
  const signed: SignedHead = signHead({ project, number, head, time: at }, key);
  const pagesOf = (of: typeof source): Page[] => {
    const made = makeSet(of);
    if (!made.ok) throw new Error(made.why.join("; "));
    return made.set.pages;
  };

  it("stands on every page with the key that signed it, or says that none did", () => {
    const { fingerprint } = key.stated;
    for (const page of pagesOf({ ...source, record: { ...source.record, signed } })) {
      expect(textOf(page), page.number).toContain(`head ${head.slice(0, 8)}`);
      expect(textOf(page), page.number).toContain(`key ${fingerprint.slice(0, 8)}`);
    }
    for (const page of pagesOf(source)) expect(textOf(page), page.number).toContain("… not signed");
  });

  it("can be checked from the last page of the record alone, by any program for RFC 8032", () => {
    const page = pagesOf({ ...source, record: { ...source.record, signed } }).findLast(({ number: name }) =>
      name.startsWith("R"),
    );
    const words = page === undefined ? [] : wordsOf(page.blocks);
    const digests = words.map((each) => each.replaceAll(" ", "")).filter((each) => /^[0-9a-f]{64}$/.test(each));
    expect(digests).toEqual([head, key.stated.fingerprint]);
    const at = words.findIndex((each) => /^[\w-]{43}$/.test(each));
    const signature = Buffer.from(`${words[at]}${words[at + 1]}`, "base64url");
    expect(signature).toHaveLength(64);
    const bytes = Buffer.from(canonicalJson({ head, number, project, time: source.record.at, what: "record head" }));
    const jwk = { kty: "OKP", crv: "Ed25519", x: key.stated.publicKey };
    expect(verify(null, bytes, createPublicKey({ key: jwk, format: "jwk" }), signature)).toBe(true);
    expect(words.join(" ")).toContain(`time ${source.record.at}`);
  });
});

describe("the head a set is printed from", () => {
  const secretsKey = "13".repeat(32);
  let service: TestService;
  let room: ReviewRoom;
  beforeAll(async () => {
    service = await startService({ WORKER: "apart", SECRETS_KEY: secretsKey });
    room = await openReviewRoom(service, await signInAll(service));
    await room.send([place(1)]);
  });
  afterAll(() => service.close());

  it("is signed by the key of its time, and so the same to the last byte after another key took its place", async () => {
    const db = service.owner.connection;
    const upTo = (await lastNumber(db, room.projectId)) ?? 0;
    const signedNow = async (key: string | undefined) =>
      (await gatherSource(db, { projectId: room.projectId, letter: "A", units: "SI", upTo }, key))?.record.signed;
    const before = await signedNow(secretsKey);
    await rotateKey(db, secretsKey);
    expect(await signedNow(secretsKey)).toEqual(before);
    expect((await listKeys(db))[0]?.fingerprint).toBe(before?.fingerprint);
    expect(await signedNow(undefined)).toBeNull();
    expect(await signedNow("57".repeat(32))).toBeNull();
  });
});
