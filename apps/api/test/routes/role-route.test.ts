import { randomUUID } from "node:crypto";
import { subscribe, unsubscribe } from "node:diagnostics_channel";
import { mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import { administratorMayDo, beforeConfirmation, mayDo, roles, type Role } from "@cornerway/schema";
import type { FastifyInstance, RouteOptions } from "fastify";
import supertest from "supertest";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { quickHash } from "../../../../tests/support/quick-hash.ts";
import { insertPerson } from "../../src/store/person-rows.ts";
import { LiveClient } from "../support/live-client.ts";
import { act, place } from "../support/sample.ts";
import { password, signInAs, startService, type Browser, type TestService } from "../support/service.ts";
import { Visitor } from "../support/visitor.ts";
import { rows, type Row } from "./route-table.ts";

/** Everyone there is a column for; each is someone of their own. */
const columns = [
  ...["nobody signed in", "no part", "expired reader", "administrator", "engineer unconfirmed", "reader by link"],
  ...roles,
] as const;
type Column = (typeof columns)[number];

let service: TestService;
let origin: string;
let projectId: string;
const browsers = new Map<string, Browser>();
const registered = new Map<string, RouteOptions["config"]>();
const answered = new Map<string, string>();

/** Notes every route as it is registered, whatever registers it. */
const watch = (message: unknown): void => {
  if (typeof message !== "object" || message === null || !("fastify" in message)) return;
  (message.fastify as FastifyInstance).addHook("onRoute", ({ method, url, config }) => {
    for (const one of [method].flat()) if (one !== "HEAD") registered.set(`${one} ${url}`, config);
  });
};

beforeAll(async () => {
  subscribe("fastify.initialization", watch);
  service = await startService({ REQUESTS_PER_MINUTE: "100000", SECRETS_KEY: "ab".repeat(32) });
  unsubscribe("fastify.initialization", watch);
  origin = await service.app.listen({ port: 0, host: "127.0.0.1" });
  projectId = await service.openProject();
  for (const role of roles) browsers.set(role, await service.signIn(role));
  browsers.set("no part", await service.signIn("outsider"));
  for (const column of ["expired reader", "administrator", "engineer unconfirmed"])
    browsers.set(column, await newcomer(column));
  const { membership, person } = service.owner.connection;
  const id = (column: Column) => browsers.get(column)?.person.id ?? "";
  const expiresAt = new Date(Date.now() - 1000);
  await membership.create({ data: { projectId, personId: id("expired reader"), role: "reader", expiresAt } });
  await membership.create({ data: { projectId, personId: id("engineer unconfirmed"), role: "engineer" } });
  await person.update({ where: { id: id("administrator") }, data: { administrator: true } });
  browsers.set("reader by link", await readerByLink());
  await browsers
    .get("architect")
    ?.post(`/api/projects/${projectId}/draft/acts`, act(0, [place(1)]))
    .expect(200);
});
afterAll(async () => {
  printMatrix();
  await service.close();
});

async function newcomer(name: string): Promise<Browser> {
  const person = { id: randomUUID(), name: `Test ${name}`, email: `${name.replaceAll(" ", "-")}@people.example` };
  await insertPerson(service.owner.connection, { ...person, passwordHash: await quickHash(password) });
  return signInAs(service.app, person);
}

async function readerByLink(): Promise<Browser> {
  const body = { name: "Counter 3", expiresAt: new Date(Date.now() + 86_400_000).toISOString() };
  const made = await browsers.get("owner")?.post(`/api/projects/${projectId}/reader-links`, body).expect(201);
  return new Visitor(service).enter(String(made?.body.path), { as: "reader" });
}

/** Besides what a reader may read of the project: who they are, which project, what waits there, and a way out. */
const openByLink = ["GET /api/session", "DELETE /api/session", "GET /api/projects", "GET /api/owed"];

/** What the tables of packages/schema say of a column and a route. */
function expected(column: Column, { route, asks, allowed }: Row): number {
  const granted = allowed ?? (/^GET (?!.*:(?!projectId))/.test(route) ? 200 : 400);
  if (asks === "nothing") return granted;
  if (column === "nobody signed in") return 401;
  if (column === "reader by link") {
    if (openByLink.includes(route)) return granted;
    const reads = asks !== "signed in" && asks !== "administrator" && route.startsWith("GET");
    return reads && mayDo[asks].includes("reader") ? granted : 403;
  }
  if (asks === "signed in") return granted;
  if (asks === "administrator") return column === "administrator" ? granted : 403;
  if (column === "administrator") return administratorMayDo.includes(asks) ? granted : 404;
  if (column === "no part" || column === "expired reader") return 404;
  const role: Role = column === "engineer unconfirmed" ? "engineer" : column;
  if (!mayDo[asks].includes(role)) return 403;
  return column === "engineer unconfirmed" && !beforeConfirmation.includes(asks) ? 403 : granted;
}

interface Answer {
  status: number;
  text: string;
  headers: Record<string, string>;
}

/** The route asked with content it cannot take: every other part of the address is `x`, and the body has an unknown field. */
async function ask(column: Column, { route, allowed }: Row, project: string): Promise<Answer> {
  const [method = "", template = ""] = route.split(" ");
  const address = template.replace(":projectId", project).replaceAll(/:\w+/g, "x");
  const browser = browsers.get(column);
  if (allowed === 101) return askSocket(browser, address);
  const request = supertest(origin)[method.toLowerCase() as "get" | "post" | "delete"](address);
  if (browser !== undefined) void request.set("cookie", browser.cookie).set("csrf-token", browser.csrfToken);
  const { status, text, headers } = await (method === "POST" ? request.send({ unknown: 1 }) : request);
  return { status, text, headers };
}

async function askSocket(browser: Browser | undefined, address: string): Promise<Answer> {
  const client = new LiveClient(origin, address, { origin, ...(browser && { cookie: browser.cookie }) });
  const status = () => client.refused?.status ?? (client.socket.readyState === client.socket.OPEN ? 101 : undefined);
  await expect.poll(status).toBeDefined();
  client.end();
  return { status: status() ?? 101, text: client.refused?.body ?? "", headers: {} };
}

it("every registered route has its row in the table, and no row is without its route", () => {
  expect(rows.map(({ route }) => route).sort()).toEqual([...registered.keys()].sort());
});

it.each(rows)("$route asks for what its row says: $asks", ({ route, asks }) => {
  const config = registered.get(route);
  const open = config?.open === true || !route.split(" ")[1]?.startsWith("/api/");
  const said = config?.act ?? (config?.administrator === true ? "administrator" : open ? "nothing" : "signed in");
  expect(said).toBe(asks);
});

describe.each(columns)("%s", (column) => {
  it.each(rows)("is answered by $route as the tables say", async (row) => {
    const { status, text } = await ask(column, row, projectId);
    answered.set(`${row.route} ${column}`, String(status));
    expect(`${status} ${status >= 500 ? text : ""}`.trim()).toBe(String(expected(column, row)));
  });
});

const ofProjects = rows.filter(({ route }) => route.includes(":projectId"));

describe.each(["no part", "expired reader", "administrator"] as const)("to %s a project there is", (column) => {
  // The last row of the table signed everyone out.
  beforeAll(async () => {
    const person = browsers.get(column)?.person;
    if (person !== undefined) browsers.set(column, await signInAs(service.app, person));
  });

  it.each(ofProjects)("is at $route like one there is not, to the last header", async (row) => {
    const [there, none] = [await ask(column, row, projectId), await ask(column, row, randomUUID())];
    if (expected(column, row) !== 404) return expect(none.status).toBe(404); // an administrator who sees to its people
    expect(there.status).toBe(404);
    expect(bare(there)).toEqual(bare(none));
  });
});

/** An answer without what differs between any two: its id, its time, and the count of what is left of the limit. */
const bare = ({ status, text, headers }: Answer) => ({
  status,
  text: text.replace(/"requestId":"[^"]*"/, ""),
  headers: Object.fromEntries(
    Object.entries(headers).filter(([name]) => !/^(date|request-id|x-ratelimit-(remaining|reset))$/.test(name)),
  ),
});

function printMatrix(): void {
  const folder = path.resolve(import.meta.dirname, "../../../../test-results");
  const line = (cells: readonly string[]) => `| ${cells.join(" | ")} |`;
  const table = rows.map((row) =>
    line([`\`${row.route}\``, row.asks, ...columns.map((column) => answered.get(`${row.route} ${column}`) ?? "–")]),
  );
  const head = [line(["route", "asks for", ...columns]), line(["---", "---", ...columns.map(() => "---")])];
  const words =
    "Status answered to each by every route. Requests carry content the route cannot take, so that 400 means: may, and was read.";
  mkdirSync(folder, { recursive: true });
  writeFileSync(
    path.join(folder, "role-route.md"),
    ["# Role × route", "", words, "", ...head, ...table, ""].join("\n"),
  );
}
