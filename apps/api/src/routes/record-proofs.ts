import { ConsistencyProof, InclusionProof, ListedKey, ProjectId, RecordBundle, SignedHead } from "@cornerway/schema";
import type { FastifyPluginAsyncZod } from "fastify-type-provider-zod";
import type { FastifyRequest } from "fastify";
import { z } from "zod";
import { described } from "../description/described.ts";
import { projectParams } from "../description/params.ts";
import { done, refuse, type Outcome } from "../outcome.ts";
import { partOfSender } from "../plugins/part.ts";
import { answer } from "../plugins/problems.ts";
import { beginChainAnew, listKeys, rotateKey } from "../record/signing-key.ts";
import {
  bundleOf,
  proveContinuation,
  proveEntry,
  signedHead,
  signerFor,
  withSigner,
} from "../services/prove-record.ts";
import type { Connection } from "../store/connection.ts";

const path = "/api/projects/:projectId/record";
const number = z.coerce.number().int().min(1).max(2_147_483_647);
const problems = ["signing-off", "signed-elsewhere"] as const;

const givingHead = described(
  {
    tag: "record",
    id: "readSignedHead",
    summary: "The head of the record, signed",
    description: "Over entries 1 to `number`, or all. Keep it: it shows later that nothing before it was altered.",
    answers: { 200: SignedHead },
    problems,
  },
  { params: projectParams, querystring: z.strictObject({ number: number.optional() }) },
);

const provingEntry = described(
  {
    tag: "record",
    id: "proveEntry",
    summary: "That an entry is in the record",
    description: "RFC 9162 section 2.1.3, under a signed head over the whole record. Of an entry that you may see.",
    answers: { 200: InclusionProof },
    problems,
  },
  { params: z.strictObject({ projectId: ProjectId, number }) },
);

const provingContinuation = described(
  {
    tag: "record",
    id: "proveContinuation",
    summary: "That a head continues an earlier one",
    description: "RFC 9162 section 2.1.4, from the head over entries 1 to `from` to the one over 1 to `to`, or all.",
    answers: { 200: ConsistencyProof },
    problems,
  },
  { params: projectParams, querystring: z.strictObject({ from: number, to: number.optional() }) },
);

const savingBundle = described(
  {
    tag: "record",
    id: "saveRecordBundle",
    summary: "The whole record as one signed file",
    description:
      "To be checked without this service (`npx cornerway verify`). Entries you may not see are leaves alone.",
    answers: { 200: RecordBundle },
    headers: { "content-disposition": "`attachment`, with a name for the file." },
    problems,
  },
  { params: projectParams },
);

const listing = described(
  {
    tag: "record",
    id: "listRecordKeys",
    summary: "The keys that sign heads of records, oldest first",
    description: "For everyone, signed in or not: what a bundle is held against must come from outside it.",
    answers: { 200: z.array(ListedKey) },
  },
  {},
);

const rotating = described(
  {
    tag: "record",
    id: "rotateRecordKey",
    summary: "Have a new key sign from now on",
    description:
      "The one before signs it as its last act and stays listed. `lost` begins a chain anew where the one before cannot be opened any more: nothing vouches for it but you, who tell its fingerprint.",
    answers: { 201: z.array(ListedKey) },
    problems: [...problems, "step-refused"],
  },
  { body: z.strictObject({ lost: z.literal(true).optional() }) },
);

async function changeKey(db: Connection, secretsKey: string | undefined, lost: boolean): Promise<Outcome<null>> {
  if (secretsKey === undefined) return refuse("signing-off");
  if (lost)
    return (await beginChainAnew(db, secretsKey))
      ? done(null)
      : refuse("step-refused", { detail: "the present key is not lost: it signs the one that follows it" });
  const signer = await signerFor(db, secretsKey);
  if (!signer.ok) return signer;
  await rotateKey(db, secretsKey);
  return done(null);
}

export const recordProofRoutes: FastifyPluginAsyncZod = async (app) => {
  const db = app.database.connection;
  const config = { act: "read-record" } as const;
  const proving = (request: FastifyRequest) => ({ db, part: partOfSender(request), ...app.recordSigning });

  app.get(`${path}/head`, { config, schema: givingHead }, async (request, reply) =>
    answer(reply, await withSigner(proving(request), (by) => signedHead(by, request.query.number))),
  );

  app.get(`${path}/entries/:number/proof`, { config, schema: provingEntry }, async (request, reply) =>
    answer(reply, await withSigner(proving(request), (by) => proveEntry(by, request.params.number))),
  );

  app.get(`${path}/continuation`, { config, schema: provingContinuation }, async (request, reply) =>
    answer(reply, await withSigner(proving(request), (by) => proveContinuation(by, request.query))),
  );

  app.get(`${path}/bundle`, { config, schema: savingBundle }, async (request, reply) => {
    const made = await withSigner(proving(request), bundleOf);
    if (!made.ok) return answer(reply, made);
    const name = `record-to-entry-${made.value.number}.json`;
    return reply
      .header("content-disposition", `attachment; filename="${name}"`)
      .type("application/json; charset=utf-8")
      .send(made.value.text);
  });

  app.get("/api/record-keys", { config: { open: true }, schema: listing }, () => listKeys(db));

  app.post("/api/record-keys", { config: { administrator: true }, schema: rotating }, async (request, reply) => {
    const changed = await changeKey(db, app.recordSigning.secretsKey, request.body.lost === true);
    return changed.ok ? reply.code(201).send(await listKeys(db)) : answer(reply, changed);
  });
};
