import { readFileSync } from "node:fs";
import path from "node:path";
import { readScheme, type Scheme } from "@cornerway/schema";
import { hashPassword } from "../services/passwords.ts";
import type { Database } from "../store/database.ts";
import { projectExists } from "../store/new-project.ts";
import { findPerson, insertPerson } from "../store/person-rows.ts";
import { DemoOffice, type DemoProject } from "./demo-office.ts";
import { demoPeople } from "./demo-people.ts";
import { millraceYardProject, quarryStepsProject, saltHouseProject } from "./demo-projects.ts";
import { millraceYard } from "./millrace-yard.ts";

const drawings = path.resolve(import.meta.dirname, "../../../../shared/demo");

/**
 * Makes what is missing of the demo: its people, and three projects, the first with three revisions. `database` is the owner
 * role's. A project that is there already is left as it is.
 */
export async function seedDemo(database: Database): Promise<void> {
  await seedPeople(database);
  await seedProject(database, millraceYardProject, (office) => millraceYard(office, readDrawing("scheme.json")));
  await seedProject(database, quarryStepsProject, async (office) => {
    await office.drawTo(readDrawing("quarry-steps.json"));
    await office.send(
      "Two stacks side by side, locked and held down, with the loads of the place. May it go to the permit?",
    );
  });
  await seedProject(database, saltHouseProject, (office) =>
    office.drawTo(groundFloor(readDrawing("first-stack.json"))),
  );
}

async function seedPeople({ connection }: Database): Promise<void> {
  for (const { password, role: _role, ...person } of demoPeople) {
    if ((await findPerson(connection, person.email)) !== null) continue;
    await insertPerson(connection, { ...person, passwordHash: await hashPassword(password) });
  }
}

async function seedProject(
  database: Database,
  project: DemoProject,
  work: (office: DemoOffice) => Promise<void>,
): Promise<void> {
  if (await projectExists(database.connection, project.id)) return;
  const office = new DemoOffice(database, project);
  await office.open();
  await work(office);
}

/** What stands on the ground, with its pads and loads. */
function groundFloor(scheme: Scheme): Scheme {
  const containers = scheme.containers.filter(({ zUm }) => zUm === scheme.site.groundZUm);
  const ids = containers.map(({ id }) => id);
  return { ...scheme, containers, loads: scheme.loads.filter(({ containerId }) => ids.includes(containerId)) };
}

function readDrawing(name: string): Scheme {
  const read = readScheme(JSON.parse(readFileSync(path.join(drawings, name), "utf8")));
  if (!read.ok)
    throw new Error(`${name}: ${read.fields.map(({ pointer, detail }) => `${pointer} ${detail}`).join("; ")}`);
  return read.scheme;
}
