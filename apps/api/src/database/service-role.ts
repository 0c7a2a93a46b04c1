import pg from "pg";
import { DatabaseTrouble } from "./database-trouble.ts";
import { scramVerifier } from "./scram-verifier.ts";
import { withClient } from "./with-client.ts";

/** The role the service works under: migrations grant it what it may do, and it owns nothing. */
export const SERVICE_ROLE = "cornerway_service";

const ROLE_LOCK = 72707370;
const INSUFFICIENT_PRIVILEGE = "42501";

/**
 * Makes the service's role where it is missing. Without a password it may not sign in, which is enough for migrations
 * to grant it rights; with one it may.
 */
export async function ensureServiceRole(ownerUrl: string, password?: string): Promise<void> {
  await withClient(ownerUrl, async (client) => {
    try {
      await client.query("select pg_advisory_lock($1)", [ROLE_LOCK]);
      await createMissing(client);
      if (password !== undefined)
        await client.query(`alter role ${SERVICE_ROLE} login password ${pg.escapeLiteral(scramVerifier(password))}`);
    } catch (error) {
      if (error instanceof pg.DatabaseError && error.code === INSUFFICIENT_PRIVILEGE)
        throw new DatabaseTrouble("role-refused", SERVICE_ROLE, error);
      throw error;
    }
  });
}

async function createMissing(client: pg.Client): Promise<void> {
  const { rowCount } = await client.query("select 1 from pg_roles where rolname = $1", [SERVICE_ROLE]);
  if (rowCount === 0)
    await client.query(
      `create role ${SERVICE_ROLE} nologin nosuperuser nocreatedb nocreaterole noreplication nobypassrls`,
    );
}
