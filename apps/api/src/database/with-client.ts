import pg from "pg";
import { DatabaseTrouble } from "./database-trouble.ts";

const LONGEST_CONNECT_MS = 10_000;
const SIGN_IN_REFUSED = new Set(["28000", "28P01", "3D000"]); // PostgreSQL appendix A: authorization, password, unknown database
const DISK_FULL = "53100";

/** Runs `work` on one connection and closes it; what keeps the connection from opening comes out as a DatabaseTrouble. */
export async function withClient<T>(url: string, work: (client: pg.Client) => Promise<T>): Promise<T> {
  const client = new pg.Client({ connectionString: url, connectionTimeoutMillis: LONGEST_CONNECT_MS });
  await client.connect().catch((error: unknown) => {
    throw connectTrouble(url, error);
  });
  let lost: Error | undefined;
  client.on("error", (error) => (lost = error));
  try {
    return await work(client);
  } catch (error) {
    if (error instanceof pg.DatabaseError && error.code === DISK_FULL)
      throw new DatabaseTrouble("disk-full", error.message, error);
    throw lost === undefined ? error : new DatabaseTrouble("unreachable", placeOf(url), lost);
  } finally {
    await client.end().catch(() => undefined); // already gone when the connection was lost, which is reported above
  }
}

function connectTrouble(url: string, error: unknown): DatabaseTrouble {
  if (error instanceof pg.DatabaseError && SIGN_IN_REFUSED.has(error.code ?? "")) {
    return new DatabaseTrouble("sign-in-refused", `${placeOf(url)}: ${error.message}`, error);
  }
  return new DatabaseTrouble("unreachable", placeOf(url), error);
}

/** Host, port and database without user and password. */
function placeOf(url: string): string {
  try {
    const { host, pathname } = new URL(url);
    return `${host}${pathname}`;
  } catch {
    return "an address that is no postgresql:// URL";
  }
}
