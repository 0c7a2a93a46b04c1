import { readdirSync, statSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import postgres from "postgres";
import supertest from "supertest";
import { expectProblem } from "../support/expect-problem.ts";
import { lettersIn, linkIn } from "../support/letters.ts";
import { password, startService, type TestService } from "../support/service.ts";
import { Visitor } from "../support/visitor.ts";

let service: TestService;
const phrase = "seven lanterns by the quay";

beforeAll(async () => {
  service = await startService({ PUBLIC_URL: "https://plans.example" });
});
afterAll(() => service.close());

const ask = (email: string) => supertest(service.app.server).post("/api/new-password").send({ email });

async function linkFor(email: string): Promise<string> {
  const before = lettersIn(service.mailFolder).length;
  await ask(email).expect(202);
  await expect.poll(() => lettersIn(service.mailFolder).length).toBe(before + 1);
  return linkIn(lettersIn(service.mailFolder).at(-1));
}

describe("a forgotten password", () => {
  it("is answered alike whether the address is known or not, and only a known one gets a letter", async () => {
    const [known, unknown] = [await ask("Reader@People.Example"), await ask("nobody@people.example")];
    expect([known.status, known.text, unknown.status, unknown.text]).toEqual([202, "", 202, ""]);
    const headers = (all: Record<string, string>) =>
      Object.entries(all).filter(([name]) => !["date", "request-id", "x-ratelimit-remaining"].includes(name));
    expect(headers(known.headers)).toEqual(headers(unknown.headers));
    await expect.poll(() => lettersIn(service.mailFolder)).toHaveLength(1);
    expect(lettersIn(service.mailFolder)[0]).toContain("To: reader@people.example");
  });

  it("is answered before anyone is looked up, so that its time says nothing either", async () => {
    const sql = postgres(service.database.ownerUrl, { max: 1 });
    let answered: number | undefined;
    await sql.begin(async (tx) => {
      await tx`lock table person in access exclusive mode`;
      answered = (await ask("owner@people.example")).status;
    });
    await sql.end();
    expect(answered).toBe(202);
    await expect.poll(() => lettersIn(service.mailFolder).some((letter) => letter.includes("To: owner@"))).toBe(true);
  });

  it("leads by a link under the service's own address, whatever the request says of its host", async () => {
    const before = lettersIn(service.mailFolder).length;
    await ask("checker@people.example").set("host", "elsewhere.example").expect(202);
    await expect.poll(() => lettersIn(service.mailFolder).length).toBe(before + 1);
    expect(lettersIn(service.mailFolder).at(-1)).toContain("https://plans.example/new-password#");
    expect(lettersIn(service.mailFolder).at(-1)).not.toContain("elsewhere");
  });

  it("is set anew once; every session and every other such link ends", async () => {
    const engineer = await service.signIn("engineer");
    const [first, second] = [await linkFor("engineer@people.example"), await linkFor("engineer@people.example")];
    const visitor = new Visitor(service);
    expect((await visitor.open(second)).body).toEqual({
      ...{ kind: "new-password", email: "engineer@people.example", name: "Test engineer" },
    });
    expectProblem(await visitor.use({ as: "new password", password: "Test engineer" }), "password-refused");
    expectProblem(await visitor.use({ as: "signed in" }), "body-invalid");
    const again = await visitor.enter(second, { as: "new password", password: phrase });
    await again.get("/api/session").expect(200);
    expectProblem(await engineer.get("/api/session"), "not-signed-in");
    for (const link of [first, second]) expectProblem(await new Visitor(service).open(link), "link-gone");
    const signIn = (word: string) =>
      supertest(service.app.server).post("/api/session").send({ email: "engineer@people.example", password: word });
    expectProblem(await signIn(password), "sign-in-refused");
    await signIn(phrase).expect(201);
  });

  it("is asked for no more than five times an hour for one address, known or not", async () => {
    for (const email of ["architect@people.example", "stranger@people.example"]) {
      for (let n = 0; n < 5; n += 1) await ask(email).expect(202);
      expectProblem(await ask(email), "too-many-tries");
    }
  });

  it("has a link that is good for an hour", async () => {
    await ask("outsider@people.example").expect(202);
    const find = () =>
      service.owner.connection.oneTimeLink.findFirst({ where: { personId: service.people.outsider.id } });
    await expect.poll(find).not.toBeNull();
    const row = await find();
    const lastsMs = (row?.expiresAt.getTime() ?? 0) - (row?.madeAt.getTime() ?? 0);
    expect(Math.abs(lastsMs - 3_600_000)).toBeLessThan(5_000);
  });
});

describe("letters", () => {
  it("are laid where nobody but the service's own account reads them", async () => {
    await expect.poll(() => lettersIn(service.mailFolder).length).toBeGreaterThan(0);
    for (const name of readdirSync(service.mailFolder))
      expect(statSync(`${service.mailFolder}/${name}`).mode & 0o077).toBe(0);
  });
});
