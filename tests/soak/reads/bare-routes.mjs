// Fastify and pg with nothing between: no session, no roles, no checks, no headers of safety; one query a read, and the
// same body as the service sends.
import fastify from "fastify";
import pg from "pg";

const pool = new pg.Pool({ connectionString: process.env.DATABASE_URL, max: 10 });
const project = process.env.PROJECT;
const app = fastify();

app.get("/record", async ({ query }) => {
  const { rows } = await pool.query(
    `select e.project_id as "projectId", e.number, e.at, e.kind, e.leaf, e.head,
       json_build_object('id', e.actor_id, 'name', p.actor_name, 'role', e.actor_role) as actor, p.payload
     from record_entry e left join record_payload p using (project_id, number)
     where e.project_id = $1 and e.number > $2 order by e.number limit $3`,
    [project, query.after, query.limit],
  );
  return rows;
});

app.get("/draft", async () => {
  const { rows } = await pool.query(
    `select number, content_digest as "contentDigest", scheme, number as "movesSinceRevision"
     from draft where project_id = $1`,
    [project],
  );
  return rows[0];
});

await app.listen({ port: 0, host: "127.0.0.1" });
process.send?.(app.server.address()?.port);
