import { randomUUID } from "node:crypto";
import { PlanCheckComment, PlanCheckRegister, ProjectAuthority, usualAuthority } from "@cornerway/schema";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { act, place } from "../support/sample.ts";
import { startService, type Browser, type TestService } from "../support/service.ts";

let service: TestService;
let path: string;
let architect: Browser;
let engineer: Browser;
let reader: Browser;

beforeAll(async () => {
  service = await startService({ WORKER: "apart" });
  architect = await service.signIn("architect");
  engineer = await service.signIn("engineer");
  reader = await service.signIn("reader");
});
afterAll(() => service.close());
beforeEach(async () => {
  const project = `/api/projects/${await service.openProject()}`;
  path = `${project}/plan-check`;
  await architect.post(`${project}/draft/acts`, act(0, [place(1)])).expect(200);
  const { body } = await architect.get(`${project}/draft`).expect(200);
  const { number: draftNumber, contentDigest } = body;
  await architect
    .post(`${project}/revisions`, { id: randomUUID(), draftNumber, contentDigest, remark: null })
    .expect(202);
});

const letter = (text = "1. Seal is missing.\n2. State the soil value.") => ({ id: randomUUID(), form: "lines", text });
const bringIn = async (body = letter()) =>
  PlanCheckRegister.parse((await engineer.post(path, body).expect(201)).body).comments;
const reply = {
  step: "answered",
  form: "done",
  text: "Stated.",
  revision: "A",
  sheet: "S0.1",
  detail: null,
  page: "2",
};
const take = (who: Browser, id: string, body: object) => who.post(`${path}/${id}/steps`, { id: randomUUID(), ...body });

describe("the register of a plan check", () => {
  it("keeps as many comments as came in, whatever is done about them", async () => {
    const [first, second] = await bringIn();
    await take(engineer, first?.id ?? "", reply).expect(200);
    await take(architect, first?.id ?? "", { step: "closed" }).expect(200);
    const { body } = await reader.get(path).expect(200);
    const { comments, count } = PlanCheckRegister.parse(body);
    expect(comments.map(({ number, state }) => [number, state])).toEqual([
      ["1", "closed"],
      ["2", "open"],
    ]);
    expect(count).toEqual({ in: 2, open: 1, answered: 0, closed: 1 });
    expect(second?.order).toBe(2);
  });

  it("takes a sheet sent twice once, and refuses the same comments under another id", async () => {
    const sheet = letter();
    await bringIn(sheet);
    expect(await bringIn(sheet)).toHaveLength(2);
    const { body } = await engineer.post(path, letter()).expect(400);
    expect(JSON.stringify(body.fields)).toContain("in the register already: 1, 2");
  });

  it("writes nothing of a sheet that cannot be read whole, and says where", async () => {
    const { body } = await engineer.post(path, letter("1. a\n1. b")).expect(400);
    expect(body.fields).toEqual([{ pointer: "/text", detail: "number 1 comes twice; give each its own" }]);
    expect((await engineer.get(path).expect(200)).body.count.in).toBe(0);
  });

  it("lets nobody close what they answered, nor what is not answered", async () => {
    const [first] = await bringIn();
    const id = first?.id ?? "";
    expect((await take(architect, id, { step: "closed" }).expect(409)).body.detail).toContain("not answered");
    await take(engineer, id, reply).expect(200);
    await take(engineer, id, { step: "closed" }).expect(403);
    const closed = PlanCheckComment.parse((await take(reader, id, { step: "closed" }).expect(200)).body);
    expect(closed.closed?.by.role).toBe("reader");
    await take(engineer, id, reply).expect(409);
    const again = await take(reader, id, { step: "opened again", why: "S0.1 does not say it" }).expect(200);
    expect(again.body).toMatchObject({ state: "open", reply: null });
  });

  it("is answered by the architect or the engineer only, on a revision that is there", async () => {
    const [first] = await bringIn();
    const id = first?.id ?? "";
    await take(await service.signIn("owner"), id, reply).expect(403);
    await take(reader, id, reply).expect(403);
    await take(engineer, id, { ...reply, revision: "Q" }).expect(400);
    await take(engineer, id, { ...reply, sheet: " " }).expect(400);
  });

  it("assigns a comment to someone of the project and to nobody else", async () => {
    const [first] = await bringIn();
    const id = first?.id ?? "";
    const assigned = await take(engineer, id, { step: "assigned", to: service.people.architect.id }).expect(200);
    expect(assigned.body.assignedTo.name).toBe(service.people.architect.name);
    await take(engineer, id, { step: "assigned", to: service.people.outsider.id }).expect(400);
  });

  it("takes replies only with the places the authority asks for, once that is laid down", async () => {
    const authority = path.replace("plan-check", "authority");
    expect((await reader.get(authority).expect(200)).body).toEqual({ profile: usualAuthority, set: null });
    const profile = { ...usualAuthority, name: "Quarry County", replyNames: ["detail"] };
    await reader.post(authority, profile).expect(403);
    await engineer.post(authority, { ...profile, marks: "crayon" }).expect(400);
    await engineer.post(authority, profile).expect(200);
    const { body } = await engineer.post(authority, profile).expect(200);
    expect(ProjectAuthority.parse(body)).toMatchObject({ profile, set: { by: service.people.engineer.name } });
    const [first] = await bringIn();
    const refused = await take(engineer, first?.id ?? "", reply).expect(400);
    expect(refused.body.fields).toEqual([
      { pointer: "/detail", detail: "the authority asks each reply to name the detail" },
    ]);
    await take(engineer, first?.id ?? "", { ...reply, detail: "3" }).expect(200);
    const record = await engineer.get(path.replace("plan-check", "record")).expect(200);
    const written = record.body.filter(({ kind }: { kind: string }) => kind === "authority described");
    expect(written).toHaveLength(1);
  });

  it("goes out as a table in which a formula is only text", async () => {
    await bringIn(letter("1. =SUM(A1) is shown on S1"));
    const { text } = await engineer.get(`${path}/file`).expect(200);
    expect(text).toContain("'=SUM(A1) is shown on S1");
  });

  it("writes each step in the record, once", async () => {
    const [first] = await bringIn();
    const body = { id: randomUUID(), ...reply };
    await engineer.post(`${path}/${first?.id}/steps`, body).expect(200);
    await engineer.post(`${path}/${first?.id}/steps`, body).expect(200);
    const record = await engineer.get(path.replace("plan-check", "record")).expect(200);
    const kinds = record.body.map(({ kind }: { kind: string }) => kind);
    expect(kinds.filter((kind: string) => kind.startsWith("comment"))).toEqual([
      "comments brought in",
      "comment followed",
    ]);
  });
});
