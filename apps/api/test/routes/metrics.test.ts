import { afterAll, beforeAll, expect, it } from "vitest";
import { startService, type TestService } from "../support/service.ts";

let service: TestService;

beforeAll(async () => {
  service = await startService({ METRICS_PORT: "0" });
});
afterAll(() => service.close());

const scrape = async (path = "/metrics") => fetch(`http://127.0.0.1:${service.app.metricsPort()}${path}`);

it("metrics are given at an address of their own, never at the service's", async () => {
  expect((await service.app.inject("/metrics")).body).not.toContain("cornerway_request_seconds");
  expect((await scrape("/api/projects")).status).toBe(404);
  expect((await scrape()).headers.get("content-type")).toContain("text/plain");
});

it("they time requests by the pattern of the route, and hold no id, name or address", async () => {
  const projectId = await service.openProject();
  const engineer = await service.signIn("engineer");
  await engineer.get(`/api/projects/${projectId}`).expect(200);
  await engineer.get("/api/projects/nothing").expect(404);
  const text = await (await scrape()).text();
  expect(text).toContain(
    'cornerway_request_seconds_count{method="GET",route="/api/projects/:projectId",status="200"} 1',
  );
  for (const secret of [projectId, engineer.person.name, engineer.person.email, "127.0.0.1"])
    expect(text).not.toContain(secret);
});

it("they tell sockets, jobs, threads, connections and the event loop", async () => {
  const text = await (await scrape()).text();
  expect(text).toMatch(/^cornerway_sockets 0$/m);
  expect(text).toMatch(/^cornerway_assessment_threads\{state="idle"\} \d+$/m);
  expect(text).toMatch(/^cornerway_queue_connections\{state="all"\} \d+$/m);
  expect(text).toMatch(/^nodejs_eventloop_lag_seconds \d/m);
  expect(text).toContain("# TYPE cornerway_queue_jobs gauge");
  expect(text).toContain("# TYPE cornerway_job_seconds histogram");
});
