// Fastify and pg with nothing between: no session, no roles, no checks, no headers of safety; one query a read.
import fastify from "fastify";
import pg from "pg";

const pool = new pg.Pool({ connectionString: process.env.DATABASE_URL, max: 10 });
const project = process.env.PROJECT;
const app = fastify();

app.get("/record", async ({ query }) => {
  const { rows } = await pool.query(
    `select e.number, e.at, e.actor_id, e.actor_role, e.kind, e.leaf, e.head, p.actor_name, p.payload
     from record_entry e left join record_payload p using (project_id, number)
     where e.project_id = $1 and e.number > $2 order by e.number limit $3`,
    [project, query.after, query.limit],
  );
  return rows;
});

app.get("/draft", async () => {
  const { rows } = await pool.query("select number, content_digest, scheme from draft where project_id = $1", [
    project,
  ]);
  return rows[0];
});

await app.listen({ port: 0, host: "127.0.0.1" });
process.send?.(app.server.address()?.port);
