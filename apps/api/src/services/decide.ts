import type { Decision, NewDecision } from "@cornerway/schema";
import { done, refuse, refuseField, type Outcome } from "../outcome.ts";
import { append } from "../record/append.ts";
import type { Connection } from "../store/connection.ts";
import { readCostBook } from "../store/cost-book-rows.ts";
import type { Database } from "../store/database.ts";
import { findDecision, insertDecision } from "../store/decision-rows.ts";
import { findRequest } from "../store/request-rows.ts";
import { readRevisionHeads } from "../store/revision-rows.ts";
import { actOf } from "./act-of.ts";
import { bodyDigestOf } from "./body-digest.ts";
import { authorOf, type Part } from "./part.ts";
import { readRequestPremium, readRevisionPremium } from "./read-premium.ts";

/** What the owner is asked about, as it is priced here. */
type Priced = Pick<Decision, "contentDigest" | "costBookDigest" | "premiumDigest" | "money" | "currency" | "forShow">;

/**
 * The owner agrees to the price of the latest revision or of a request on it, or declines it. A request that was taken in stays
 * open to their word, also on the next revision while that holds the very drawing that was priced. The last word on a subject
 * counts; each stays in the record. Priced before the project is locked: within, only what may have moved is read again.
 */
export async function decide(database: Database, sender: Part, body: NewDecision): Promise<Outcome<Decision>> {
  const { projectId } = sender;
  const bodyDigest = bodyDigestOf(sender, body);
  const priced = await priceOf(database.connection, projectId, body);
  return actOf(database, sender, "decide", async (tx, part) => {
    const earlier = await findDecision(tx, projectId, body.id);
    if (earlier !== null) return earlier.bodyDigest === bodyDigest ? done(earlier.decision) : refuse("id-reused");
    if (!priced.ok) return priced;
    const refused = await refusalOf(tx, projectId, { body, priced: priced.value });
    if (refused !== undefined) return refused;
    const { money, currency, forShow } = priced.value;
    const author = authorOf(part, "decide");
    const decisionAt = (at: string): Decision => ({ ...body, money, currency, forShow, author, decidedAt: at });
    const { at } = await append(tx, projectId, author, (entry) => ({
      kind: "decision made",
      decision: decisionAt(entry.at),
    }));
    await insertDecision(tx, projectId, decisionAt(at), bodyDigest);
    return done(decisionAt(at));
  });
}

async function priceOf(db: Connection, projectId: string, body: NewDecision): Promise<Outcome<Priced>> {
  const { revision, requestId } = body;
  if (requestId === null) {
    const read = await readRevisionPremium(db, projectId, revision);
    if (!read.ok) return refuseField("body-invalid", "/revision", "there is no such revision");
    const { contentDigest, costBook, premiumDigest, premium, assessed } = read.value;
    if (!assessed) return refuse("assessment-pending", { detail: "what it leaves open is not known yet" });
    const { total: money, currency, forShow } = premium;
    return done({ contentDigest, costBookDigest: costBook.digest, premiumDigest, money, currency, forShow });
  }
  const read = await readRequestPremium(db, projectId, requestId);
  if (!read.ok) return refuseField("body-invalid", "/requestId", "there is no such request");
  const { contentDigest, costBook, premiumDigest, currency, forShow, totalBefore, totalAfter } = read.value;
  if (read.value.revision !== revision)
    return refuseField("body-invalid", "/requestId", `made on revision ${read.value.revision}`);
  const money = totalAfter - totalBefore;
  return done({ contentDigest, costBookDigest: costBook.digest, premiumDigest, money, currency, forShow });
}

const digests = ["contentDigest", "costBookDigest", "premiumDigest"] as const;

async function refusalOf(
  tx: Connection,
  projectId: string,
  { body, priced }: { body: NewDecision; priced: Priced },
): Promise<Outcome<never> | undefined> {
  const [newest] = await readRevisionHeads(tx, projectId);
  const request =
    body.requestId === null ? null : ((await findRequest(tx, projectId, body.requestId))?.request ?? null);
  const isDrawnAsPriced = request?.state === "taken in" && newest?.contentDigest === priced.contentDigest;
  if (newest?.letter !== body.revision && !isDrawnAsPriced)
    return refuse("revision-superseded", {
      detail: `revision ${newest?.letter} is newer, and other than what was priced`,
    });
  if (request?.state === "declined")
    return refuse("already-answered", { detail: "the architect declined that request" });
  const now = { ...priced, costBookDigest: (await readCostBook(tx, projectId)).digest };
  const other = digests.find((digest) => now[digest] !== body[digest]);
  return other === undefined ? undefined : refuseField("digest-mismatch", `/${other}`, mismatch[other]);
}

const mismatch: Record<(typeof digests)[number], string> = {
  contentDigest: "not that of what is decided on",
  costBookDigest: "the cost book has changed",
  premiumDigest: "it is priced otherwise now",
};
