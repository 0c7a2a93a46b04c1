import { engineVersion as ownVersion } from "@cornerway/engine";
import {
  Assessment,
  Author,
  KeptOption,
  OptionPick,
  OptionWithdrawal,
  type Digest,
  type OptionAnswer,
  type OptionSetNow,
  type Scheme,
} from "@cornerway/schema";
import { isNewer } from "../is-newer.ts";
import type { Connection } from "./connection.ts";
import { storedScheme } from "./stored-scheme.ts";

/** One alternative of a project. */
export interface OptionKey {
  projectId: string;
  optionId: string;
}

/** An alternative as it was kept, and whether it was taken back since. */
export type StandingOption = KeptOption & { withdrawn: OptionWithdrawal | null };

/** A set as it is stored, with all but the drawings. */
export type KeptSet = Omit<OptionSetNow, "options"> & { options: StandingOption[] };

/** An alternative with its drawing and, once it is there, the engine's whole answer to it. */
export interface FoundOption {
  setId: string;
  option: KeptOption;
  withdrawn: OptionWithdrawal | null;
  scheme: Scheme;
  answer: OptionAnswer;
  result: Assessment | null;
}

/** What the engine said, or why it said nothing. */
export type AnswerRow = { engineVersion: string; doneAt: string } & (
  | { state: "done"; result: Assessment; resultDigest: Digest; why: null }
  | { state: "failed"; result: null; resultDigest: null; why: string }
);

const kept = {
  options: { orderBy: { place: "asc" }, omit: { scheme: true }, include: { withdrawal: true } },
  picks: { orderBy: { entry: "asc" } },
} as const;

/** Every set of a project, the first first. */
export async function readOptionSets(db: Connection, projectId: string): Promise<KeptSet[]> {
  const rows = await db.optionSet.findMany({ where: { projectId }, orderBy: { number: "asc" }, include: kept });
  return rows.map(setOf);
}

export async function findOptionSet(
  db: Connection,
  projectId: string,
  id: string,
): Promise<{ set: KeptSet; bodyDigest: Digest } | null> {
  const row = await db.optionSet.findUnique({ where: { projectId_id: { projectId, id } }, include: kept });
  return row === null ? null : { set: setOf(row), bodyDigest: row.bodyDigest };
}

/** The next number of a set. Only under the project's row lock. */
export const nextSetNumber = async (tx: Connection, projectId: string): Promise<number> =>
  (await tx.optionSet.count({ where: { projectId } })) + 1;

type NewSetRow = Pick<KeptSet, "id" | "number" | "name" | "author" | "openedAt"> & { bodyDigest: Digest };

export async function insertOptionSet(tx: Connection, projectId: string, row: NewSetRow): Promise<void> {
  await tx.optionSet.create({ data: { projectId, ...row } });
}

export async function findOption(db: Connection, { projectId, optionId: id }: OptionKey): Promise<FoundOption | null> {
  const where = { projectId_id: { projectId, id } };
  const row = await db.keptOption.findUnique({ where, include: { answer: true, withdrawal: true } });
  if (row === null) return null;
  const { scheme, answer, setId } = row;
  const read = Assessment.safeParse(answer?.result);
  const result = read.success && answer !== null && !isNewer(answer.engineVersion, ownVersion) ? read.data : null;
  const withdrawn = withdrawalOf(row.withdrawal);
  return {
    ...{ setId, option: optionOf(row), withdrawn, scheme: storedScheme(scheme) },
    ...{ answer: answerOf(answer, result), result },
  };
}

/** What an earlier sending under this id was; null where there is none. */
export async function findOptionDigest(db: Connection, projectId: string, id: string): Promise<Digest | null> {
  const select = { bodyDigest: true } as const;
  return (await db.keptOption.findUnique({ where: { projectId_id: { projectId, id } }, select }))?.bodyDigest ?? null;
}

type NewOptionRow = KeptOption & { setId: string; scheme: Scheme; bodyDigest: Digest };

export async function insertOption(tx: Connection, projectId: string, row: NewOptionRow): Promise<void> {
  await tx.keptOption.create({ data: { projectId, ...row } });
}

/** Writes the answer where there is none yet; says whether it did. */
export async function insertAnswer(tx: Connection, key: OptionKey, row: AnswerRow): Promise<boolean> {
  if ((await tx.optionAnswer.count({ where: key })) > 0) return false;
  const { result, ...rest } = row;
  await tx.optionAnswer.create({ data: { ...key, ...rest, ...(result === null ? {} : { result }) } });
  return true;
}

/** Alternatives of all projects without an answer, the longest waiting first. */
export function readUnanswered(db: Connection): Promise<OptionKey[]> {
  return db.$queryRaw`
    select o."project_id"::text as "projectId", o."id"::text as "optionId" from "kept_option" o
    where not exists (select 1 from "option_answer" a where a."project_id" = o."project_id" and a."option_id" = o."id")
    order by o."kept_at" limit 500`;
}

export async function findPick(
  db: Connection,
  projectId: string,
  id: string,
): Promise<{ pick: OptionPick; setId: string; bodyDigest: Digest } | null> {
  const row = await db.optionPick.findUnique({ where: { projectId_id: { projectId, id } } });
  return row === null ? null : { pick: pickOf(row), setId: row.setId, bodyDigest: row.bodyDigest };
}

type NewPickRow = OptionPick & { setId: string; entry: number; bodyDigest: Digest };

export async function insertPick(tx: Connection, projectId: string, row: NewPickRow): Promise<void> {
  await tx.optionPick.create({ data: { projectId, ...row } });
}

export async function findWithdrawal(
  db: Connection,
  projectId: string,
  id: string,
): Promise<{ withdrawal: OptionWithdrawal; bodyDigest: Digest } | null> {
  const row = await db.optionWithdrawal.findUnique({ where: { projectId_id: { projectId, id } } });
  const withdrawal = withdrawalOf(row);
  return row === null || withdrawal === null ? null : { withdrawal, bodyDigest: row.bodyDigest };
}

type NewWithdrawalRow = OptionWithdrawal & { optionId: string; bodyDigest: Digest };

export async function insertWithdrawal(tx: Connection, projectId: string, row: NewWithdrawalRow): Promise<void> {
  await tx.optionWithdrawal.create({ data: { projectId, ...row } });
}

type OptionRow = Omit<KeptOption, "author" | "keptAt"> & { author: unknown; keptAt: Date };
type WithdrawalRow = Omit<OptionWithdrawal, "author" | "withdrawnAt"> & { author: unknown; withdrawnAt: Date };
type PickRow = Omit<OptionPick, "author" | "pickedAt"> & { author: unknown; pickedAt: Date };
type SetRow = Pick<KeptSet, "id" | "number" | "name"> & {
  author: unknown;
  openedAt: Date;
  options: (OptionRow & { withdrawal: WithdrawalRow | null })[];
  picks: PickRow[];
};

const setOf = ({ id, number, name, author, openedAt, options, picks }: SetRow): KeptSet => ({
  ...{ id, number, name, author: Author.parse(author), openedAt: openedAt.toISOString() },
  options: options.map((row) => ({ ...optionOf(row), withdrawn: withdrawalOf(row.withdrawal) })),
  picks: picks.map(pickOf),
});

const optionOf = ({ id, place, name, contentDigest, containers, author, keptAt }: OptionRow): KeptOption =>
  KeptOption.parse({ id, place, name, contentDigest, containers, author, keptAt: keptAt.toISOString() });

const pickOf = ({ id, optionId, contentDigest, reason, author, pickedAt }: PickRow): OptionPick =>
  OptionPick.parse({ id, optionId, contentDigest, reason, author, pickedAt: pickedAt.toISOString() });

const withdrawalOf = (row: WithdrawalRow | null): OptionWithdrawal | null =>
  row === null
    ? null
    : OptionWithdrawal.parse({
        ...{ id: row.id, reason: row.reason, author: row.author },
        withdrawnAt: row.withdrawnAt.toISOString(),
      });

type StoredAnswer = { state: string; engineVersion: string; resultDigest: string | null; why: string | null };

function answerOf(answer: StoredAnswer | null, result: Assessment | null): OptionAnswer {
  if (answer === null) return { state: "waiting" };
  if (answer.state === "failed") return { state: "failed", why: answer.why ?? "the reason is not known" };
  const { engineVersion, resultDigest } = answer;
  if (result === null || resultDigest === null) return { state: "unreadable" };
  const { verdict, scope, marks } = result;
  return { state: "done", verdict, scope, marks: marks.length, engineVersion, resultDigest };
}
