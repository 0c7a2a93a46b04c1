import supertest from "supertest";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { trustedProxies } from "../../src/trusted-proxies.ts";
import { expectProblem } from "../support/expect-problem.ts";
import { password, startService, type TestService } from "../support/service.ts";

let service: TestService;

beforeAll(async () => {
  service = await startService({ TRUST_PROXY: "127.0.0.0/8,::1" });
});
afterAll(() => service.close());

// The proxy adds the address it saw at the end of what the caller sent; addresses are those of RFC 5737.
const signIn = (forwardedFor: string, secret: string) =>
  supertest(service.app.server)
    .post("/api/session")
    .set("x-forwarded-for", forwardedFor)
    .send({ email: "engineer@people.example", password: secret });

it("counts sign-ins by the address that the proxy saw, not by one that the caller claims", async () => {
  for (let n = 0; n < 10; n += 1) expectProblem(await signIn(`198.51.100.${n}, 203.0.113.7`, "no"), "sign-in-refused");
  expectProblem(await signIn("198.51.100.99, 203.0.113.7", password), "too-many-tries");
  expect((await signIn("203.0.113.7, 203.0.113.8", password)).status).toBe(201);
});

it("takes the request's id from the proxy when it is well formed, and gives it back in header and problem", async () => {
  const ask = (id: string) => supertest(service.app.server).get("/api/projects").set("request-id", id);
  const taken = await ask("0af7651916cd43dd");
  expect(taken.headers["request-id"]).toBe("0af7651916cd43dd");
  expect(expectProblem(taken, "not-signed-in").requestId).toBe("0af7651916cd43dd");
  for (const odd of ["short", "a".repeat(65), "with blanks in it", 'quote"d-and-long'])
    expect((await ask(odd)).headers["request-id"]).toMatch(/^[0-9a-f-]{36}$/);
});

describe("trustedProxies", () => {
  it("knows addresses and networks, also where an address of version 4 comes written as one of version 6", () => {
    const isTrusted = trustedProxies(["10.1.0.2", "fd00::/8"]);
    expect(["10.1.0.2", "::ffff:10.1.0.2", "fd12::1"].map(isTrusted)).toEqual([true, true, true]);
    expect(["10.1.0.3", "::1", "fe80::1"].map(isTrusted)).toEqual([false, false, false]);
  });
});
