import { canonicalJson, type Actor, type RecordPayload } from "@cornerway/schema";
import type postgres from "postgres";
import { entryLeaf, payloadDigest } from "../../../apps/api/src/record/entry-leaf.ts";
import { appendLeaf, treeHead } from "../../../apps/api/src/record/tree-head.ts";

interface Row {
  number: number;
  at: Date;
  actorId: Actor["id"];
  actorRole: Actor["role"];
  kind: RecordPayload["kind"];
  payloadDigest: string;
  leaf: string;
  head: string;
  salt: string;
  payload: RecordPayload;
}

/** Goes along with the record of one project and works out again every leaf and head that is new. */
export class RecordCheck {
  readonly projectId: string;
  number = 0;
  #frontier: string[] = [];

  constructor(projectId: string) {
    this.projectId = projectId;
  }

  /** Ids of the drawing acts among what is new; throws where the record is not what it should be. */
  async goOn(sql: postgres.Sql): Promise<string[]> {
    const rows = await sql<Row[]>`
      select e."number", e."at", e."actor_id" as "actorId", e."actor_role" as "actorRole", e."kind", e."leaf", e."head",
        e."payload_digest" as "payloadDigest", p."salt", p."payload"
      from "record_entry" e join "record_payload" p using ("project_id", "number")
      where e."project_id" = ${this.projectId} and e."number" > ${this.number} order by e."number"`;
    return rows.flatMap((row) => this.#take(row));
  }

  #take(row: Row): string[] {
    const place = `entry ${row.number} of ${this.projectId}`;
    if (row.number !== this.number + 1) throw new Error(`${place}: follows ${this.number}`);
    if (payloadDigest(row.payload, row.salt, undefined) !== row.payloadDigest)
      throw new Error(`${place}: another payload`);
    const { number, kind, payloadDigest: digest, actorId: actor, actorRole: role } = row;
    const leaf = entryLeaf({ project: this.projectId, number, time: row.at.toISOString(), actor, role, kind, digest });
    if (leaf !== row.leaf) throw new Error(`${place}: another leaf for ${canonicalJson({ number, kind })}`);
    this.#frontier = appendLeaf(this.#frontier, this.number, leaf);
    if (treeHead(this.#frontier) !== row.head) throw new Error(`${place}: another head`);
    this.number = number;
    return row.payload.kind === "drawn" ? [row.payload.actId] : [];
  }
}
