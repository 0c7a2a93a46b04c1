import { randomUUID } from "node:crypto";
import { inject } from "vitest";
import { createDatabase, dropDatabase, renamedDatabase } from "./create-database.ts";

export interface FreshDatabase {
  /** Owner of the tables. */
  ownerUrl: string;
  /** The service's own role, with the rights migrations grant it. */
  serviceUrl: string;
  drop(): Promise<void>;
}

/** A migrated, empty database of the caller's own; drop it when done. The vitest project must name database.ts as its global setup. */
export async function freshDatabase(): Promise<FreshDatabase> {
  const template = inject("databaseTemplate");
  const name = `t_${randomUUID().replaceAll("-", "")}`;
  await createDatabase(template.ownerUrl, name, template.name);
  return {
    ownerUrl: renamedDatabase(template.ownerUrl, name),
    serviceUrl: renamedDatabase(template.serviceUrl, name),
    drop: () => dropDatabase(template.ownerUrl, name),
  };
}
