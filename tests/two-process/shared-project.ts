import { randomUUID } from "node:crypto";
import { Session } from "@cornerway/schema";
import { openProject } from "../../apps/api/src/services/open-project.ts";
import type { Database } from "../../apps/api/src/store/database.ts";
import { insertPerson } from "../../apps/api/src/store/person-rows.ts";
import { quickHash } from "../support/quick-hash.ts";
import type { SignedIn } from "./drawing-client.ts";

const password = "many people draw at once";
const emailOf = (n: number) => `p${n}@two.example`;

/** A project of `architects` architects and an owner, numbered from 0; all have the same password. */
export async function openSharedProject(owner: Database, id: string, architects: number): Promise<void> {
  const passwordHash = await quickHash(password);
  const people = Array.from({ length: architects + 1 }, (_, n) => ({
    ...{ id: randomUUID(), name: `Person ${n}`, email: emailOf(n) },
  }));
  for (const person of people) await insertPerson(owner.connection, { ...person, passwordHash });
  const members = people.map((person, n) => ({
    person,
    role: n === architects ? ("owner" as const) : ("architect" as const),
  }));
  const project = { id, name: "Two doors", place: "Fenquill", client: "R. Tamm" };
  const opened = await openProject(owner, project, members);
  if (!opened.ok) throw new Error(opened.refusal.code);
}

/** Signs one of them in at a process; the session holds at every process. */
export async function signIn(origin: string, n: number): Promise<SignedIn> {
  const body = JSON.stringify({ email: emailOf(n), password });
  const headers = { "content-type": "application/json" };
  const response = await fetch(`${origin}/api/session`, { method: "POST", headers, body });
  const { csrfToken } = Session.parse(await response.json());
  return { cookie: response.headers.get("set-cookie")?.split(";", 1)[0] ?? "", csrfToken };
}
