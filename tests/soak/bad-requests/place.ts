import { randomUUID } from "node:crypto";
import { setTimeout as pause } from "node:timers/promises";
import { roles, Session, type Role } from "@cornerway/schema";
import type { FastifyInstance } from "fastify";
import { buildApp } from "../../../apps/api/src/app.ts";
import { readConfig } from "../../../apps/api/src/config.ts";
import { openProject } from "../../../apps/api/src/services/open-project.ts";
import { openDatabase, type Database } from "../../../apps/api/src/store/database.ts";
import { insertPerson, type Person } from "../../../apps/api/src/store/person-rows.ts";
import { act, place } from "../../../apps/api/test/support/sample.ts";
import { quickHash } from "../../support/quick-hash.ts";

/** Who sends: a name for the report, what their requests carry, and words that they may never be told. */
export interface Sender {
  name: string;
  headers: Record<string, string>;
  strangers: readonly string[];
}

/** A whole service with two projects: one that five people have a part in, and one that nobody here may see. */
export interface Place {
  app: FastifyInstance;
  ids: Record<string, string>;
  log: string[];
  /** Everyone signed in: some requests end sessions, as they should. */
  senders(): Promise<Sender[]>;
  close(): Promise<void>;
}

const password = "a phrase that nobody guesses";
const hidden = ["Hidden Harbour", "Nobodys Quay 9", "Zebulon Quist"];

export async function openPlace({ ownerUrl, serviceUrl }: { ownerUrl: string; serviceUrl: string }): Promise<Place> {
  const log: string[] = [];
  const environment = {
    DATABASE_URL: serviceUrl,
    WEB_ROOT: "/nowhere",
    REQUESTS_PER_MINUTE: "10000000",
    LOG_LEVEL: "warn",
  };
  const app = await buildApp(readConfig(environment), { write: (line) => void log.push(line) });
  await app.listen({ port: 0, host: "127.0.0.1" });
  const owner = openDatabase(ownerUrl);
  const people = await addPeople(owner);
  const seen = await addProject(owner, { name: "Seen Street", place: "Seen Street 1", client: "Orla Venn" }, people);
  await addProject(owner, { name: hidden[0] ?? "", place: hidden[1] ?? "", client: hidden[2] ?? "" }, people, [
    "owner",
  ]);
  await owner.close();
  const ids = { projectId: seen, letter: "A", personId: people.reader.id };
  await sendRevision(app, seen, people);
  const strangers = [...hidden, "Seen Street", "Orla Venn"];
  const open = new Map<string, Sender>();
  const sender = async (who: Role | "outsider") => {
    const before = open.get(who);
    const signedIn =
      before !== undefined && (await isSignedIn(app, before)) ? before : await senderOf(app, people[who], who);
    open.set(who, signedIn);
    return who === "outsider" ? { ...signedIn, strangers } : signedIn;
  };
  const nobody = { name: "nobody", headers: {}, strangers: [...strangers, "Test engineer"] };
  const who = ["architect", "engineer", "checker", "reader", "outsider"] as const;
  const senders = async () => [...(await Promise.all(who.map(sender))), nobody];
  return { app, ids, log, senders, close: () => app.close() };
}

type People = Record<Role | "outsider", Person>;

async function addPeople(owner: Database): Promise<People> {
  const passwordHash = await quickHash(password);
  const add = async (who: string): Promise<Person> => {
    const person = { id: randomUUID(), name: `Test ${who}`, email: `${who}@people.example` };
    await insertPerson(owner.connection, { ...person, passwordHash });
    return person;
  };
  const [architect, engineer, checker] = [await add("architect"), await add("engineer"), await add("checker")];
  const [client, reader, outsider] = [await add("owner"), await add("reader"), await add("outsider")];
  return { architect, engineer, checker, owner: client, reader, outsider };
}

async function addProject(
  owner: Database,
  project: { name: string; place: string; client: string },
  people: People,
  held: readonly Role[] = roles,
): Promise<string> {
  const id = randomUUID();
  const members = held.map((role) => ({ person: people[role], role }));
  const opened = await openProject(owner, { ...project, id }, members);
  if (!opened.ok) throw new Error(opened.refusal.code);
  return id;
}

/** A revision to ask about, so that requests get further than to what is not there. */
async function sendRevision(app: FastifyInstance, projectId: string, people: People): Promise<void> {
  const { headers } = await senderOf(app, people.architect, "architect");
  const post = (url: string, payload: object) => app.inject({ method: "POST", url, headers, payload });
  const path = `/api/projects/${projectId}`;
  await post(`${path}/draft/acts`, act(0, [place(1)]));
  const draft = (await app.inject({ url: `${path}/draft`, headers })).json<{ number: number; contentDigest: string }>();
  const { number: draftNumber, contentDigest } = draft;
  await post(`${path}/revisions`, { id: randomUUID(), draftNumber, contentDigest, remark: null });
}

const isSignedIn = async (app: FastifyInstance, { headers }: Sender): Promise<boolean> =>
  (await app.inject({ url: "/api/session", headers })).statusCode === 200;

const patienceMs = 10_000;

/** Signs in; waits where so many signed in from here of late that the service refuses. */
async function senderOf(app: FastifyInstance, { email }: Person, name: string): Promise<Sender> {
  for (;;) {
    const answer = await app.inject({ method: "POST", url: "/api/session", payload: { email, password } });
    if (answer.statusCode === 429) {
      await pause(patienceMs);
      continue;
    }
    const { csrfToken } = Session.parse(answer.json());
    const cookie = String(answer.headers["set-cookie"]).split(";", 1)[0] ?? "";
    return { name, headers: { cookie, "csrf-token": csrfToken }, strangers: hidden };
  }
}
