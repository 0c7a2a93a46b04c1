import { randomUUID } from "node:crypto";
import {
  ChangeRequest,
  Decision,
  DecisionShown,
  demoCostBook,
  digestOf,
  Draft,
  Owed,
  PremiumDifference,
  Project,
  ProjectCostBook,
  RecordEntry,
  RequestPremium,
  Revision,
  RevisionPremium,
  type CostBook,
  type NewDecision,
  type Operation,
} from "@cornerway/schema";
import { parse } from "csv-parse/sync";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { z } from "zod";
import { expectProblem } from "../support/expect-problem.ts";
import { act, place, post } from "../support/sample.ts";
import { startService, type Browser, type TestService } from "../support/service.ts";

let service: TestService;
const browsers = new Map<string, Browser>();
let path: string;
const as = (who: "architect" | "engineer" | "owner" | "checker"): Browser => {
  const browser = browsers.get(who);
  if (browser === undefined) throw new Error(`${who} is not signed in`);
  return browser;
};

beforeAll(async () => {
  service = await startService();
  for (const who of ["architect", "engineer", "owner", "checker"] as const)
    browsers.set(who, await service.signIn(who));
});
afterAll(() => service.close());
beforeEach(async () => {
  path = `/api/projects/${await service.openProject()}`;
});

const cut: Operation = {
  kind: "opening.cut",
  opening: {
    ...{ id: "w1", tag: "W1", containerId: "g1", face: "right", use: "window", offsetUm: 2e6, sillUm: 9e5 },
    ...{ widthUm: 1.2e6, heightUm: 1.2e6, framed: false },
  },
};

const readBook = async () => ProjectCostBook.parse((await as("checker").get(`${path}/cost-book`).expect(200)).body);
const changeBook = (book: CostBook, tag: string, who: "owner" | "engineer" = "owner") =>
  as(who).post(`${path}/cost-book`, book).set("if-match", tag);
const dearer = (steel: number): CostBook => ({
  ...demoCostBook,
  rates: { ...demoCostBook.rates, "steel, kg in place": { amount: steel, source: "Offer 17, 3 March" } },
});

/** Draws, sends what is drawn, and waits for its assessment. */
async function send(...operations: Operation[]): Promise<Revision> {
  const read = async () => Draft.parse((await as("architect").get(`${path}/draft`).expect(200)).body);
  if (operations.length > 0)
    await as("architect")
      .post(`${path}/draft/acts`, act((await read()).number, operations))
      .expect(200);
  const { number: draftNumber, contentDigest } = await read();
  const body = { id: randomUUID(), draftNumber, contentDigest, remark: null };
  const { letter } = (await as("architect").post(`${path}/revisions`, body).expect(202)).body;
  const revision = async () => Revision.parse((await as("owner").get(`${path}/revisions/${letter}`).expect(200)).body);
  await expect.poll(async () => (await revision()).assessment, { timeout: 120_000, interval: 50 }).toBe("done");
  return revision();
}

async function ask({ letter, contentDigest }: Revision, ...operations: Operation[]): Promise<ChangeRequest> {
  const body = { id: randomUUID(), revision: letter, contentDigest, text: "Two posts.", operations };
  return ChangeRequest.parse((await as("engineer").post(`${path}/requests`, body).expect(201)).body);
}

const premiumOf = async (letter: string) =>
  RevisionPremium.parse((await as("owner").get(`${path}/revisions/${letter}/premium`).expect(200)).body);
const requestPremiumOf = async (id: string) =>
  RequestPremium.parse((await as("owner").get(`${path}/requests/${id}/premium`).expect(200)).body);

function decisionOn(premium: RevisionPremium | RequestPremium, more: Partial<NewDecision> = {}): NewDecision {
  const { revision, contentDigest, costBook, premiumDigest } = premium;
  const requestId = "requestId" in premium ? premium.requestId : null;
  const digests = { contentDigest, costBookDigest: costBook.digest, premiumDigest };
  return { id: randomUUID(), revision, requestId, decision: "agree", reason: null, ...digests, ...more };
}

const decisions = async () =>
  z.array(DecisionShown).parse((await as("checker").get(`${path}/decisions`).expect(200)).body);
const waitsFor = async () => Project.parse((await as("owner").get(path).expect(200)).body).waitsFor;
const record = async () => z.array(RecordEntry).parse((await as("owner").get(`${path}/record`).expect(200)).body);

describe("the cost book", () => {
  it("is the one for show until someone changes it, and none of its figures has a source", async () => {
    const book = await readBook();
    expect(book).toEqual({ number: 0, book: demoCostBook, digest: digestOf(demoCostBook), changed: null });
    expect(Object.values(book.book.rates).every(({ source }) => source === null)).toBe(true);
  });

  it("is changed under its tag, read again under the next, and each book is in the record", async () => {
    const tag = (await as("owner").get(`${path}/cost-book`)).headers["etag"] ?? "";
    const changed = await changeBook(dearer(4), tag).expect(200);
    expect(ProjectCostBook.parse(changed.body)).toMatchObject({ number: 1, changed: { by: { role: "owner" } } });
    expect((await readBook()).book).toEqual(dearer(4));
    const next = await changeBook(dearer(5), changed.headers["etag"] ?? "", "engineer").expect(200);
    expect(next.body.number).toBe(2);
    await as("owner")
      .get(`${path}/cost-book`)
      .set("if-none-match", next.headers["etag"] ?? "")
      .expect(304);
    const kept = (await record()).flatMap(({ payload }) => (payload?.kind === "cost book changed" ? [payload] : []));
    expect(kept.map(({ number, book }) => [number, book.rates["steel, kg in place"]?.amount])).toEqual([
      [1, 4],
      [2, 5],
    ]);
  });

  it("is refused under another's tag with nothing written, and the same book sent twice is one change", async () => {
    const tag = `"${(await readBook()).digest}"`;
    await changeBook(dearer(4), tag).expect(200);
    expectProblem(await changeBook(dearer(5), tag), "book-moved-on");
    expect((await changeBook(dearer(4), tag).expect(200)).body.number).toBe(1);
    expect((await readBook()).number).toBe(1);
  });

  it("names every figure that is not as it must be, and asks for the tag", async () => {
    const wrong = { ...dearer(-1), currency: "dollars" };
    const { fields } = expectProblem(await changeBook(wrong, "*"), "body-invalid");
    expect(fields?.map(({ pointer }) => pointer).sort()).toEqual(["/currency", "/rates/steel, kg in place/amount"]);
    const untagged = expectProblem(await as("owner").post(`${path}/cost-book`, dearer(4)), "body-invalid");
    expect(untagged.fields?.[0]?.pointer).toBe("/headers/if-match");
  });
});

describe("the premium of a revision", () => {
  // 4.8 m round; 0.06 h/m · 95 = 27.36; 0.15 · 4.8 · 95 = 68.40; 1 h · 150: 245.76
  it("is that of its openings by hand: 245.76 for a bare cut 1.2 × 1.2 m, for show", async () => {
    await send(place(1), cut);
    const { premium, assessed, premiumDigest } = await premiumOf("A");
    expect(premium.total).toBeCloseTo(245.76, 9);
    expect(premium).toMatchObject({ forShow: true, currency: "USD", units: [{ containerId: "g1" }] });
    expect(assessed).toBe(true);
    expect(premiumDigest).toBe(digestOf(premium));
  });

  it("differs from an earlier one by lines that add up, each with what was and what is", async () => {
    await send(place(1));
    await send(cut);
    const since = PremiumDifference.parse(
      (await as("owner").get(`${path}/revisions/B/premium/since/A`).expect(200)).body,
    );
    expect(since.lines.map(({ item, before }) => [item, before])).toEqual([
      ["cut", null],
      ["engineering", null],
      ["paint repair", null],
    ]);
    const sum = since.lines.reduce((all, { money }) => all + money, 0);
    expect(sum).toBeCloseTo(since.totalAfter - since.totalBefore, 9);
    expect(sum).toBeCloseTo(245.76, 9);
  });

  it("is a table with units in its heads, its total, its rates for show named as such, and the cautions", async () => {
    await send(place(1), cut);
    const answer = await as("owner").get(`${path}/revisions/A/premium/file`).expect(200);
    expect(answer.headers["content-type"]).toMatch(/^text\/csv/);
    expect(answer.headers["content-disposition"]).toBe('attachment; filename="premium-A.csv"');
    const rows: Record<string, string>[] = parse(answer.text, { columns: true });
    expect(rows[0]).toMatchObject({
      element: "w1",
      item: "cut",
      length_m: "4.8",
      money_USD: "27.36",
      "for show": "for show",
    });
    expect(rows[0]?.["source of hourly rate"]).toBe("none: for show");
    expect(rows.find(({ item }) => item === "total of what is drawn")?.["money_USD"]).toBe("245.76");
    expect(answer.text).toContain("Screening, preliminary until sealed by a licensed engineer.");
    const inFeet: Record<string, string>[] = parse(
      (await as("owner").get(`${path}/revisions/A/premium/file?units=US`).expect(200)).text,
      { columns: true },
    );
    expect(inFeet[0]?.["length_ft"]).toBe("15.748"); // 4.8 / 0.3048
  });

  it("of no revision is not found", async () => {
    expectProblem(await as("owner").get(`${path}/revisions/A/premium`), "not-found");
    expectProblem(await as("owner").get(`${path}/requests/${randomUUID()}/premium`), "not-found");
  });
});

describe("the owner's decision", () => {
  it("on a priced request turns the project from owner to architect, is on the record, and is shown to all", async () => {
    const request = await ask(
      await send(place(1)),
      { kind: "post.set", post: post(1) },
      { kind: "post.set", post: post(2) },
    );
    expect(await waitsFor()).toBe("owner");
    const priced = await requestPremiumOf(request.id);
    const body = decisionOn(priced, { reason: "The doors stay as wide as they are." });
    const decision = Decision.parse((await as("owner").post(`${path}/decisions`, body).expect(201)).body);
    expect(decision.money).toBeCloseTo(priced.totalAfter - priced.totalBefore, 9);
    expect(await waitsFor()).toBe("architect");
    expect(await decisions()).toEqual([{ decision, stale: [], latest: true }]);
    expect((await record()).at(-1)?.payload).toEqual({ kind: "decision made", decision });
    expect((await as("owner").post(`${path}/decisions`, body).expect(201)).body).toEqual(decision);
    expectProblem(await as("owner").post(`${path}/decisions`, { ...body, decision: "decline" }), "id-reused");
  });

  it("on a revision goes stale when the cost book changes and stands again with the old book", async () => {
    await send(place(1), cut);
    await as("owner")
      .post(`${path}/decisions`, decisionOn(await premiumOf("A")))
      .expect(201);
    await changeBook(dearer(4), "*").expect(200);
    expect((await decisions()).map(({ stale }) => stale)).toEqual([["cost book"]]);
    await changeBook(demoCostBook, "*").expect(200);
    expect((await decisions()).map(({ stale }) => stale)).toEqual([[]]);
  });

  it("goes stale with the next revision, and no more is decided on the old one", async () => {
    await send(place(1), cut);
    await as("owner")
      .post(`${path}/decisions`, decisionOn(await premiumOf("A")))
      .expect(201);
    const old = decisionOn(await premiumOf("A"));
    await send(place(2));
    expect((await decisions()).map(({ stale }) => stale)).toEqual([["content"]]);
    expectProblem(await as("owner").post(`${path}/decisions`, old), "revision-superseded");
  });

  it("is refused when any of the three digests is not what is here now, and names it", async () => {
    await send(place(1), cut);
    const premium = await premiumOf("A");
    for (const digest of ["contentDigest", "costBookDigest", "premiumDigest"] as const) {
      const body = decisionOn(premium, { [digest]: "0".repeat(64) });
      const problem = expectProblem(await as("owner").post(`${path}/decisions`, body), "digest-mismatch");
      expect(problem.fields?.map(({ pointer }) => pointer)).toEqual([`/${digest}`]);
    }
    await changeBook(dearer(4), "*").expect(200);
    const problem = expectProblem(await as("owner").post(`${path}/decisions`, decisionOn(premium)), "digest-mismatch");
    expect(problem.fields?.[0]?.pointer).toBe("/costBookDigest");
    expect(await decisions()).toEqual([]);
  });

  describe("on a request that was taken in", () => {
    const takenIn = async (): Promise<ChangeRequest> => {
      const request = await ask(await send(place(1)), { kind: "post.set", post: post(1) });
      const { number: base } = Draft.parse((await as("architect").get(`${path}/draft`).expect(200)).body);
      const answer = { answer: "take in", actId: randomUUID(), base };
      await as("architect").post(`${path}/requests/${request.id}/answer`, answer).expect(200);
      return request;
    };
    const agree = (priced: RequestPremium) => as("owner").post(`${path}/decisions`, decisionOn(priced));

    it("is given after as well as before, and stands on the revision that holds just that", async () => {
      const priced = await requestPremiumOf((await takenIn()).id);
      expect(await decisions()).toEqual([]);
      const decision = Decision.parse((await agree(priced).expect(201)).body);
      expect(decision).toMatchObject({
        revision: "A",
        requestId: priced.requestId,
        contentDigest: priced.contentDigest,
      });
      expect((await send()).contentDigest).toBe(priced.contentDigest);
      expect(await decisions()).toEqual([{ decision, stale: [], latest: true }]);
    });

    it("is given on the next revision too, while that is the very drawing that was priced", async () => {
      const priced = await requestPremiumOf((await takenIn()).id);
      await send();
      const decision = Decision.parse((await agree(priced).expect(201)).body);
      expect(await decisions()).toEqual([{ decision, stale: [], latest: true }]);
    });

    const owed = async (who: "owner" | "architect") =>
      z
        .array(Owed)
        .parse((await as(who).get("/api/owed").expect(200)).body)
        .flatMap(({ projectId, what, number, owedBy, owedTo }) =>
          path.endsWith(projectId) && what === "price to agree" ? [[number, owedBy, owedTo]] : [],
        );

    it("is owed by the owner, as the desk says, until it is given", async () => {
      const request = await takenIn();
      const line = [[request.number, "owner", "engineer"]];
      expect([await owed("owner"), await owed("architect")]).toEqual([line, line]);
      await send();
      expect(await owed("owner")).toEqual(line);
      await agree(await requestPremiumOf(request.id)).expect(201);
      expect(await owed("owner")).toEqual([]);
    });

    it("is owed no more once something else is drawn as well", async () => {
      await takenIn();
      await send(cut);
      expect(await owed("owner")).toEqual([]);
    });

    it("is refused once something else is drawn as well, and one given before says that the content changed", async () => {
      const priced = await requestPremiumOf((await takenIn()).id);
      const decision = Decision.parse((await agree(priced).expect(201)).body);
      await send(cut);
      expect(await decisions()).toEqual([{ decision, stale: ["content"], latest: true }]);
      const refused = expectProblem(await agree(priced), "revision-superseded");
      expect(refused.detail).toBe("revision B is newer, and other than what was priced");
    });
  });

  it("is refused on a request that the architect declined, on another revision's, and on none", async () => {
    const request = await ask(await send(place(1)), { kind: "post.set", post: post(1) });
    const priced = await requestPremiumOf(request.id);
    const decide = (more: Partial<NewDecision>) => as("owner").post(`${path}/decisions`, decisionOn(priced, more));
    expectProblem(await decide({ requestId: randomUUID() }), "body-invalid");
    expectProblem(await decide({ revision: "Q" }), "body-invalid");
    await as("architect")
      .post(`${path}/requests/${request.id}/answer`, { answer: "decline", reason: "No." })
      .expect(200);
    expectProblem(await decide({}), "already-answered");
  });
});
