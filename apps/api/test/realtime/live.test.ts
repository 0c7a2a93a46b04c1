import { mayReadEntry, type Presence } from "@cornerway/schema";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import WebSocket from "ws";
import { LiveClient } from "../support/live-client.ts";
import { act, note, place, post } from "../support/sample.ts";
import { startService, type Browser, type TestService } from "../support/service.ts";

let service: TestService;
let origin: string;
let architect: Browser;
let owner: Browser;
let path: string;
const open: LiveClient[] = [];

beforeAll(async () => {
  service = await startService();
  origin = await service.app.listen({ port: 0, host: "127.0.0.1" });
  architect = await service.signIn("architect");
  owner = await service.signIn("owner");
});
afterAll(() => service.close());
beforeEach(async () => {
  path = `/api/projects/${await service.openProject()}`;
});
afterEach(() => open.splice(0).forEach((client) => client.end()));

function connect(browser: Browser | undefined, headers: Record<string, string> = { origin }): LiveClient {
  const client = new LiveClient(origin, `${path}/live`, { ...(browser && { cookie: browser.cookie }), ...headers });
  open.push(client);
  return client;
}

async function resumed(browser: Browser, after = 0): Promise<LiveClient> {
  const client = connect(browser);
  await client.say({ type: "resume", after });
  return client;
}

const draw = (n: number) => architect.post(`${path}/draft/acts`, act(n - 1, [place(n)])).expect(200);
const cutOff = () =>
  [...service.app.websocketServer.clients].some(({ readyState }) => readyState === WebSocket.CLOSING);
const presence: Presence = { sheet: 1, selected: "g1", dragging: [place(2)] };

describe("before the upgrade", () => {
  it.each([
    ["nobody is signed in", undefined, true, 401, "not-signed-in"],
    ["the page is another site's", "architect", "https://elsewhere.example", 403, "origin-refused"],
    ["no origin is named", "architect", undefined, 403, "origin-refused"],
    ["the person has no part in the project", "outsider", true, 404, "not-found"],
  ] as const)("a socket is refused when %s", async (_when, who, from, status, code) => {
    const browser = who && (await service.signIn(who));
    const client = connect(browser, from === undefined ? {} : { origin: from === true ? origin : from });
    await expect.poll(() => client.refused?.status).toBe(status);
    expect(JSON.parse(client.refused?.body ?? "")).toMatchObject({ code });
  });
});

describe("resume", () => {
  it("brings every entry after a number, in order, and then what is new", async () => {
    await draw(1);
    const client = await resumed(architect, 3);
    await expect.poll(() => client.upTo).toBe(7);
    await draw(2);
    await expect.poll(() => client.upTo).toBe(8);
    expect(client.entries.map(({ number }) => number)).toEqual([4, 5, 6, 7, 8]);
  });

  it("answers at once even when there is nothing new", async () => {
    const client = await resumed(architect, 6);
    await expect.poll(() => client.messages.some(({ type }) => type === "entries")).toBe(true);
    expect(client.upTo).toBe(6);
  });

  it("keeps from each reader what their roles may not see, and still says how far it is", async () => {
    await draw(1);
    await architect.post(`${path}/notes`, note("g1")).expect(201);
    const [ownersLine, readersLine] = [await resumed(owner), await resumed(await service.signIn("reader"))];
    await expect.poll(() => [ownersLine.upTo, readersLine.upTo]).toEqual([8, 8]);
    for (const [role, line] of [
      ["owner", ownersLine],
      ["reader", readersLine],
    ] as const) {
      expect(line.entries.every(({ payload }) => payload !== null && mayReadEntry([role], payload.kind))).toBe(true);
    }
    expect([ownersLine.entries.length, readersLine.entries.length]).toEqual([7, 6]);
  });

  it("catches up over many pages without a gap", async () => {
    for (let n = 1; n <= 40; n += 1) await draw(n);
    const projectId = path.split("/").at(-1) ?? "";
    await service.owner.connection.$executeRawUnsafe(copies(projectId, 1500));
    const client = await resumed(architect);
    await expect.poll(() => client.upTo).toBe(1546);
    expect(client.entries.map(({ number }) => number)).toEqual(Array.from({ length: 1546 }, (_, at) => at + 1));
  });

  it("cuts off a reader that takes nothing, who then catches up over a new line", async () => {
    const many = Array.from({ length: 150 }, (_, n) => ({ kind: "post.set" as const, post: post(n + 1) }));
    await architect.post(`${path}/draft/acts`, act(0, many)).expect(200);
    await service.owner.connection.$executeRawUnsafe(copies(path.split("/").at(-1) ?? "", 300));
    const slow = await resumed(architect);
    await expect.poll(() => slow.upTo).toBeGreaterThan(-1);
    slow.socket.pause();
    await expect.poll(cutOff, { timeout: 40_000 }).toBe(true);
    slow.socket.resume();
    await expect.poll(() => slow.closed?.code).toBe(1013);
    expect(slow.upTo).toBeLessThan(307);
    const again = await resumed(architect, slow.upTo);
    await expect.poll(() => again.upTo).toBe(307);
    const numbers = [...slow.entries, ...again.entries].map(({ number }) => number);
    expect(numbers).toEqual(Array.from({ length: 307 }, (_, at) => at + 1));
  });

  it("is refused beyond the end of the record", async () => {
    const client = await resumed(architect, 99);
    await expect.poll(() => client.closed?.code).toBe(4409);
  });
});

/** Many entries at once, as the owner of the tables: the last one again and again. */
const copies = (projectId: string, count: number) => `do $$ begin
  for n in 1..${count} loop
    insert into record_entry select project_id, last + 1, at, actor_id, actor_role, kind, payload_digest, leaf, head
      from record_entry join (select last from project where id = '${projectId}') p on number = p.last where project_id = '${projectId}';
    insert into record_payload select project_id, number + 1, actor_name, salt, payload from record_payload
      where project_id = '${projectId}' and number = (select last from project where id = '${projectId}');
    update project set last = last + 1 where id = '${projectId}';
  end loop; end $$`;

describe("presence", () => {
  it("tells everyone who is here and what they hold, the drag only to those who see the draft", async () => {
    const [mine, theirs, owners] = [
      await resumed(architect),
      await resumed(await service.signIn("engineer")),
      await resumed(owner),
    ];
    await mine.say({ type: "presence", presence });
    const ofArchitect = (client: LiveClient) => client.here.find(({ role }) => role === "architect")?.presence;
    await expect.poll(() => ofArchitect(theirs)).toEqual(presence);
    await expect.poll(() => ofArchitect(owners)).toEqual({ ...presence, dragging: null });
    expect(theirs.here).toHaveLength(3);
    mine.end();
    await expect.poll(() => theirs.here.length).toBe(2);
  });

  it("is never in the record", async () => {
    const client = await resumed(architect);
    await expect.poll(() => client.upTo).toBe(6);
    await client.say({ type: "presence", presence });
    await client.say({ type: "ping" });
    await expect.poll(() => client.messages.some(({ type }) => type === "pong")).toBe(true);
    const projectId = path.split("/").at(-1) ?? "";
    expect(await service.owner.connection.recordEntry.count({ where: { projectId } })).toBe(6);
  });
});

describe("what the service does not take", () => {
  it.each([
    ["text that is not JSON", "{"],
    ["an unknown message", '{"type":"shout"}'],
    ["an unknown field", '{"type":"ping","loud":true}'],
    ["binary", Buffer.from('{"type":"ping"}')],
  ])("%s ends the line with 1008 after a problem is told", async (_what, message) => {
    const client = await resumed(architect);
    await client.say(message);
    await expect.poll(() => client.closed?.code).toBe(1008);
    expect(client.messages.at(-1)).toMatchObject({ type: "problem", code: "body-invalid" });
  });

  it("a second resume ends the line", async () => {
    const client = await resumed(architect);
    await expect.poll(() => client.upTo).toBe(6);
    await client.say({ type: "resume", after: 0 });
    await expect.poll(() => client.closed?.code).toBe(1008);
  });

  it("a message over 32 KiB ends the line with 1009", async () => {
    const client = await resumed(architect);
    await client.say("x".repeat(33 * 1024));
    await expect.poll(() => client.closed?.code).toBe(1009);
  });

  it("more than 60 messages in a second end the line", async () => {
    const client = await resumed(architect);
    for (let n = 0; n < 200; n += 1) await client.say({ type: "ping" });
    await expect.poll(() => client.closed?.code).toBe(1008);
  });
});

describe("a line is cut within 2 s", () => {
  it("of sign-out", async () => {
    const browser = await service.signIn("checker");
    const client = await resumed(browser);
    await expect.poll(() => client.upTo).toBe(6);
    const from = Date.now();
    await browser.delete("/api/session").expect(204);
    await expect.poll(() => client.closed?.code).toBe(4401);
    expect((client.closed?.atMs ?? Infinity) - from).toBeLessThan(2000);
  });

  it("of the loss of the role", async () => {
    const client = await resumed(await service.signIn("reader"));
    await expect.poll(() => client.upTo).toBe(6);
    const from = Date.now();
    await service.owner.connection.membership.deleteMany({
      where: { projectId: path.split("/").at(-1) ?? "", role: "reader" },
    });
    await expect.poll(() => client.closed?.code).toBe(4401);
    expect((client.closed?.atMs ?? Infinity) - from).toBeLessThan(2000);
  });
});

describe("when the listening connection is lost", () => {
  it("what was written meanwhile and after it still arrives", async () => {
    const client = await resumed(architect);
    await expect.poll(() => client.upTo).toBe(6);
    const ended = await service.owner.connection.$queryRawUnsafe<object[]>(
      "select pg_terminate_backend(pid) from pg_stat_activity where datname = current_database() and query ilike 'listen%'",
    );
    expect(ended.length).toBeGreaterThan(0);
    for (let n = 1; n <= 5; n += 1) await draw(n);
    await expect.poll(() => client.upTo).toBe(11);
    expect(client.entries.map(({ number }) => number)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11]);
  });
});
