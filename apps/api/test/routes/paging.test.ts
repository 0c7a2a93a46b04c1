import { randomUUID } from "node:crypto";
import type supertest from "supertest";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { z } from "zod";
import { openProject } from "../../src/services/open-project.ts";
import { readThread } from "../../src/services/read-thread.ts";
import { expectProblem } from "../support/expect-problem.ts";
import { act, note, place } from "../support/sample.ts";
import { startService, type Browser, type TestService } from "../support/service.ts";

let service: TestService;
let architect: Browser;
let path: string;

beforeAll(async () => {
  service = await startService({ WORKER: "apart" }); // no assessment moves on while tags are compared
  architect = await service.signIn("architect");
  path = `/api/projects/${await service.openProject()}`;
  await architect.post(`${path}/draft/acts`, act(0, [place(1)])).expect(200);
  for (let n = 0; n < 5; n += 1) await architect.post(`${path}/notes`, note("g1", { text: `note ${n}` })).expect(201);
  for (let n = 0; n < 3; n += 1) {
    const { number, contentDigest } = (await architect.get(`${path}/draft`)).body as {
      number: number;
      contentDigest: string;
    };
    const body = { id: randomUUID(), draftNumber: number, contentDigest, remark: null };
    await architect.post(`${path}/revisions`, body).expect(202);
    await architect.post(`${path}/draft/acts`, act(number, [place(n + 2)])).expect(200);
  }
  const members = [
    { person: service.people.owner, role: "owner" },
    { person: service.people.architect, role: "architect" },
  ] as const;
  for (const name of ["Alder Row", "Birch Row", "Birch Row"])
    await openProject(service.owner, { id: randomUUID(), name, place: "Fenquill", client: "R. Tamm" }, members);
});
afterAll(() => service.close());

const nextOf = ({ headers }: supertest.Response): string | undefined =>
  /^<([^>]+)>; rel="next"$/.exec(headers["link"] ?? "")?.[1];

/** All pages of a list, by following the links. */
async function follow(address: string): Promise<unknown[][]> {
  const pages: unknown[][] = [];
  for (let next: string | undefined = address; next !== undefined;) {
    const answer: supertest.Response = await architect.get(next).expect(200);
    pages.push(z.array(z.unknown()).parse(answer.body));
    next = nextOf(answer);
  }
  return pages;
}

describe.each([
  ["notes", () => `${path}/notes`, 5],
  ["revisions", () => `${path}/revisions`, 3],
  ["members", () => `${path}/members`, 5],
  ["projects", () => "/api/projects", 4],
  ["requests", () => `${path}/requests`, 0],
])("the list of %s", (_name, address, count) => {
  it("comes whole in one page when it fits, without a next one", async () => {
    const answer = await architect.get(address()).expect(200);
    expect(answer.body).toHaveLength(count);
    expect(nextOf(answer)).toBeUndefined();
  });

  it("comes in pages of two that together are the whole in its order, each once", async () => {
    const pages = await follow(`${address()}?limit=2`);
    expect(pages.every((page) => page.length <= 2)).toBe(true);
    expect(pages.flat()).toEqual((await architect.get(address())).body);
    expect(pages).toHaveLength(Math.max(1, Math.ceil(count / 2)));
  });

  it.each(["0", "501", "-1", "two", "1e2"])("refuses limit=%s at its place", async (limit) => {
    const refused = expectProblem(await architect.get(`${address()}?limit=${limit}`), "body-invalid");
    expect(refused.fields?.[0]?.pointer).toBe("/querystring/limit");
  });

  it("refuses a key it does not know at its place", async () => {
    expect(expectProblem(await architect.get(`${address()}?page=2`), "body-invalid").fields?.[0]?.pointer).toBe(
      "/querystring/page",
    );
  });
});

describe("a page after something that is not there", () => {
  it.each([
    ["notes", () => `${path}/notes?after=${randomUUID()}`],
    ["revisions", () => `${path}/revisions?after=Z`],
    ["members", () => `${path}/members?after=${randomUUID()}`],
    ["projects", () => `/api/projects?after=${randomUUID()}`],
  ])("of %s is refused at its place", async (_name, address) => {
    expect(expectProblem(await architect.get(address()), "body-invalid").fields?.[0]?.pointer).toBe(
      "/querystring/after",
    );
  });
});

describe("the record", () => {
  it("comes in pages by number that together are the whole", async () => {
    const pages = await follow(`${path}/record?limit=4`);
    const whole = (await architect.get(`${path}/record`)).body as { number: number }[];
    expect(pages.flat()).toEqual(whole);
    expect(whole.map(({ number }) => number)).toEqual(whole.map((_entry, at) => at + 1));
  });
});

describe("the thread", () => {
  it("is the latest of each kind, oldest first, where there are more than it holds", async () => {
    const projectId = path.split("/").at(-1) ?? "";
    const read = async (most?: number) =>
      readThread(service.owner.connection, { projectId, roles: ["architect"] }, most);
    const whole = await read();
    expect(whole.notes.map(({ text }) => text)).toEqual(["note 0", "note 1", "note 2", "note 3", "note 4"]);
    expect((await read(2)).notes).toEqual(whole.notes.slice(-2));
  });
});

describe("what a reader may not see", () => {
  it("is not in a page either", async () => {
    const reader = await service.signIn("reader");
    expect((await reader.get(`${path}/notes`).expect(200)).body).toEqual([]);
    expect((await reader.get(`${path}/requests`).expect(200)).body).toEqual([]);
  });
});

describe.each([
  ["the draft", () => `${path}/draft`],
  ["a revision", () => `${path}/revisions/A`],
  ["a page of the record", () => `${path}/record?limit=3`],
  ["the project", () => path],
])("%s", (_name, address) => {
  it("has a weak tag, the same in every coding, and is answered 304 without a body to whoever holds it", async () => {
    const first = await architect.get(address()).expect(200);
    const tag = first.headers["etag"] ?? "";
    expect(tag).toMatch(/^W\/"[\w-]{43}"$/);
    for (const coding of ["identity", "gzip", "br"]) {
      const { headers } = await architect.get(address()).set("accept-encoding", coding).expect(200);
      expect([headers["etag"], headers["vary"]]).toEqual([tag, "accept-encoding"]);
    }
    for (const held of [tag, `"other", ${tag}`, tag.replace("W/", ""), "*"]) {
      const again = await architect.get(address()).set("if-none-match", held);
      const { etag, vary } = again.headers;
      expect([again.status, again.text, etag, vary]).toEqual([304, "", tag, "accept-encoding"]);
    }
    await architect.get(address()).set("if-none-match", '"other"').expect(200);
  });
});

describe("the tag of the draft", () => {
  it("is another one once something is drawn, and so is that of the project", async () => {
    const tags = async () =>
      Promise.all([`${path}/draft`, path].map(async (address) => (await architect.get(address)).headers["etag"]));
    const before = await tags();
    const { number } = (await architect.get(`${path}/draft`)).body as { number: number };
    await architect.post(`${path}/draft/acts`, act(number, [place(40)])).expect(200);
    const after = await tags();
    expect(after[0]).not.toBe(before[0]);
    expect(after[1]).not.toBe(before[1]);
  });
});

describe("a number beyond any that is counted", () => {
  it.each(["requests?after=2147483648", "requests?after=4294967296", "record?after=2147483648"])(
    "is refused at its place: %s",
    async (address) => {
      const { fields } = expectProblem(await architect.get(`${path}/${address}`), "body-invalid");
      expect(fields?.[0]?.pointer).toBe("/querystring/after");
    },
  );
});
