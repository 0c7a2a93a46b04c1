import { ConsistencyProof, InclusionProof, isContinued, ListedKey, RecordBundle, SignedHead } from "@cornerway/schema";
import supertest from "supertest";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { z } from "zod";
import { isHeadSigned } from "../../src/record/sign-head.ts";
import { isIncluded } from "../../src/record/tree-proofs.ts";
import { verifyBundle } from "../../src/record/verify-bundle.ts";
import { expectProblem } from "../support/expect-problem.ts";
import { act, note, place } from "../support/sample.ts";
import { startService, type Browser, type TestService } from "../support/service.ts";

let service: TestService;
let architect: Browser;
let reader: Browser;
let record: string;

beforeAll(async () => {
  service = await startService({ SECRETS_KEY: "ab".repeat(32), WORKER: "apart" });
  architect = await service.signIn("architect");
  reader = await service.signIn("reader");
});
afterAll(() => service.close());
beforeEach(async () => {
  const project = `/api/projects/${await service.openProject()}`;
  record = `${project}/record`;
  for (const n of [1, 2, 3]) await architect.post(`${project}/draft/acts`, act(n - 1, [place(n)])).expect(200);
  await architect.post(`${project}/notes`, note("g1")).expect(201);
});

const headOf = async (query = "") => SignedHead.parse((await architect.get(`${record}/head${query}`).expect(200)).body);
const keys = async () => z.array(ListedKey).parse((await supertest(service.app.server).get("/api/record-keys")).body);
const entriesOf = async (browser: Browser) =>
  (await browser.get(record).expect(200)).body as { number: number; leaf: string; head: string }[];

describe("a head", () => {
  it("is signed by a key whose fingerprint everyone may read, and is the one beside the entry", async () => {
    const entries = await entriesOf(architect);
    const [last, third] = [await headOf(), await headOf("?number=3")];
    expect([last.number, last.head]).toEqual([entries.length, entries.at(-1)?.head]);
    expect(third.head).toBe(entries[2]?.head);
    const key = (await keys()).at(-1);
    expect(key?.fingerprint).toBe(last.fingerprint);
    expect(isHeadSigned(third, key?.publicKey ?? "")).toBe(true);
    expect(isHeadSigned({ ...third, number: 4 }, key?.publicKey ?? "")).toBe(false);
  });

  it("is not given of entries that are not written yet", async () => {
    expectProblem(await architect.get(`${record}/head?number=99999`), "not-found");
  });

  it("is signed by one key however many ask for the first at once, and its private part lies sealed", async () => {
    await service.owner.connection.recordKey.deleteMany();
    const heads = await Promise.all(Array.from({ length: 8 }, () => headOf()));
    expect(new Set(heads.map(({ fingerprint }) => fingerprint)).size).toBe(1);
    const rows = await service.owner.connection.recordKey.findMany();
    expect(rows.map(({ place: at }) => at)).toEqual([1]);
    // An unsealed PKCS #8 Ed25519 key begins so (RFC 8410 section 7).
    expect(Buffer.from(rows[0]?.sealed ?? "", "base64url").toString("hex")).not.toContain("302e020100300506032b6570");
  });
});

describe("a proof", () => {
  it("shows each entry to be under the signed head, and no other", async () => {
    for (const { number, leaf } of await entriesOf(architect)) {
      const answer = await architect.get(`${record}/entries/${number}/proof`).expect(200);
      const { proof, head, ...told } = InclusionProof.parse(answer.body);
      expect(told).toEqual({ number, leaf });
      expect(isIncluded(leaf, number - 1, head.number, proof, head.head)).toBe(true);
      expect(isIncluded(leaf, number, head.number, proof, head.head)).toBe(false);
    }
  });

  it("of an entry that the roles may not see is not there", async () => {
    const seen = new Set((await entriesOf(reader)).map(({ number }) => number));
    const unseen = (await entriesOf(architect)).find(({ number }) => !seen.has(number));
    expectProblem(await reader.get(`${record}/entries/${unseen?.number}/proof`), "not-found");
    await reader.get(`${record}/entries/1/proof`).expect(200);
  });

  it("shows every later head to continue every earlier one", async () => {
    const entries = await entriesOf(architect);
    for (const earlier of entries)
      for (const later of entries.slice(earlier.number - 1)) {
        const answer = await architect.get(`${record}/continuation?from=${earlier.number}&to=${later.number}`);
        const { proof, head } = ConsistencyProof.parse(answer.body);
        const [before, after] = [earlier, head].map((one) => ({ size: one.number, head: one.head }));
        expect(before && after && isContinued(before, after, proof)).toBe(true);
        expect(before && after && isContinued({ ...before, head: "0".repeat(64) }, after, proof)).toBe(false);
      }
    expectProblem(await architect.get(`${record}/continuation?from=99999`), "body-invalid");
  });
});

describe("the bundle", () => {
  const bundleOf = async (browser: Browser) => {
    const answer = await browser.get(`${record}/bundle`).expect(200);
    expect(answer.get("content-disposition")).toMatch(/^attachment; filename="record-to-entry-\d+\.json"$/);
    return answer.text;
  };

  it("is found whole without the service, by its key and by an earlier signed head", async () => {
    const early = await headOf("?number=2");
    const text = await bundleOf(architect);
    const known = { fingerprint: early.fingerprint, head: early };
    expect(verifyBundle(text, known)).toMatchObject({ whole: true, originProved: true });
    expect(verifyBundle(text, {})).toMatchObject({ whole: true, originProved: false });
    expect(verifyBundle(text.replace("Lock Lane", "Dock Lane"), known)).toMatchObject({ whole: false });
  });

  it("tells a reader of nothing that the record does not show them, and is whole all the same", async () => {
    const text = await bundleOf(reader);
    expect(verifyBundle(text, { head: await headOf() })).toMatchObject({ whole: true, originProved: true });
    const { entries } = RecordBundle.parse(JSON.parse(text));
    const told = entries.filter((entry) => !("leaf" in entry)).map(({ number }) => number);
    expect(told).toEqual((await entriesOf(reader)).map(({ number }) => number));
    expect(text).not.toMatch(/"drawn"|What holds this corner/);
  });
});

describe("a new key", () => {
  it("signs from then on; the one before stays listed with its time, and old heads hold", async () => {
    const before = await headOf();
    const administrator = await service.signIn("outsider");
    expectProblem(await administrator.post("/api/record-keys", {}), "administrator-only");
    await service.owner.connection.person.update({
      where: { id: administrator.person.id },
      data: { administrator: true },
    });
    await administrator.post("/api/record-keys", {}).expect(201);
    const [old, present] = (await keys()).slice(-2);
    expect(old).toMatchObject({ fingerprint: before.fingerprint, until: present?.since });
    expect(present).toMatchObject({ follows: { fingerprint: before.fingerprint }, until: null });
    expect((await headOf()).fingerprint).toBe(present?.fingerprint);
    const { text } = await architect.get(`${record}/bundle`).expect(200);
    expect(verifyBundle(text, { fingerprint: before.fingerprint, head: before })).toMatchObject({ originProved: true });
  });

  it("cannot be altered or taken away by the service's own role", async () => {
    await headOf();
    const { database } = service.app;
    await expect(database.connection.recordKey.deleteMany()).rejects.toThrow();
    await expect(database.connection.recordKey.updateMany({ data: { sealed: "" } })).rejects.toThrow();
  });
});

it("a service without a key to seal under signs nothing and says so", async () => {
  const bare = await startService({ WORKER: "apart" });
  try {
    const owner = await bare.signIn("owner");
    const path = `/api/projects/${await bare.openProject()}/record`;
    for (const what of ["head", "bundle", "entries/1/proof", "continuation?from=1"])
      expectProblem(await owner.get(`${path}/${what}`), "signing-off");
  } finally {
    await bare.close();
  }
});
