import { Draft, type Role } from "@cornerway/schema";
import { afterAll, beforeAll, beforeEach, expect, it, vi } from "vitest";
import { done } from "../../src/outcome.ts";
import { expectProblem } from "../support/expect-problem.ts";
import { act, place } from "../support/sample.ts";
import { startService, type Browser, type TestService } from "../support/service.ts";

let service: TestService;
let architect: Browser;
let projectId: string;

beforeAll(async () => {
  service = await startService();
  architect = await service.signIn("architect");
});
afterAll(() => service.close());
beforeEach(async () => {
  projectId = await service.openProject();
});

const draftNumber = async () => {
  const owner = await service.signIn("engineer");
  return Draft.parse((await owner.get(`/api/projects/${projectId}/draft`).expect(200)).body).number;
};

/** What comes of an act that had passed the door when another transaction, which held the project's row, did its work. */
async function drawWhile(work: (tx: typeof service.owner.connection) => Promise<unknown>) {
  let drawn: Promise<Awaited<ReturnType<Browser["post"]>>> | undefined;
  await service.owner.act(projectId, async (tx) => {
    drawn = architect.post(`/api/projects/${projectId}/draft/acts`, act(0, [place(1)])).then((answer) => answer);
    await vi.waitFor(async () => expect(await waiting()).toBe(1), { timeout: 30_000 });
    await work(tx);
    return done(null);
  });
  if (drawn === undefined) throw new Error("nothing was drawn");
  return drawn;
}

/** How many wait for a lock in this database. */
async function waiting(): Promise<number> {
  const rows = await service.owner.connection.$queryRaw<{ count: number }[]>`
    select count(*)::int as "count" from pg_locks l join pg_stat_activity a on a."pid" = l."pid"
    where not l."granted" and a."datname" = current_database()`;
  return rows[0]?.count ?? 0;
}

const membershipOf = (role: Role) => ({ projectId, personId: service.people.architect.id, role });

it("an act that waits for the project while its author is taken out is refused as if there were no such project", async () => {
  const answer = await drawWhile((tx) => tx.membership.deleteMany({ where: membershipOf("architect") }));
  expectProblem(answer, "not-found");
  expect(await draftNumber()).toBe(0);
});

it("an act that waits while its author loses the one role that may do it is refused to the roles they have left", async () => {
  await service.owner.connection.membership.create({ data: membershipOf("owner") });
  const answer = await drawWhile((tx) => tx.membership.deleteMany({ where: membershipOf("architect") }));
  expectProblem(answer, "role-refused");
  expect(await draftNumber()).toBe(0);
});

it("an act that waits while nothing is taken from its author is done", async () => {
  expect((await drawWhile(async () => undefined)).status).toBe(200);
  expect(await draftNumber()).toBe(1);
});
