import { readFileSync } from "node:fs";
import path from "node:path";
import { roles } from "@cornerway/schema";
import { afterAll, beforeAll, expect, it } from "vitest";
import { freshDatabase, type FreshDatabase } from "../../../../tests/support/fresh-database.ts";
import { demoPeople } from "../../src/seed/demo-people.ts";
import { demoProjectId, seedDemo } from "../../src/seed/seed-demo.ts";
import { readProject } from "../../src/services/read-project.ts";
import { readDraft } from "../../src/services/read-draft.ts";
import { checkPassword } from "../../src/services/sign-in.ts";
import { openDatabase, type Database } from "../../src/store/database.ts";
import { eraseProject } from "../../src/store/erase-project.ts";

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

it("the demo has revision A sent and assessed, not stamped, and waits for the engineer", async () => {
  await seedDemo(owner);
  expect(await project()).toMatchObject({ revision: "A", stamp: null, waitsFor: "engineer", containers: 9 });
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

it("made again, it changes nothing", async () => {
  const before = await everything();
  await seedDemo(owner);
  expect(await everything()).toEqual(before);
});

it("erased and made again it starts at entry 1, and the triggers are on", async () => {
  await eraseProject(owner.connection, demoProjectId);
  await seedDemo(owner);
  expect(await project()).toMatchObject({ revision: "A", last: 9 });
  await expect(owner.connection.recordEntry.deleteMany()).rejects.toThrow("CW001");
});
