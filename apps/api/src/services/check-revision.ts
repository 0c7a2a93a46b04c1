import { Check, type CheckNow, type NewCheck } from "@cornerway/schema";
import { done, refuse, refuseField, type Outcome } from "../outcome.ts";
import { append } from "../record/append.ts";
import type { Connection } from "../store/connection.ts";
import type { Database } from "../store/database.ts";
import { findPlainMatter, insertMatter, isMatterId, nextNumber } from "../store/matter-rows.ts";
import { readActedRoles } from "../store/membership-rows.ts";
import { actOf } from "./act-of.ts";
import { bodyDigestOf } from "./body-digest.ts";
import { raiseConditions, refuseConditions } from "./conditions/raise-conditions.ts";
import { newestRevision } from "./newest-revision.ts";
import { authorOf, type Part } from "./part.ts";
import { Standings } from "./standings.ts";

/** A second engineer's check of the newest revision and its result; its points stay open until the checker closes each. */
export async function checkRevision(database: Database, sender: Part, body: NewCheck): Promise<Outcome<CheckNow>> {
  const { projectId } = sender;
  const bodyDigest = bodyDigestOf(sender, body);
  return actOf(database, sender, "check-revision", async (tx, part) => {
    const now = async (check: Check) => done({ check, standing: await new Standings(tx, projectId).of(null, check) });
    const earlier = await findPlainMatter(tx, projectId, { kind: "check", id: body.id }, Check);
    if (earlier?.bodyDigest === bodyDigest) return now(earlier.matter);
    if (await isMatterId(tx, projectId, body.id)) return refuse("id-reused");
    const refused = await refusalOf(tx, part, body);
    if (refused !== undefined) return refused;
    const author = authorOf(part, "check-revision");
    const number = await nextNumber(tx, projectId, "check");
    const checkAt = (checkedAt: string): Check => ({ ...body, number, author, checkedAt });
    const entry = await append(tx, projectId, author, ({ at }) => ({ kind: "revision checked", check: checkAt(at) }));
    const check = checkAt(entry.at);
    const row = { kind: "check", id: body.id, number, entry: entry.number, bodyDigest } as const;
    await insertMatter(tx, projectId, { ...row, body: check });
    const raised = { source: "check", sourceId: check.id, revision: check.revision, author } as const;
    await raiseConditions(tx, projectId, body.points, { ...raised, raisedAt: entry.at, entry: entry.number });
    return now(check);
  });
}

async function refusalOf(tx: Connection, part: Part, body: NewCheck): Promise<Outcome<never> | undefined> {
  const { projectId, person } = part;
  const acted = await readActedRoles(tx, projectId, person.id);
  const own = acted.find((role) => role === "architect" || role === "engineer");
  if (own !== undefined) return refuse("own-work", { detail: `you are or were the ${own} here` });
  const newest = await newestRevision(tx, projectId, body);
  if (!newest.ok) return newest;
  if ((body.outcome === "agrees") !== (body.points.length === 0))
    return refuseField("body-invalid", "/points", "points where some are open, none where the checker agrees");
  return refuseConditions(tx, projectId, body.points, { pointer: "/points", raisedBy: "checker" });
}
