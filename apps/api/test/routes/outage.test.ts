import { afterAll, beforeAll, expect, it } from "vitest";
import { cuttableProxy, type CuttableProxy } from "../support/cuttable-proxy.ts";
import { expectProblem } from "../support/expect-problem.ts";
import { LiveClient } from "../support/live-client.ts";
import { act, place } from "../support/sample.ts";
import { startService, type TestService } from "../support/service.ts";

let service: TestService;
let proxy: CuttableProxy;

beforeAll(async () => {
  service = await startService({}, async (url) => {
    proxy = await cuttableProxy(url);
    return proxy.url;
  });
});
afterAll(async () => {
  await service.close();
  await proxy.cut();
});

it("while the database is away a write is answered unready and not half done, and goes through afterwards under the same id; live lines hold and catch up", async () => {
  const path = `/api/projects/${await service.openProject()}`;
  const architect = await service.signIn("architect");
  const origin = await service.app.listen({ port: 0, host: "127.0.0.1" });
  const line = new LiveClient(origin, `${path}/live`, { cookie: architect.cookie, origin });
  await line.say({ type: "resume", after: 0 });
  await expect.poll(() => line.upTo).toBe(6);
  const body = act(0, [place(1)]);

  await proxy.cut();
  expectProblem(await architect.post(`${path}/draft/acts`, body), "unready");
  expectProblem(await architect.get("/ready"), "unready");
  await architect.get("/health").expect(200);
  await new Promise((resume) => setTimeout(resume, 1500));
  await proxy.mend();

  await expect.poll(async () => (await architect.post(`${path}/draft/acts`, body)).status).toBe(200);
  expect((await architect.post(`${path}/draft/acts`, body).expect(200)).body.draftNumber).toBe(1);
  await expect.poll(() => line.upTo, { timeout: 40_000 }).toBe(7);
  line.end();
});
