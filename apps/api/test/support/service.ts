import { randomUUID } from "node:crypto";
import { mkdtempSync, rmSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { roles, Session, type Role } from "@cornerway/schema";
import type { FastifyInstance } from "fastify";
import supertest from "supertest";
import { freshDatabase, type FreshDatabase } from "../../../../tests/support/fresh-database.ts";
import { quickHash } from "../../../../tests/support/quick-hash.ts";
import { buildApp } from "../../src/app.ts";
import { readConfig } from "../../src/config.ts";
import { openProject } from "../../src/services/open-project.ts";
import { openDatabase, type Database } from "../../src/store/database.ts";
import { insertPerson } from "../../src/store/person-rows.ts";
import { Described } from "./described.ts";
import { Witness } from "./witness.ts";

export const password = "a phrase for tests";

export interface Person {
  id: string;
  name: string;
  email: string;
}

/** One signed-in browser: its cookie, its token, and the three kinds of request it sends. */
export interface Browser {
  cookie: string;
  csrfToken: string;
  person: Person;
  get(path: string): supertest.Test;
  post(path: string, body?: object): supertest.Test;
  delete(path: string): supertest.Test;
}

export interface TestService {
  app: FastifyInstance;
  database: FreshDatabase;
  /** The owner role's connection. */
  owner: Database;
  log: string[];
  /** Where letters are laid. */
  mailFolder: string;
  people: Record<Role | "outsider", Person>;
  /** A new project in which each of five people holds one role; the sixth has no part in it. */
  openProject(): Promise<string>;
  signIn(who: Role | "outsider"): Promise<Browser>;
  close(): Promise<void>;
}

/**
 * The real service on a database of its own. `environment` overrides what its configuration reads; `way` gives another
 * way to its database.
 */
export async function startService(
  environment: Record<string, string> = {},
  way: (url: string) => Promise<string> = async (url) => url,
): Promise<TestService> {
  const database = await freshDatabase();
  const log: string[] = [];
  const mailFolder = mkdtempSync(path.join(os.tmpdir(), "cornerway-mail-"));
  const places = { DATABASE_URL: await way(database.serviceUrl), WEB_ROOT: "/nowhere", MAIL_FOLDER: mailFolder };
  const config = readConfig({ ...places, ...environment });
  const app = await buildApp(config, { write: (line) => void log.push(line) });
  await app.ready();
  const witness = new Witness(describedBy(app));
  witness.watch(app.server);
  const owner = openDatabase(database.ownerUrl);
  const people = await addPeople(owner);
  const members = roles.map((role) => ({ person: people[role], role }));
  return {
    ...{ app, database, owner, log, mailFolder, people },
    openProject: async () => {
      const project = { id: randomUUID(), name: "Lock Lane", place: "Lock Lane 2, Fenquill", client: "R. Tamm" };
      await openProject(owner, project, members);
      return project.id;
    },
    signIn: (who) => signInAs(app, people[who]),
    close: async () => {
      await app.close();
      await owner.close();
      await database.drop();
      rmSync(mailFolder, { recursive: true, force: true });
      if (witness.faults.length > 0) throw new Error(`not as described:\n${witness.faults.join("\n")}`);
    },
  };
}

const described = new Map<string, Described>();

/** What a service with these routes says of itself, made once in a run: it takes longer than the rest of a start. */
function describedBy(app: FastifyInstance): Described {
  const routes = app.printRoutes();
  const known = described.get(routes) ?? new Described(app.swagger());
  described.set(routes, known);
  return known;
}

async function addPeople(owner: Database): Promise<Record<Role | "outsider", Person>> {
  const passwordHash = await quickHash(password);
  const add = async (who: string): Promise<Person> => {
    const person = { id: randomUUID(), name: `Test ${who}`, email: `${who}@people.example` };
    await insertPerson(owner.connection, { ...person, passwordHash });
    return person;
  };
  return {
    architect: await add("architect"),
    engineer: await add("engineer"),
    checker: await add("checker"),
    owner: await add("owner"),
    reader: await add("reader"),
    outsider: await add("outsider"),
  };
}

/** Signs in anyone who has the password of the tests. */
export async function signInAs(app: FastifyInstance, person: Person): Promise<Browser> {
  const answer = await supertest(app.server).post("/api/session").send({ email: person.email, password }).expect(201);
  const { csrfToken } = Session.parse(answer.body);
  const cookie = String(answer.get("Set-Cookie")?.[0]).split(";", 1)[0] ?? "";
  return browserOf(app, { cookie, csrfToken, person });
}

/** A browser that holds a session. */
export function browserOf(
  app: FastifyInstance,
  { cookie, csrfToken, person }: Pick<Browser, "cookie" | "csrfToken" | "person">,
): Browser {
  const signed = (request: supertest.Test) => request.set("cookie", cookie).set("csrf-token", csrfToken);
  return {
    ...{ cookie, csrfToken, person },
    get: (path) => signed(supertest(app.server).get(path)),
    post: (path, body) => signed(supertest(app.server).post(path)).send(body),
    delete: (path) => signed(supertest(app.server).delete(path)),
  };
}
