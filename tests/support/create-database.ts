import { withClient } from "../../apps/api/src/database/with-client.ts";

/** Makes the database `name` on the server at `ownerUrl`, copied from `template` when given. Names come from our own code only. */
export async function createDatabase(ownerUrl: string, name: string, template?: string): Promise<void> {
  await withClient(ownerUrl, async (client) => {
    await client.query(`drop database if exists ${name} with (force)`);
    await client.query(
      template === undefined ? `create database ${name}` : `create database ${name} template ${template}`,
    );
  });
}

export async function dropDatabase(ownerUrl: string, name: string): Promise<void> {
  await withClient(ownerUrl, (client) => client.query(`drop database if exists ${name} with (force)`));
}

/** The same address with another database name. */
export function renamedDatabase(url: string, name: string): string {
  const parts = new URL(url);
  parts.pathname = `/${name}`;
  return parts.href;
}
