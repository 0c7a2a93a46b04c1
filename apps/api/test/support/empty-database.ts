import { randomUUID } from "node:crypto";
import { inject } from "vitest";
import { createDatabase, dropDatabase, renamedDatabase } from "../../../../tests/support/create-database.ts";

export interface EmptyDatabase {
  ownerUrl: string;
  serviceUrl: string;
  drop(): Promise<void>;
}

/** A database that no migration has touched; drop it when done. */
export async function emptyDatabase(): Promise<EmptyDatabase> {
  const { ownerUrl, serviceUrl } = inject("databaseTemplate");
  const name = `e_${randomUUID().replaceAll("-", "")}`;
  await createDatabase(ownerUrl, name);
  return {
    ownerUrl: renamedDatabase(ownerUrl, name),
    serviceUrl: renamedDatabase(serviceUrl, name),
    drop: () => dropDatabase(ownerUrl, name),
  };
}
