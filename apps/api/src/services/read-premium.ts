import { premiumDifference } from "@cornerway/engine";
import {
  applyOperations,
  digestOf,
  type Premium,
  type PremiumDifference,
  type ProjectCostBook,
  type RequestPremium,
  type Revision,
  type RevisionPremium,
} from "@cornerway/schema";
import { done, refuse, type Outcome } from "../outcome.ts";
import type { Connection } from "../store/connection.ts";
import { readCostBook } from "../store/cost-book-rows.ts";
import { digestOfScheme } from "../store/digest-of-scheme.ts";
import { findRequest } from "../store/request-rows.ts";
import { readRevision } from "../store/revision-rows.ts";
import { premiumOf } from "./premium-of.ts";

/** What a revision costs above the plain stack, by the cost book as it is now. */
export async function readRevisionPremium(
  db: Connection,
  projectId: string,
  letter: string,
): Promise<Outcome<RevisionPremium>> {
  const revision = await readRevision(db, projectId, letter);
  if (revision === null) return refuse("not-found");
  const costBook = await readCostBook(db, projectId);
  const premium = await premiumOfRevision(revision, costBook);
  return done({
    revision: letter,
    contentDigest: revision.contentDigest,
    assessed: revision.result !== null,
    costBook: pricedWith(costBook),
    premium,
    premiumDigest: digestOf(premium),
  });
}

/** What makes up the difference between a revision and an earlier one. */
export async function readPremiumSince(
  db: Connection,
  projectId: string,
  { earlier, letter }: { earlier: string; letter: string },
): Promise<Outcome<PremiumDifference>> {
  const was = await readRevision(db, projectId, earlier);
  const is = await readRevision(db, projectId, letter);
  if (was === null || is === null) return refuse("not-found");
  const costBook = await readCostBook(db, projectId);
  const before = await premiumOfRevision(was, costBook);
  const after = await premiumOfRevision(is, costBook);
  return done({ before: earlier, after: letter, ...differenceOf(before, after, costBook) });
}

/** What a change request adds to the revision it was made on. */
export async function readRequestPremium(
  db: Connection,
  projectId: string,
  requestId: string,
): Promise<Outcome<RequestPremium>> {
  const found = await findRequest(db, projectId, requestId);
  if (found === null) return refuse("not-found");
  const revision = await readRevision(db, projectId, found.request.revision);
  if (revision === null) throw new Error(`request ${requestId} is on revision ${found.request.revision}, which is not`);
  const applied = applyOperations(revision.scheme, found.request.operations);
  if (!applied.ok) throw new Error(`request ${requestId} was taken for a revision that cannot take it`);
  const costBook = await readCostBook(db, projectId);
  const { scheme } = applied;
  const contentDigest = digestOfScheme(scheme);
  const before = await premiumOf(revision, costBook, null);
  const after = await premiumOf({ scheme, contentDigest }, costBook, null);
  const priced = differenceOf(before, after, costBook);
  const premiumDigest = digestOf(priced);
  return done({ requestId, revision: revision.letter, contentDigest, ...priced, premiumDigest });
}

const premiumOfRevision = (revision: Revision, costBook: ProjectCostBook): Promise<Premium> => {
  const { result, resultDigest } = revision;
  const assessed = result === null || resultDigest === null ? null : { marks: result.marks, resultDigest };
  return premiumOf(revision, costBook, assessed);
};

const differenceOf = (before: Premium, after: Premium, costBook: ProjectCostBook) => ({
  currency: after.currency,
  forShow: after.forShow,
  costBook: pricedWith(costBook),
  totalBefore: before.total,
  totalAfter: after.total,
  lines: premiumDifference(before, after),
  notPriced: after.notPriced,
});

const pricedWith = ({ number, digest }: ProjectCostBook) => ({ number, digest });
