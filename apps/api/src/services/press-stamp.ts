import {
  answeredMarks,
  conditionState,
  elementById,
  foundOn,
  Condition,
  gravestOf,
  gravity,
  resultOn,
  stampRefusals,
  stampRefusalSentence,
  type NewStamp,
  type Stamp,
} from "@cornerway/schema";
import { done, refuse, refuseField, type Outcome } from "../outcome.ts";
import { append } from "../record/append.ts";
import type { Connection } from "../store/connection.ts";
import type { Database } from "../store/database.ts";
import { readMatters } from "../store/matter-rows.ts";
import { readNotesOnMarks } from "../store/note-rows.ts";
import { readStampWording } from "../store/person-rows.ts";
import { countOpenRequests } from "../store/request-rows.ts";
import { readRevision } from "../store/revision-rows.ts";
import { findStamp, insertStamp, readStampsOn } from "../store/stamp-rows.ts";
import { actOf } from "./act-of.ts";
import { bodyDigestOf } from "./body-digest.ts";
import { foundOtherwise } from "./found-otherwise.ts";
import { raiseConditions, refuseConditions } from "./conditions/raise-conditions.ts";
import { newestRevision } from "./newest-revision.ts";
import { authorOf, type Part } from "./part.ts";

/**
 * The engineer's disposition of one item of the latest revision, or of the whole, bound to the content and the result on
 * the engineer's screen. Its conditions stay open until each is closed.
 */
export async function pressStamp(database: Database, sender: Part, body: NewStamp): Promise<Outcome<Stamp>> {
  const { projectId } = sender;
  const bodyDigest = bodyDigestOf(sender, body);
  return actOf(database, sender, "press-stamp", async (tx, part) => {
    const earlier = await findStamp(tx, projectId, body.id);
    if (earlier !== null) return earlier.bodyDigest === bodyDigest ? done(earlier.stamp) : refuse("id-reused");
    const refused = await refusalOf(tx, projectId, body);
    if (refused !== undefined) return refused;
    const author = authorOf(part, "press-stamp");
    const wording = (await readStampWording(tx, author.id))[body.disposition];
    const worded = wording === undefined ? body : { ...body, wording };
    const stampAt = (at: string): Stamp => ({ ...worded, author, pressedAt: at });
    const entry = await append(tx, projectId, author, ({ at }) => ({ kind: "stamp pressed", stamp: stampAt(at) }));
    const stamp = stampAt(entry.at);
    await insertStamp(tx, projectId, stamp, bodyDigest);
    const raised = { source: "stamp", sourceId: stamp.id, revision: stamp.revision, author } as const;
    const { number, at: raisedAt } = entry;
    await raiseConditions(tx, projectId, body.conditions ?? [], { ...raised, raisedAt, entry: number });
    return done(stamp);
  });
}

async function refusalOf(tx: Connection, projectId: string, body: NewStamp): Promise<Outcome<never> | undefined> {
  const newest = await newestRevision(tx, projectId, body);
  if (!newest.ok) return newest;
  return (
    (await alreadyStamped(tx, projectId, body)) ??
    conditionsUnfit(body) ??
    (await refuseConditions(tx, projectId, body.conditions ?? [], { pointer: "/conditions", raisedBy: "engineer" })) ??
    notOpen(tx, projectId, body)
  );
}

/** The whole is stamped once and last, and never lighter than an item of it. */
async function alreadyStamped(
  tx: Connection,
  projectId: string,
  { revision, elementId, disposition }: NewStamp,
): Promise<Outcome<never> | undefined> {
  const stamps = await readStampsOn(tx, projectId, revision);
  if (stamps.some((stamp) => stamp.elementId === undefined))
    return refuse("already-answered", { detail: `revision ${revision} is stamped` });
  if (elementId !== undefined && stamps.some((stamp) => stamp.elementId === elementId))
    return refuse("already-answered", { detail: `${elementId} of revision ${revision} is stamped` });
  const gravest = elementId === undefined ? gravestOf(stamps) : undefined;
  return gravest !== undefined && gravity(disposition) < gravity(gravest)
    ? refuse("stamp-not-open", { detail: `An item of it is stamped ${gravest}: the whole takes no lighter one.` })
    : undefined;
}

/** Corrections are counted out one by one; where no exception is taken there is none. */
function conditionsUnfit({ disposition, conditions = [] }: NewStamp): Outcome<never> | undefined {
  if (disposition === "Make corrections noted" && conditions.length === 0)
    return refuseField("body-invalid", "/conditions", "name each correction");
  return disposition === "No exceptions taken" && conditions.length > 0
    ? refuseField("body-invalid", "/conditions", "no exception is taken, so there is no condition")
    : undefined;
}

/** What stands in the way of letting work go on, all of it in one sentence after the other. */
async function notOpen(
  tx: Connection,
  projectId: string,
  { revision: letter, elementId, disposition }: NewStamp,
): Promise<Outcome<never> | undefined> {
  const revision = await readRevision(tx, projectId, letter);
  if (revision === null || revision.result === null)
    return refuse("assessment-pending", { detail: "the answer cannot be read" });
  if (elementId !== undefined && elementById(revision.scheme, elementId) === undefined)
    return refuseField("element-unknown", "/elementId", `there is no ${elementId}`);
  const refusals = stampRefusals(disposition, {
    result: resultOn(revision.result, revision.scheme, elementId),
    answered: answeredMarks(await readNotesOnMarks(tx, projectId, letter), letter),
    openRequests: await countOpenRequests(tx, projectId),
    openConditions: await countOpenConditions(tx, projectId),
    found: foundOn([...(await foundOtherwise(tx, projectId, async () => revision.scheme))], revision.scheme, elementId),
  });
  if (refusals.length === 0) return undefined;
  return refuse("stamp-not-open", { detail: refusals.map(stampRefusalSentence).join(" ") });
}

const countOpenConditions = async (tx: Connection, projectId: string): Promise<number> =>
  (await readMatters(tx, projectId, "condition", Condition)).filter((each) => conditionState(each) !== "closed").length;
