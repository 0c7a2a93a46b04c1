import { execFile } from "node:child_process";
import { readFileSync } from "node:fs";
import path from "node:path";
import { promisify } from "node:util";
import { assess } from "@cornerway/engine";
import { roles } from "@cornerway/schema";
import { afterAll, beforeAll, expect, it } from "vitest";
import { freshDatabase, type FreshDatabase } from "../../../../tests/support/fresh-database.ts";
import { seededLines } from "../../start/seed-demo.mjs";
import { demoPeople } from "../../src/seed/demo-people.ts";
import { demoProjectId, demoProjects } from "../../src/seed/demo-projects.ts";
import { readConditions } from "../../src/services/conditions/read-conditions.ts";
import { readQuestions } from "../../src/services/questions/read-questions.ts";
import { readProject } from "../../src/services/read-project.ts";
import { readDraft } from "../../src/services/read-draft.ts";
import { checkPassword } from "../../src/services/sign-in.ts";
import { openDatabase, type Database } from "../../src/store/database.ts";

const SEED = path.resolve(import.meta.dirname, "../../src/seed.ts");

let database: FreshDatabase;
let owner: Database;

beforeAll(async () => {
  database = await freshDatabase();
  owner = openDatabase(database.ownerUrl);
});
afterAll(async () => {
  await owner.close();
  await database.drop();
});

/** What the command that sees to the demo says, run as the start runs it. */
async function seed(...words: string[]): Promise<string> {
  const env = { ...process.env, OWNER_DATABASE_URL: database.ownerUrl };
  const node = ["--conditions=development", "--import", "tsx", SEED, ...words];
  const { stdout } = await promisify(execFile)(process.execPath, node, { env });
  return seededLines(JSON.parse(stdout.trim().split("\n").at(-1) ?? "")).join("\n");
}

const everything = async () => {
  const { recordEntry, draftAct, person, membership } = owner.connection;
  return [
    await recordEntry.findMany(),
    await draftAct.findMany(),
    await person.findMany(),
    await membership.findMany(),
  ];
};
const project = () =>
  readProject(owner.connection, { projectId: demoProjectId, person: personOf("owner"), roles: ["owner"] });

function personOf(role: string) {
  const person = demoPeople.find((one) => one.role === role);
  if (person === undefined) throw new Error(`no ${role}`);
  return person;
}

it("the demo has three revisions: B is assessed because it is stamped, A and C are in the queue of the workers", async () => {
  expect(await seed()).toMatch(/^The demo project is made\.\nSign-ins of the demo/);
  expect(await project()).toMatchObject({ revision: "C", stamp: null, waitsFor: null, containers: 9 });
  const states = await owner.connection.assessment.findMany({ where: { projectId: demoProjectId } });
  expect(states.map(({ letter, state }) => [letter, state]).sort()).toEqual([["B", "done"]]);
  const jobs = await owner.connection.$queryRaw<{ key: string }[]>`select key from graphile_worker.jobs`;
  for (const letter of ["A", "C"]) expect(jobs.map(({ key }) => key)).toContain(`assess ${demoProjectId} ${letter} 1`);
});

it("it has notes, a request taken in, one declined, and a stamp that sends revision B back", async () => {
  const where = { projectId: demoProjectId };
  const { note, requestAnswer, stamp } = owner.connection;
  expect(await note.count({ where })).toBe(4);
  const answers = await requestAnswer.findMany({ where, orderBy: { answeredAt: "asc" } });
  expect(answers.map(({ state }) => state)).toEqual(["taken in", "declined"]);
  const stamps = await stamp.findMany({ where });
  expect(stamps.map(({ revision, disposition }) => [revision, disposition])).toEqual([["B", "Revise and resubmit"]]);
});

it("it has a question answered with a condition that is open, and one that waits for the engineer", async () => {
  const of = { projectId: demoProjectId, roles: ["owner" as const] };
  const questions = await readQuestions(owner.connection, of);
  expect(questions.map(({ elementId, state, owedBy }) => [elementId, state, owedBy])).toEqual([
    ["d3", expect.stringMatching(/^(answered|stale)$/), expect.any(String)],
    ["t1", "asked", "engineer"],
  ]);
  expect((await readConditions(owner.connection, of)).map(({ state }) => state)).toEqual(["open"]);
});

it("what the engineer's declined request says of T1 is so: set back by 2.40 m it does not tip over", async () => {
  const { scheme } = await readDraft(owner.connection, demoProjectId);
  const tips = (containers: typeof scheme.containers) =>
    assess({ ...scheme, containers }).marks.some(
      ({ fact, elements }) => fact.kind === "tips-over" && elements[0] === "t1",
    );
  const setBack = scheme.containers.map((unit) => (unit.id === "t1" ? { ...unit, yUm: unit.yUm + 2_400_000 } : unit));
  expect([tips(scheme.containers), tips(setBack)]).toEqual([true, false]);
});

it("two more projects stand in the street: one sent once, one still on the board", async () => {
  const revisions = await Promise.all(
    demoProjects.map(({ id }) => owner.connection.revision.count({ where: { projectId: id } })),
  );
  expect(revisions).toEqual([3, 1, 0]);
});

it("its draft is the scheme in shared/demo/scheme.json, unchanged since the revision", async () => {
  const file: unknown = JSON.parse(
    readFileSync(path.resolve(import.meta.dirname, "../../../../shared/demo/scheme.json"), "utf8"),
  );
  expect(await readDraft(owner.connection, demoProjectId)).toMatchObject({ scheme: file, movesSinceRevision: 0 });
});

it("one person for each role can sign in with the password that the start prints", async () => {
  expect(demoPeople.map(({ role }) => role)).toEqual(roles);
  for (const { email, password } of demoPeople) {
    expect(await checkPassword(owner.connection, { email, password })).toMatchObject({ ok: true, value: { email } });
  }
});

it("made again, it changes nothing and says so", async () => {
  const before = await everything();
  const again = await seed();
  expect(again).toMatch(/^The demo project is there, with 27 entries in its record, and is left as it is\.\n/);
  expect(again).toContain("`npm run seed:demo -- --reset` erases it with its record and makes it anew.");
  expect(await everything()).toEqual(before);
});

it("erased when it is asked for and made again, it starts at entry 1, and the triggers are on", async () => {
  const openedAt = async () => (await owner.connection.project.findFirstOrThrow()).openedAt.getTime();
  const made = await openedAt();
  const reset = await seed("--reset");
  expect(reset).toMatch(/^The demo project is erased, with the 27 entries of its record, and made anew\.\n/);
  expect(reset).toContain("Other projects and all people are as they were.");
  expect(await openedAt()).toBeGreaterThan(made);
  // Opened, five parts; A: drawn, sent, note, request, drawn, taken in, note, settled; B: drawn, sent, assessed, two
  // notes, question, answer, request, stamp, declined; C: drawn, sent, question, both not yet assessed: 6 + 8 + 10 + 3.
  expect(await project()).toMatchObject({ revision: "C", last: 27 });
  await expect(owner.connection.recordEntry.deleteMany()).rejects.toThrow("CW001");
});
