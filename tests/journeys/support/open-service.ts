import { inject } from "vitest";
import { demoPeople } from "../../../apps/api/src/seed/demo-people.ts";
import { openProject } from "../../../apps/api/src/services/open-project.ts";
import { openDatabase } from "../../../apps/api/src/store/database.ts";
import { insertPerson } from "../../../apps/api/src/store/person-rows.ts";
import { freshDatabase } from "../../support/fresh-database.ts";
import { quickHash } from "../../support/quick-hash.ts";
import { startProcess } from "../../two-process/service-process.ts";
import type {} from "./pages.ts";

export interface OpenService {
  origin: string;
  projectId: string;
  close(): Promise<void>;
}

/** The one project of a service that is opened here. */
export const projectId = "5e1f0a10-0000-4000-8000-000000000900";

const project = {
  id: projectId,
  name: "Chandler's Steps",
  place: "2 Quay Rise, Pellmouth",
  client: "Pellmouth Ferry Society",
};

/** The whole service on a fresh database, with an empty project and the production build of the pages; `environment` is added to its own. */
export async function openService(environment: Record<string, string> = {}): Promise<OpenService> {
  const database = await freshDatabase();
  await fillDatabase(database.ownerUrl);
  const own = { WEB_ROOT: inject("pagesFolder"), SECRETS_KEY: "ab".repeat(32) };
  const service = await startProcess(database.serviceUrl, { ...own, ...environment });
  return {
    origin: service.origin,
    projectId,
    close: async () => {
      service.process.kill("SIGTERM");
      await service.ended;
      await database.drop();
    },
  };
}

async function fillDatabase(ownerUrl: string): Promise<void> {
  const database = openDatabase(ownerUrl);
  try {
    for (const { password, role: _role, ...person } of demoPeople)
      await insertPerson(database.connection, { ...person, passwordHash: await quickHash(password) });
    const members = demoPeople.map(({ role, id, name, email }) => ({ role, person: { id, name, email } }));
    const opened = await openProject(database, project, members);
    if (!opened.ok) throw new Error(`the project could not be opened: ${opened.refusal.code}`);
  } finally {
    await database.close();
  }
}
