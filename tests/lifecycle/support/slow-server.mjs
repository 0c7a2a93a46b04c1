// A server whose writes take as long as asked, so that a test can stop the service while one is in flight.
import { createServer } from "node:http";
import { setTimeout as pause } from "node:timers/promises";
import pg from "pg";

const pool = new pg.Pool({ connectionString: process.env["DATABASE_URL"] });
const routes = { "/ready": () => "ready", "/rows": rows, "/write": write };

const server = createServer((request, response) => void answer(request, response));
server.listen(Number(process.env["PORT"]), process.env["HOST"]);
process.once("SIGTERM", () => server.close(() => void pool.end()));

async function answer(request, response) {
  const url = new URL(request.url ?? "/", "http://localhost");
  response.setHeader("connection", "close");
  try {
    response.end(JSON.stringify(await routes[url.pathname](url.searchParams)));
  } catch (error) {
    response.statusCode = 500;
    response.end(String(error));
  }
}

async function rows() {
  return (await pool.query("select name from kept_row order by name")).rows.map(({ name }) => name);
}

async function write(words) {
  const client = await pool.connect();
  try {
    await client.query("begin");
    await client.query("insert into kept_row (name) values ($1)", [words.get("name")]);
    await pause(Number(words.get("ms")));
    await client.query("commit");
    return "written";
  } finally {
    client.release();
  }
}
