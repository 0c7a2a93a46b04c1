import { Session } from "@cornerway/schema";
import supertest from "supertest";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { expectProblem } from "../support/expect-problem.ts";
import { password, startService, type TestService } from "../support/service.ts";

let service: TestService;

beforeAll(async () => {
  service = await startService();
});
afterAll(() => service.close());

const signIn = (body: object) => supertest(service.app.server).post("/api/session").send(body);

describe("POST /api/session", () => {
  it("gives a cookie that scripts cannot read and other sites' requests do not carry", async () => {
    const answer = await signIn({ email: "architect@people.example", password }).expect(201);
    const cookie = answer.get("Set-Cookie")?.[0];
    expect(cookie).toMatch(/^cornerway_session=[\w-]{43}; Max-Age=43200; Path=\/; HttpOnly; SameSite=Lax$/);
    expect(Session.parse(answer.body).person.name).toBe("Test architect");
  });

  it("marks the cookie Secure for every host that is not this machine", async () => {
    const answer = await signIn({ email: "architect@people.example", password })
      .set("host", "plans.example")
      .expect(201);
    expect(answer.get("Set-Cookie")?.[0]).toMatch(/^__Host-cornerway_session=[^;]+;.* Path=\/;.*; Secure/);
  });

  it("takes the address in any case", async () => {
    await signIn({ email: "Architect@People.Example", password }).expect(201);
  });

  it("ends the session that the same browser held before", async () => {
    const before = await service.signIn("checker");
    await signIn({ email: "checker@people.example", password }).set("cookie", before.cookie).expect(201);
    expectProblem(await before.get("/api/session"), "not-signed-in");
  });

  it("answers a wrong password and an unknown address in the same words", async () => {
    const wrong = await signIn({ email: "reader@people.example", password: "not it" });
    const unknown = await signIn({ email: "nobody@people.example", password: "not it" });
    const { requestId: _ofWrong, ...told } = expectProblem(wrong, "sign-in-refused");
    const { requestId: _ofUnknown, ...toldToo } = expectProblem(unknown, "sign-in-refused");
    expect(told).toEqual(toldToo);
  });

  it("stops the eleventh try for one address from one place within a minute, even with the right password", async () => {
    for (let n = 0; n < 10; n += 1)
      expectProblem(await signIn({ email: "outsider@people.example", password: "no" }), "sign-in-refused");
    expectProblem(await signIn({ email: "outsider@people.example", password }), "too-many-tries");
    await signIn({ email: "owner@people.example", password }).expect(201);
  });

  it.each([
    [{ email: "architect", password }, "/email"],
    [{ email: "architect@people.example", password: "" }, "/password"],
    [{ email: "architect@people.example", password, remember: true }, "/remember"],
    [{ email: "architect@people.example", password: "x".repeat(201) }, "/password"],
  ])("names the field that is wrong: %j", async (body, pointer) => {
    expect(expectProblem(await signIn(body), "body-invalid").fields?.map((field) => field.pointer)).toEqual([pointer]);
  });

  it.each(["/api/session", "/%61pi/session", "/ap%69/session"])(
    "refuses a sign-in that another site's page sends to %s",
    async (address) => {
      const sent = supertest(service.app.server).post(address).set("origin", "https://elsewhere.example");
      expectProblem(await sent.send({ email: "architect@people.example", password }), "origin-refused");
    },
  );

  it("is answered for this browser alone: no cache keeps the token", async () => {
    const answer = await signIn({ email: "architect@people.example", password }).expect(201);
    expect(answer.headers["cache-control"]).toBe("no-store");
  });
});

describe("a session", () => {
  it("keeps neither token nor password in the database", async () => {
    const { cookie } = await service.signIn("architect");
    const token = cookie.split("=")[1] ?? "";
    const [sessions, people] = [
      await service.owner.connection.session.findMany(),
      await service.owner.connection.person.findMany(),
    ];
    expect(JSON.stringify([sessions, people])).not.toContain(token);
    expect(JSON.stringify([sessions, people])).not.toContain(password);
  });

  it("ends at sign-out: the cookie is cleared and no longer good", async () => {
    const browser = await service.signIn("engineer");
    await browser.get("/api/session").expect(200);
    const answer = await browser.delete("/api/session").expect(204);
    expect(answer.get("Set-Cookie")?.[0]).toContain("cornerway_session=;");
    expectProblem(await browser.get("/api/session"), "not-signed-in");
  });

  it("ends when its time is over", async () => {
    const browser = await service.signIn("reader");
    await service.owner.connection.session.updateMany({
      where: { personId: browser.person.id },
      data: { expiresAt: new Date(Date.now() - 1000) },
    });
    expectProblem(await browser.get("/api/session"), "not-signed-in");
  });

  it("is needed for everything under /api but signing in", async () => {
    const nobody = supertest(service.app.server);
    expectProblem(await nobody.get("/api/session"), "not-signed-in");
    expectProblem(await nobody.get("/api/projects"), "not-signed-in");
    expectProblem(await nobody.get("/%61pi/projects"), "not-signed-in");
    expectProblem(
      await nobody.get("/api/projects").set("cookie", `cornerway_session=${"x".repeat(5000)}`),
      "not-signed-in",
    );
  });
});

describe("a write", () => {
  it("needs the token of its own session", async () => {
    const [mine, theirs] = [await service.signIn("architect"), await service.signIn("engineer")];
    expectProblem(await mine.delete("/api/session").set("csrf-token", ""), "csrf-refused");
    expectProblem(await mine.delete("/api/session").set("csrf-token", theirs.csrfToken), "csrf-refused");
    await mine.get("/api/session").expect(200);
  });

  it("is refused when another site's page sends it, token or not", async () => {
    const browser = await service.signIn("architect");
    expectProblem(await browser.delete("/api/session").set("origin", "https://elsewhere.example"), "origin-refused");
    expectProblem(await browser.delete("/api/session").set("origin", "null"), "origin-refused");
  });
});
