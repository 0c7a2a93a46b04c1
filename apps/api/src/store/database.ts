import { PrismaPg } from "@prisma/adapter-pg";
import { openPool } from "../database/open-pool.ts";
import { PrismaClient } from "../generated/prisma/client.ts";
import type { Outcome } from "../outcome.ts";
import type { Connection } from "./connection.ts";
import { readsOf, type Reads } from "./reads.ts";
import { lockProject } from "./record-rows.ts";
import { Turns } from "./turns.ts";

export interface Database {
  connection: Connection;
  /** The quick way for what every request reads. */
  reads: Reads;
  /**
   * Runs one act on a project with the project's row locked: commits when it is done, rolls everything back when it is
   * refused or throws.
   */
  act<T>(projectId: string, work: (transaction: Connection) => Promise<Outcome<T>>): Promise<Outcome<T>>;
  /** Runs what concerns no one project in one transaction: commits when it is done, rolls back when it is refused or throws. */
  write<T>(work: (transaction: Connection) => Promise<Outcome<T>>): Promise<Outcome<T>>;
  close(): Promise<void>;
}

const mostConnections = 10;
const longestWaitMs = 5_000;
const longestTransactionMs = 15_000;

export function openDatabase(url: string): Database {
  const pool = openPool(url, mostConnections);
  const client = new PrismaClient({ adapter: new PrismaPg(pool), errorFormat: "minimal" });
  const turns = new Turns();
  return {
    connection: client,
    reads: readsOf(pool),
    act: (projectId, work) =>
      turns.take(projectId, () =>
        transact(client, async (transaction) => {
          await lockProject(transaction, projectId);
          return work(transaction);
        }),
      ),
    write: (work) => transact(client, work),
    async close() {
      await client.$disconnect();
      await pool.end();
    },
  };
}

/** Carries a refusal out of Prisma's transaction, which rolls back only when something is thrown. */
class RolledBack<T> extends Error {
  readonly outcome: Outcome<T>;
  constructor(outcome: Outcome<T>) {
    super("rolled back");
    this.outcome = outcome;
  }
}

async function transact<T>(
  client: PrismaClient,
  work: (transaction: Connection) => Promise<Outcome<T>>,
): Promise<Outcome<T>> {
  let refused: RolledBack<T> | undefined;
  const attempt = client.$transaction(
    async (transaction) => {
      const outcome = await work(transaction);
      if (outcome.ok) return outcome;
      refused = new RolledBack(outcome);
      throw refused;
    },
    { maxWait: longestWaitMs, timeout: longestTransactionMs },
  );
  return attempt.catch((error: unknown) => {
    if (refused !== undefined && error === refused) return refused.outcome;
    throw error;
  });
}
