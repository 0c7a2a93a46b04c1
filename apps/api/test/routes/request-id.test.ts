import supertest from "supertest";
import { afterAll, beforeAll, expect, it } from "vitest";
import { expectProblem } from "../support/expect-problem.ts";
import { startService, type TestService } from "../support/service.ts";

let service: TestService;

beforeAll(async () => {
  service = await startService();
});
afterAll(() => service.close());

it("every answer has an id of its own, which stands in the log beside what was answered", async () => {
  const ask = () => supertest(service.app.server).get("/api/projects");
  const [first, second] = [await ask(), await ask()];
  expect(first.headers["request-id"]).not.toBe(second.headers["request-id"]);
  expect(expectProblem(first, "not-signed-in").requestId).toBe(first.headers["request-id"]);
  const lines = service.log.map((line): unknown => JSON.parse(line));
  expect(lines).toContainEqual(expect.objectContaining({ reqId: first.headers["request-id"], status: 401 }));
});

it("an id that the caller gives is not taken when no proxy of one's own stands between", async () => {
  const answer = await supertest(service.app.server).get("/health").set("request-id", "0af7651916cd43dd");
  expect(answer.headers["request-id"]).toMatch(/^[0-9a-f-]{36}$/);
});
