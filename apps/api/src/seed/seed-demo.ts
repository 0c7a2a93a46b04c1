import { readFileSync } from "node:fs";
import path from "node:path";
import { emptyScheme, operationsBetween, readScheme, type Scheme } from "@cornerway/schema";
import { assessScheme } from "../assessment/assess-scheme.ts";
import type { Outcome } from "../outcome.ts";
import { draw } from "../services/draw.ts";
import { openProject } from "../services/open-project.ts";
import type { Part } from "../services/part.ts";
import { readDraft } from "../services/read-draft.ts";
import { recordAssessment } from "../services/record-assessment.ts";
import { sendRevision } from "../services/send-revision.ts";
import { hashPassword } from "../services/passwords.ts";
import type { Database } from "../store/database.ts";
import { projectExists } from "../store/new-project.ts";
import { findPerson, insertPerson } from "../store/person-rows.ts";
import { demoPeople } from "./demo-people.ts";

export const demoProjectId = "5e1f0a10-0000-4000-8000-000000000100";
const actId = "5e1f0a10-0000-4000-8000-000000000200";
const revisionId = "5e1f0a10-0000-4000-8000-000000000300";

const demoProject = {
  id: demoProjectId,
  name: "Millrace Yard",
  place: "4 Sluice Row, Fenquill",
  client: "Jory Pellan",
};

const demoScheme = path.resolve(import.meta.dirname, "../../../../shared/demo/scheme.json");

/**
 * Makes the demo project once: people, parts, the demo scheme drawn, sent as revision A and assessed, not stamped.
 * `database` is the owner role's. A project that is there already is left as it is.
 */
export async function seedDemo(database: Database): Promise<void> {
  const db = database.connection;
  for (const { password, role: _role, ...person } of demoPeople) {
    if ((await findPerson(db, person.email)) !== null) continue;
    await insertPerson(db, { ...person, passwordHash: await hashPassword(password) });
  }
  if (await projectExists(db, demoProjectId)) return;
  const members = demoPeople.map(({ role, id, name, email }) => ({ role, person: { id, name, email } }));
  must(await openProject(database, demoProject, members));
  await sendFirstRevision(database, readDemoScheme());
}

async function sendFirstRevision(database: Database, scheme: Scheme): Promise<void> {
  const architect = partOf("architect");
  must(await draw(database, architect, { id: actId, base: 0, operations: operationsBetween(emptyScheme, scheme) }));
  const { number: draftNumber, contentDigest } = await readDraft(database.connection, demoProjectId);
  const remark = "First issue for your reading.";
  const sent = must(await sendRevision(database, architect, { id: revisionId, draftNumber, contentDigest, remark }));
  const revision = { projectId: demoProjectId, letter: sent.letter, attempt: 1, contentDigest };
  must(await recordAssessment(database, revision, { ok: true, ...assessScheme(scheme, contentDigest) }));
}

function partOf(role: Part["roles"][number]): Part {
  const person = demoPeople.find((one) => one.role === role);
  if (person === undefined) throw new Error(`the demo has no ${role}`);
  return { projectId: demoProjectId, person: { id: person.id, name: person.name, email: person.email }, roles: [role] };
}

function readDemoScheme(): Scheme {
  const read = readScheme(JSON.parse(readFileSync(demoScheme, "utf8")));
  if (!read.ok)
    throw new Error(`${demoScheme}: ${read.fields.map(({ pointer, detail }) => `${pointer} ${detail}`).join("; ")}`);
  return read.scheme;
}

function must<T>(outcome: Outcome<T>): T {
  if (!outcome.ok)
    throw new Error(`the demo could not be made: ${outcome.refusal.code} ${outcome.refusal.detail ?? ""}`);
  return outcome.value;
}
