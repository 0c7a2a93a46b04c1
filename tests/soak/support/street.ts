import { randomUUID } from "node:crypto";
import { Session } from "@cornerway/schema";
import { openProject } from "../../../apps/api/src/services/open-project.ts";
import { hashPassword } from "../../../apps/api/src/services/passwords.ts";
import { openDatabase } from "../../../apps/api/src/store/database.ts";
import { insertPerson, type Person } from "../../../apps/api/src/store/person-rows.ts";
import type { SignedIn } from "../../two-process/drawing-client.ts";

const password = "a street of many sheets";

export interface Street {
  projectIds: string[];
  people: Person[];
}

/** Projects in which the same people are architects, and one more is the owner. */
export async function openStreet(
  ownerUrl: string,
  { projects, architects }: { projects: number; architects: number },
): Promise<Street> {
  const owner = openDatabase(ownerUrl);
  const passwordHash = await hashPassword(password);
  const people = Array.from({ length: architects + 1 }, (_, n) => ({
    ...{ id: randomUUID(), name: `Person ${n}`, email: `p${n}@street.example` },
  }));
  for (const person of people) await insertPerson(owner.connection, { ...person, passwordHash });
  const members = people.map((person, n) => ({
    person,
    role: n === architects ? ("owner" as const) : ("architect" as const),
  }));
  const projectIds: string[] = [];
  for (let n = 0; n < projects; n += 1) {
    const id = randomUUID();
    const opened = await openProject(owner, { id, name: `Street ${n}`, place: "Fenquill", client: "R. Tamm" }, members);
    if (!opened.ok) throw new Error(opened.refusal.code);
    projectIds.push(id);
  }
  await owner.close();
  return { projectIds, people };
}

export async function signInAt(origin: string, { email }: Person): Promise<SignedIn> {
  const body = JSON.stringify({ email, password });
  const headers = { "content-type": "application/json" };
  const answer = await fetch(`${origin}/api/session`, { method: "POST", headers, body });
  const { csrfToken } = Session.parse(await answer.json());
  return { cookie: answer.headers.get("set-cookie")?.split(";", 1)[0] ?? "", csrfToken };
}
