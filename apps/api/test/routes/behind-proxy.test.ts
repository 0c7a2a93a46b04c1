import supertest from "supertest";
import { afterAll, beforeAll, expect, it } from "vitest";
import { expectProblem } from "../support/expect-problem.ts";
import { password, startService, type TestService } from "../support/service.ts";

let service: TestService;

beforeAll(async () => {
  service = await startService({ TRUST_PROXY: "yes" });
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
