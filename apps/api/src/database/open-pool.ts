import pg from "pg";

/**
 * A pool of plain connections. One that is cut while idle, or between two queries, is dropped without a word: the next
 * query gets another, and says so itself when there is none.
 */
export function openPool(url: string, most: number): pg.Pool {
  const pool = new pg.Pool({ connectionString: url, max: most });
  const dropped = () => undefined;
  pool.on("error", dropped);
  pool.on("connect", (client) => void client.on("error", dropped));
  return pool;
}
