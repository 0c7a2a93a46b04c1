import type { Digest } from "@cornerway/schema";
import { z } from "zod";
import type { Prisma } from "../generated/prisma/client.ts";
import type { Connection } from "./connection.ts";

/** What is raised on a project and followed step by step until it is closed. */
export type MatterKind =
  | "question"
  | "condition"
  | "comment"
  | "check"
  | "disposition"
  | "confirmation"
  | "seal issue"
  | "container"
  | "survey limits"
  | "site word";

/** A matter as it is stored: as it was raised, and the steps since in their order. */
interface KeptMatter {
  body: unknown;
  steps: { body: unknown }[];
}

export interface NewMatter {
  kind: MatterKind;
  id: string;
  number: number;
  entry: number;
  /** All of it but its steps. */
  body: Prisma.InputJsonObject;
  bodyDigest: Digest;
}

const inOrder = { steps: { orderBy: { ordinal: "asc" } } } as const;
const Raised = z.record(z.string(), z.unknown());

export async function insertMatter(tx: Connection, projectId: string, matter: NewMatter): Promise<void> {
  await tx.matter.create({ data: { projectId, ...matter } });
}

/** The next number of a kind. Only under the project's row lock. */
export const nextNumber = async (tx: Connection, projectId: string, kind: MatterKind): Promise<number> =>
  (await tx.matter.count({ where: { projectId, kind } })) + 1;

export async function insertStep(
  tx: Connection,
  projectId: string,
  step: {
    id: string;
    matterId: string;
    ordinal: number;
    entry: number;
    body: Prisma.InputJsonObject;
    bodyDigest: Digest;
  },
): Promise<void> {
  await tx.matterStep.create({ data: { projectId, ...step } });
}

/** One matter of a kind, read by its shape; null when there is none. */
export async function findMatter<T>(
  db: Connection,
  projectId: string,
  { kind, id }: { kind: MatterKind; id: string },
  shape: z.ZodType<T>,
): Promise<{ matter: T; bodyDigest: Digest } | null> {
  const row = await db.matter.findUnique({ where: { projectId_id: { projectId, id } }, include: inOrder });
  return row === null || row.kind !== kind ? null : { matter: readBy(shape, row), bodyDigest: row.bodyDigest };
}

/** All matters of a kind in the order of their numbers. */
export async function readMatters<T>(
  db: Connection,
  projectId: string,
  kind: MatterKind,
  shape: z.ZodType<T>,
): Promise<T[]> {
  const rows = await db.matter.findMany({ where: { projectId, kind }, include: inOrder, orderBy: { number: "asc" } });
  return rows.map((row) => readBy(shape, row));
}

/** All acts of a kind that nothing follows on, in the order of their numbers. */
export async function readPlainMatters<T>(
  db: Connection,
  projectId: string,
  kind: MatterKind,
  shape: z.ZodType<T>,
): Promise<T[]> {
  const rows = await db.matter.findMany({ where: { projectId, kind }, orderBy: { number: "asc" } });
  return rows.map(({ body }) => shape.parse(body));
}

/** One act of a kind that nothing follows on; null when there is none. */
export async function findPlainMatter<T>(
  db: Connection,
  projectId: string,
  { kind, id }: { kind: MatterKind; id: string },
  shape: z.ZodType<T>,
): Promise<{ matter: T; bodyDigest: Digest } | null> {
  const row = await db.matter.findUnique({ where: { projectId_id: { projectId, id } } });
  return row === null || row.kind !== kind ? null : { matter: shape.parse(row.body), bodyDigest: row.bodyDigest };
}

/** True when any matter, of whatever kind, has this id. */
export const isMatterId = async (db: Connection, projectId: string, id: string): Promise<boolean> =>
  (await db.matter.count({ where: { projectId, id } })) > 0;

/** A step by its id: what it was done about, and the digest that tells a repeated one from another. */
export const findStep = (
  db: Connection,
  projectId: string,
  id: string,
): Promise<{ matterId: string; bodyDigest: Digest } | null> =>
  db.matterStep.findUnique({
    where: { projectId_id: { projectId, id } },
    select: { matterId: true, bodyDigest: true },
  });

const readBy = <T>(shape: z.ZodType<T>, { body, steps }: KeptMatter): T =>
  shape.parse({ ...Raised.parse(body), steps: steps.map((step) => step.body) });
