import { randomUUID } from "node:crypto";
import {
  Draft,
  KeptOption,
  OptionDrawn,
  OptionPick,
  OptionSetNow,
  OptionSetOpened,
  OptionWithdrawal,
  RecordEntry,
  Revision,
  RevisionPremium,
  type Operation,
} from "@cornerway/schema";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { z } from "zod";
import { expectProblem } from "../support/expect-problem.ts";
import { act, place, post } from "../support/sample.ts";
import { startService, type Browser, type TestService } from "../support/service.ts";

const people = ["architect", "engineer", "owner", "checker"] as const;
let service: TestService;
const browsers = new Map<string, Browser>();
let path: string;
const as = (who: (typeof people)[number]): Browser => {
  const browser = browsers.get(who);
  if (browser === undefined) throw new Error(`${who} is not signed in`);
  return browser;
};

beforeAll(async () => {
  service = await startService();
  for (const who of people) browsers.set(who, await service.signIn(who));
});
afterAll(() => service.close());
beforeEach(async () => {
  path = `/api/projects/${await service.openProject()}`;
});

const draft = async () => Draft.parse((await as("architect").get(`${path}/draft`).expect(200)).body);
async function draw(...operations: Operation[]): Promise<Draft> {
  await as("architect")
    .post(`${path}/draft/acts`, act((await draft()).number, operations))
    .expect(200);
  return draft();
}

async function open(name = "Where the stair goes"): Promise<OptionSetOpened> {
  const made = await as("architect").post(`${path}/option-sets`, { id: randomUUID(), name }).expect(201);
  return OptionSetOpened.parse(made.body);
}

const keep = (setId: string, { number, contentDigest }: Draft, name: string, id = randomUUID()) =>
  as("architect").post(`${path}/option-sets/${setId}/options`, { id, name, draftNumber: number, contentDigest });
const kept = async (setId: string, drawn: Draft, name: string) =>
  KeptOption.parse((await keep(setId, drawn, name).expect(201)).body);

const pick = (who: "architect" | "owner" | "engineer", setId: string, option: KeptOption, more: object = {}) =>
  as(who).post(`${path}/option-sets/${setId}/picks`, {
    ...{ id: randomUUID(), optionId: option.id, contentDigest: option.contentDigest, reason: null },
    ...more,
  });

const sets = async (who: (typeof people)[number] = "owner") =>
  z.array(OptionSetNow).parse((await as(who).get(`${path}/option-sets`).expect(200)).body);
const recorded = async () =>
  z
    .array(RecordEntry)
    .parse((await as("owner").get(`${path}/record`).expect(200)).body)
    .flatMap(({ payload }) => (payload?.kind.startsWith("option") === true ? [payload] : []));

describe("a set of alternatives", () => {
  it("holds drawings side by side, each with its verdict, its steel and the premium a revision of it has", async () => {
    const set = await open();
    const plain = await kept(set.id, await draw(place(1)), "Plain");
    const propped = await kept(set.id, await draw({ kind: "post.set", post: post(1) }), "With a post");
    const answers = async () => (await sets()).flatMap(({ options }) => options.map(({ answer }) => answer.state));
    await expect.poll(answers, { timeout: 90_000, interval: 100 }).toEqual(["done", "done"]);
    const [found] = await sets("engineer");
    expect(found).toMatchObject({ number: 1, name: "Where the stair goes", picks: [] });
    expect(found?.options.map(({ place: at, name }) => [at, name])).toEqual([
      [1, "Plain"],
      [2, "With a post"],
    ]);
    expect(found?.options.map(({ id }) => id)).toEqual([plain.id, propped.id]);

    // What a revision of the same drawing says, by the service's other ways.
    const { number: draftNumber, contentDigest } = await draft();
    const body = { id: randomUUID(), draftNumber, contentDigest, remark: null };
    await as("architect").post(`${path}/revisions`, body).expect(202);
    const revision = async () => Revision.parse((await as("owner").get(`${path}/revisions/A`).expect(200)).body);
    await expect.poll(async () => (await revision()).assessment, { timeout: 120_000, interval: 100 }).toBe("done");
    const { premium } = RevisionPremium.parse((await as("owner").get(`${path}/revisions/A/premium`)).body);
    const option = found?.options[1];
    const steel = premium.lines.filter(({ item }) => item === "steel").map(({ quantity }) => quantity);
    expect(option?.price.total).toBe(premium.total);
    expect(option?.price.steelKg).toBe(steel.reduce((sum, kg) => sum + kg, 0));
    expect(option?.price.steelKg).toBeGreaterThan(0);
    expect(found?.options[0]?.price.steelKg).toBe(0);
    const { resultDigest, verdict } = await revision();
    expect(option?.answer).toMatchObject({ state: "done", verdict, resultDigest });
  });

  it("keeps the drawing itself as it was, whatever is drawn after it", async () => {
    const set = await open();
    const drawn = await draw(place(1));
    const option = await kept(set.id, drawn, "Plain");
    await draw(place(2));
    const read = await as("owner").get(`${path}/option-sets/${set.id}/options/${option.id}`).expect(200);
    expect(OptionDrawn.parse(read.body)).toEqual({
      ...{ id: option.id, contentDigest: drawn.contentDigest, scheme: drawn.scheme },
    });
    const other = await open("Another");
    await as("owner").get(`${path}/option-sets/${other.id}/options/${option.id}`).expect(404);
  });

  it("takes six and no seventh, nor one drawing twice, nor an empty sheet", async () => {
    const set = await open();
    expectProblem(await keep(set.id, await draft(), "Nothing"), "nothing-drawn");
    for (let count = 1; count <= 6; count++) await kept(set.id, await draw(place(count)), `Alternative ${count}`);
    expectProblem(await keep(set.id, await draft(), "Again"), "step-refused");
    const more = await keep(set.id, await draw(place(7)), "A seventh");
    expectProblem(more, "step-refused");
    expect(more.body.detail).toBe("a set holds 6 alternatives; withdraw one, or open another set");
    expect((await sets())[0]?.options.map(({ place: at }) => at)).toEqual([1, 2, 3, 4, 5, 6]);
  });

  it("is kept of what is on the architect's screen, and of nothing else", async () => {
    const set = await open();
    const drawn = await draw(place(1));
    expectProblem(await keep(set.id, { ...drawn, number: drawn.number + 5 }, "Ahead"), "draft-base-ahead");
    await draw(place(2));
    expectProblem(await keep(set.id, drawn, "Behind"), "digest-mismatch");
    expectProblem(await keep(randomUUID(), await draft(), "No set"), "not-found");
    expect((await sets())[0]?.options).toEqual([]);
  });

  it("takes an act sent twice as one, and another under the same id as a mistake", async () => {
    const body = { id: randomUUID(), name: "Roof" };
    await as("architect").post(`${path}/option-sets`, body).expect(201);
    await as("architect").post(`${path}/option-sets`, body).expect(201);
    expectProblem(await as("architect").post(`${path}/option-sets`, { ...body, name: "Stair" }), "id-reused");
    const drawn = await draw(place(1));
    const id = randomUUID();
    const first = await keep(body.id, drawn, "Flat", id).expect(201);
    expect((await keep(body.id, drawn, "Flat", id).expect(201)).body).toEqual(first.body);
    expectProblem(await keep(body.id, drawn, "Steep", id), "id-reused");
    const option = KeptOption.parse(first.body);
    const picked = { id: randomUUID() };
    await pick("owner", body.id, option, picked).expect(201);
    await pick("owner", body.id, option, picked).expect(201);
    expectProblem(await pick("owner", body.id, option, { ...picked, reason: "Cheaper." }), "id-reused");
    const kinds = (await recorded()).map(({ kind }) => kind).filter((kind) => kind !== "option assessed");
    expect(kinds.toSorted()).toEqual(["option kept", "option picked", "option set opened"]);
  });
});

describe("picking an alternative", () => {
  it("is the owner's or the architect's, the last word counts, and each stays in the record with the others", async () => {
    const set = await open();
    const first = await kept(set.id, await draw(place(1)), "One");
    const second = await kept(set.id, await draw(place(2)), "Two");
    expectProblem(await pick("engineer", set.id, first), "role-refused");
    const picked = await pick("architect", set.id, first, { reason: "As told by telephone." }).expect(201);
    expect(OptionPick.parse(picked.body)).toMatchObject({ optionId: first.id, author: { role: "architect" } });
    await pick("owner", set.id, second, { reason: "It is worth the second floor." }).expect(201);
    expectProblem(await pick("owner", set.id, second), "step-refused");
    const [found] = await sets("checker");
    expect(found?.picks.map(({ optionId, author }) => [optionId, author.role])).toEqual([
      [first.id, "architect"],
      [second.id, "owner"],
    ]);
    expect(found?.options).toHaveLength(2);
    const told = (await recorded()).flatMap((payload) =>
      payload.kind === "option picked" ? [[payload.place, payload.name, payload.pick.reason]] : [],
    );
    expect(told.toSorted()).toEqual([
      [1, "One", "As told by telephone."],
      [2, "Two", "It is worth the second floor."],
    ]);
    expect((await draft()).scheme.containers).toHaveLength(2);
  });

  it("is bound to the drawing on the screen", async () => {
    const set = await open();
    const option = await kept(set.id, await draw(place(1)), "One");
    expectProblem(await pick("owner", set.id, { ...option, contentDigest: "0".repeat(64) }), "digest-mismatch");
    expectProblem(await pick("owner", set.id, { ...option, id: randomUUID() }), "body-invalid");
    expect((await sets())[0]?.picks).toEqual([]);
  });
});

describe("withdrawing an alternative", () => {
  const withdraw = (who: (typeof people)[number], setId: string, optionId: string, more: object = {}) =>
    as(who).post(`${path}/option-sets/${setId}/options/${optionId}/withdrawal`, {
      ...{ id: randomUUID(), reason: null },
      ...more,
    });

  it("is its author's, and leaves it where it stands, with the reason in the record", async () => {
    const set = await open();
    const first = await kept(set.id, await draw(place(1)), "One");
    await kept(set.id, await draw(place(2)), "Two");
    expectProblem(await withdraw("owner", set.id, first.id), "role-refused");
    const said = await withdraw("architect", set.id, first.id, { reason: "Too dark." }).expect(201);
    const withdrawn = OptionWithdrawal.parse(said.body);
    expect(withdrawn).toMatchObject({ reason: "Too dark.", author: { role: "architect" } });
    const [found] = await sets("checker");
    expect(found?.options.map((option) => [option.place, option.withdrawn])).toEqual([
      [1, withdrawn],
      [2, null],
    ]);
    const told = (await recorded()).flatMap((payload) => (payload.kind === "option withdrawn" ? [payload] : []));
    expect(told).toEqual([
      {
        ...{ kind: "option withdrawn", setId: set.id, setNumber: 1 },
        ...{ optionId: first.id, place: 1, name: "One", withdrawal: withdrawn },
      },
    ]);
  });

  it("ends its being picked, once only, and never of the one that is picked", async () => {
    const set = await open();
    const first = await kept(set.id, await draw(place(1)), "One");
    const second = await kept(set.id, await draw(place(2)), "Two");
    await pick("owner", set.id, first).expect(201);
    expectProblem(await withdraw("architect", set.id, first.id), "step-refused");
    const sent = { id: randomUUID() };
    const once = await withdraw("architect", set.id, second.id, sent).expect(201);
    expect((await withdraw("architect", set.id, second.id, sent).expect(201)).body).toEqual(once.body);
    expectProblem(await withdraw("architect", set.id, second.id, { ...sent, reason: "Other." }), "id-reused");
    expectProblem(await withdraw("architect", set.id, second.id), "step-refused");
    expectProblem(await pick("owner", set.id, second), "step-refused");
    expectProblem(await withdraw("architect", randomUUID(), second.id), "not-found");
  });

  it("leaves room for another: six stand, each at a place of its own, and no seventh", async () => {
    const set = await open();
    const options: KeptOption[] = [];
    for (let count = 1; count <= 6; count++)
      options.push(await kept(set.id, await draw(place(count)), `Alternative ${count}`));
    const seventh = await draw(place(7));
    expectProblem(await keep(set.id, seventh, "A seventh"), "step-refused");
    await withdraw("architect", set.id, options[1]?.id ?? "").expect(201);
    expect((await kept(set.id, seventh, "A seventh")).place).toBe(7);
    expectProblem(await keep(set.id, await draw(place(8)), "An eighth"), "step-refused");
    const [found] = await sets();
    expect(found?.options.map((option) => [option.place, option.withdrawn !== null])).toEqual(
      [1, 2, 3, 4, 5, 6, 7].map((at) => [at, at === 2]),
    );
  });

  it("lets the same drawing be kept again, at the next place", async () => {
    const set = await open();
    const drawn = await draw(place(1));
    const first = await kept(set.id, drawn, "One");
    await withdraw("architect", set.id, first.id).expect(201);
    expect((await kept(set.id, drawn, "One, after all")).place).toBe(2);
  });
});
