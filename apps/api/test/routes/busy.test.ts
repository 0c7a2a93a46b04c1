import { setTimeout as pause } from "node:timers/promises";
import supertest from "supertest";
import { afterAll, beforeAll, expect, it } from "vitest";
import { hashPassword } from "../../src/services/passwords.ts";
import { expectProblem } from "../support/expect-problem.ts";
import { startService, type TestService } from "../support/service.ts";

let service: TestService;
let crowded = true;

beforeAll(async () => {
  service = await startService({ WORKER: "apart" });
});
afterAll(async () => {
  crowded = false;
  await service.close();
});

/** Keeps one place of those who have a password worked on, or wait for it, taken. */
async function takePlace(): Promise<void> {
  while (crowded) await hashPassword("one of a crowd").catch(() => pause(1)); // no place was free: taken soon
}

it("when too many passwords wait to be checked, whoever comes is told so at once, and when to come back", async () => {
  const crowd = Array.from({ length: 80 }, takePlace);
  const signIn = () =>
    supertest(service.app.server).post("/api/session").send({ email: "late@people.example", password: "not it" });
  await expect.poll(async () => (await signIn()).status).toBe(503);
  const answer = await signIn();
  crowded = false;
  await Promise.all(crowd);
  expectProblem(answer, "busy");
  expect(answer.headers["retry-after"]).toBe("5");
});
