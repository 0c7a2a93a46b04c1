import { randomUUID } from "node:crypto";
import type { Connection } from "../../src/store/connection.ts";
import { act, note, place } from "./sample.ts";
import type { ReviewRoom } from "./review-room.ts";

/** A project with something in it of many kinds: a judged revision, a note, a question, a kept PDF, a changed draft. */
export async function workIn(room: ReviewRoom): Promise<void> {
  const { by, path } = room;
  await room.sendJudged([place(1)]);
  await by.engineer.post(`${path}/notes`, note("g1")).expect(201);
  await by.architect.post(`${path}/notes`, note("g1", { text: "Grüße, 3 × 40′ at −5 °C" })).expect(201);
  const file = Buffer.from("%PDF-1.7\n1 0 obj << >> endobj\ntrailer << >>\n%%EOF\n", "latin1");
  await by.engineer
    .post(`${path}/files/${randomUUID()}`)
    .attach("file", file, { filename: "Calculation of P1.pdf", contentType: "application/pdf" })
    .expect(201);
  const { body } = await by.architect.get(`${path}/draft`).expect(200);
  await by.architect.post(`${path}/draft/acts`, act(Number(body.number), [place(2)])).expect(200);
}

/** Every row of a project in the tables that say what it is, as text: to hold one database against another. */
export async function everythingOf(
  db: Connection,
  projectId: string,
  tables: readonly string[],
): Promise<Map<string, unknown>> {
  const found = new Map<string, unknown>();
  for (const table of tables)
    found.set(
      table,
      await db.$queryRawUnsafe(
        `select to_jsonb(t)::text as "row" from "${table}" t where t."project_id" = $1::uuid order by 1`,
        projectId,
      ),
    );
  return found;
}
