import { randomBytes } from "node:crypto";
import type { Actor, RecordPayload } from "@cornerway/schema";
import { addWebhookWord } from "../queue/add-webhook-word.ts";
import type { Connection } from "../store/connection.ts";
import { insertEntry, takePlace } from "../store/record-rows.ts";
import { entryLeaf, payloadDigest } from "./entry-leaf.ts";
import { appendLeaf, treeHead } from "./tree-head.ts";

export interface Appended {
  number: number;
  /** RFC 3339, UTC, milliseconds. */
  at: string;
}

/**
 * Writes one act to a project's record within the act's own transaction. The only writer of the record. The payload is
 * made once the entry's number and time are known.
 */
export async function append(
  tx: Connection,
  projectId: string,
  actor: Actor,
  payloadAt: (entry: Appended) => RecordPayload,
): Promise<Appended> {
  const place = await takePlace(tx, projectId);
  const { number, at } = place;
  const payload = payloadAt({ number, at });
  const salt = randomBytes(32).toString("hex");
  const digest = payloadDigest(payload, salt, actor.token);
  const leaf = entryLeaf({
    project: projectId,
    number,
    time: at,
    actor: actor.id,
    role: actor.role,
    kind: payload.kind,
    digest,
  });
  const frontierAfter = appendLeaf(place.frontier, number - 1, leaf);
  const head = treeHead(frontierAfter);
  await insertEntry(tx, { projectId, place, actor, payload, salt, payloadDigest: digest, leaf, head, frontierAfter });
  await addWebhookWord(tx, projectId, number);
  return { number, at };
}
