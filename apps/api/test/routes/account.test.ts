import { Account, ProjectPeople, SignedInPlace } from "@cornerway/schema";
import supertest from "supertest";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { z } from "zod";
import { expectProblem } from "../support/expect-problem.ts";
import { lettersIn } from "../support/letters.ts";
import { password, startService, type TestService } from "../support/service.ts";

let service: TestService;
const phrase = "two herons on the weir";

beforeAll(async () => {
  service = await startService();
});
afterAll(() => service.close());

const signIn = (email: string, word: string) =>
  supertest(service.app.server).post("/api/session").send({ email, password: word });

describe("an account", () => {
  it("has a name its owner changes; blank ones and line breaks are refused", async () => {
    const checker = await service.signIn("checker");
    await checker.post("/api/account/name", { name: "  Test Checker-Lowe " }).expect(204);
    expect(Account.parse((await checker.get("/api/account")).body).person.name).toBe("Test Checker-Lowe");
    for (const name of ["", "   ", "one\ntwo", "x".repeat(121)])
      expectProblem(await checker.post("/api/account/name", { name }), "body-invalid");
  });

  it("states a licence, shown with its owner's part to everyone in the project, until it is taken back", async () => {
    const projectId = await service.openProject();
    const [engineer, reader] = [await service.signIn("engineer"), await service.signIn("reader")];
    const licence = { number: "SE 40117", jurisdiction: "Province of Fenmark" };
    const seen = async () =>
      ProjectPeople.parse((await reader.get(`/api/projects/${projectId}/people`)).body).members.find(
        ({ id }) => id === engineer.person.id,
      )?.licence;
    await engineer.post("/api/account/licence", { licence }).expect(204);
    expect(await seen()).toEqual(licence);
    expectProblem(await engineer.post("/api/account/licence", { licence: { number: "SE 1" } }), "body-invalid");
    await engineer.post("/api/account/licence", { licence: null }).expect(204);
    expect(await seen()).toBeNull();
  });
});

describe("a password", () => {
  it("is changed by whoever knows the present one; the other sessions end and a letter says so", async () => {
    const [here, elsewhere] = [await service.signIn("architect"), await service.signIn("architect")];
    const wrong = await here.post("/api/account/password", { present: "not this one", next: phrase });
    expect(expectProblem(wrong, "present-password-wrong").fields).toMatchObject([{ pointer: "/present" }]);
    const weak = await here.post("/api/account/password", { present: password, next: "Test architect" });
    expect(expectProblem(weak, "password-refused").fields).toMatchObject([{ pointer: "/next" }]);
    const same = await here.post("/api/account/password", { present: password, next: password });
    expectProblem(same, "password-refused");
    await elsewhere.get("/api/session").expect(200);
    await here.post("/api/account/password", { present: password, next: phrase }).expect(204);
    await here.get("/api/session").expect(200);
    expectProblem(await elsewhere.get("/api/session"), "not-signed-in");
    expectProblem(await signIn("architect@people.example", password), "sign-in-refused");
    await signIn("architect@people.example", phrase).expect(201);
    const { passwordHash } = await service.owner.connection.person.findUniqueOrThrow({ where: { id: here.person.id } });
    expect(passwordHash).toMatch(/^\$argon2id\$v=19\$m=19456,t=2,p=1\$/);
    await expect.poll(() => lettersIn(service.mailFolder).at(-1)).toContain("Your password was changed");
  });

  it("is tried at no more than ten times a minute by the same person", async () => {
    const outsider = await service.signIn("outsider");
    const attempt = () => outsider.post("/api/account/password", { present: "no", next: phrase });
    for (let n = 0; n < 10; n += 1) expectProblem(await attempt(), "present-password-wrong");
    expectProblem(await attempt(), "too-many-tries");
  });
});

describe("the sessions of a person", () => {
  const list = async (browser: { get(path: string): supertest.Test }) =>
    z.array(SignedInPlace).parse((await browser.get("/api/account/sessions").expect(200)).body);

  it("are listed with browser and network by family, and end one by one or all but this one", async () => {
    const here = await service.signIn("owner");
    const agent = "Mozilla/5.0 (X11; Linux x86_64; rv:140.0) Gecko/20100101 Firefox/140.0";
    const from = (word: string) => signIn("owner@people.example", word).set("user-agent", agent).expect(201);
    await from(password);
    await service.signIn("owner");
    const sessions = await list(here);
    expect(sessions).toHaveLength(3);
    expect(sessions.filter(({ present }) => present)).toHaveLength(1);
    const firefox = sessions.find(({ agent: family }) => family === "Firefox on Linux");
    expect(firefox).toMatchObject({ network: "this machine", present: false });
    await here.delete(`/api/account/sessions/${firefox?.id}`).expect(204);
    expectProblem(await here.delete(`/api/account/sessions/${firefox?.id}`), "not-found");
    expect(await list(here)).toHaveLength(2);
    await here.delete("/api/account/sessions").expect(204);
    expect(await list(here)).toMatchObject([{ present: true }]);
  });

  it("are named by an id that opens nothing, and are nobody else's to end", async () => {
    const [reader, checker] = [await service.signIn("reader"), await service.signIn("checker")];
    const [session] = await list(reader);
    const ids = (await service.owner.connection.session.findMany()).map(({ id }) => id);
    expect(ids).not.toContain(session?.id);
    expectProblem(await checker.delete(`/api/account/sessions/${session?.id}`), "not-found");
    await reader.get("/api/session").expect(200);
  });

  it("end after two hours in which nothing was heard of them, whatever is left of their twelve", async () => {
    const reader = await service.signIn("reader");
    const seen = (hoursAgo: number) =>
      service.owner.connection.session.updateMany({
        where: { personId: reader.person.id },
        data: { seenAt: new Date(Date.now() - hoursAgo * 3_600_000) },
      });
    await seen(1.9);
    await reader.get("/api/session").expect(200); // and is seen by this
    const [session] = await list(reader);
    expect(Date.now() - Date.parse(session?.seenAt ?? "")).toBeLessThan(60_000);
    await seen(2.1);
    expectProblem(await reader.get("/api/session"), "not-signed-in");
  });
});
