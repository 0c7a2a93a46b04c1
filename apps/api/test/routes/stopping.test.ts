import { afterAll, beforeAll, expect, it } from "vitest";
import { act, place } from "../support/sample.ts";
import { LiveClient } from "../support/live-client.ts";
import { startService, type TestService } from "../support/service.ts";

let service: TestService;

beforeAll(async () => {
  service = await startService();
});
afterAll(async () => {
  await service.owner.close();
  await service.database.drop();
});

it("stopped in the middle of forty acts it finishes those it has begun, cuts the live lines, and what it acknowledged is in the record once", async () => {
  const projectId = await service.openProject();
  const path = `/api/projects/${projectId}`;
  const architect = await service.signIn("architect");
  const origin = await service.app.listen({ port: 0, host: "127.0.0.1" });
  const line = new LiveClient(origin, `${path}/live`, { cookie: architect.cookie, origin });
  await line.say({ type: "resume", after: 0 });
  await expect.poll(() => line.upTo).toBe(6);

  const headers = { cookie: architect.cookie, "csrf-token": architect.csrfToken, "content-type": "application/json" };
  const send = async (n: number): Promise<string | undefined> => {
    const body = act(0, [place(n)]);
    const response = await fetch(`${origin}${path}/draft/acts`, {
      method: "POST",
      headers,
      body: JSON.stringify(body),
    }).catch(() => undefined);
    return response?.status === 200 ? body.id : undefined;
  };
  const sent = Array.from({ length: 40 }, (_, n) => send(n + 1));
  await Promise.any(sent);
  await service.app.close();
  const acknowledged = (await Promise.all(sent)).filter((id) => id !== undefined);

  await expect.poll(() => line.closed?.code).toBe(1001);
  const drawn = await service.owner.connection.draftAct.findMany({ where: { projectId } });
  expect(acknowledged.length).toBeGreaterThan(0);
  expect(drawn.map(({ id }) => id)).toEqual(expect.arrayContaining(acknowledged));
  const entries = await service.owner.connection.recordEntry.findMany({
    where: { projectId },
    orderBy: { number: "asc" },
  });
  expect(entries.map(({ number }) => number)).toEqual(Array.from({ length: 6 + drawn.length }, (_, at) => at + 1));
  const draft = await service.owner.connection.draft.findUniqueOrThrow({ where: { projectId } });
  expect(draft.number).toBe(drawn.length);
  await expect(fetch(`${origin}/health`)).rejects.toThrow();
});
