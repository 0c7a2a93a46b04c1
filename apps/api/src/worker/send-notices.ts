import type { Config } from "../config.ts";
import { openMailer } from "../mail/open-mailer.ts";
import type { Mailer } from "../mail/mailer.ts";
import type { Task, TaskContext } from "../queue/task.ts";
import { signHead } from "../record/sign-head.ts";
import { noticeLetter, type ProjectTold } from "../services/notices/notice-letter.ts";
import { noticedKinds } from "../services/notices/read-notices.ts";
import { signerFor } from "../services/prove-record.ts";
import type { Connection } from "../store/connection.ts";
import { readHeld } from "../store/membership-rows.ts";
import {
  findNoticed,
  moveNoticeMark,
  noteLettered,
  readLetterReaders,
  readNoticeMark,
  type LetterReader,
} from "../store/notice-rows.ts";
import { readProjectIds, readProjectRow } from "../store/project-rows.ts";
import { lastNumber, readEntriesNumbered, readHead } from "../store/record-rows.ts";

/** When the daily letter goes, UTC. */
const dailyHour = 6;
const mostProjects = 200;
const mostOfProject = 100;

/**
 * Tells those who asked for it by letter what concerns them: at once, which is within a minute, or once a day. Marks follow
 * the letter, so that one that did not leave goes again; a worker that is killed in between sends it twice.
 */
export const sendNotices: Task = {
  name: "send notices",
  every: "* * * * *",
  async run(_payload, context) {
    const mailer = openMailer(context.config);
    try {
      const now = new Date();
      for (const reader of await readLetterReaders(context.database.connection))
        if (isDue(reader, now)) await tell(reader, { mailer, now, context });
    } finally {
      mailer.close();
    }
  },
};

/** A daily letter is due from its hour on where none went since. */
export function isDue(
  { letters, letteredAt, since }: Pick<LetterReader, "letters" | "letteredAt" | "since">,
  now: Date,
) {
  if (letters === "at once") return true;
  const hour = new Date(now);
  hour.setUTCHours(dailyHour, 0, 0, 0);
  if (now < hour) hour.setUTCDate(hour.getUTCDate() - 1);
  return (letteredAt ?? since) < hour;
}

async function tell(
  reader: LetterReader,
  { mailer, now, context }: { mailer: Mailer; now: Date; context: TaskContext },
): Promise<void> {
  const db = context.database.connection;
  const ids = (await readProjectIds(db, reader.personId, { after: undefined, limit: mostProjects })) ?? [];
  const told: { projectId: string; upTo: number; told: ProjectTold }[] = [];
  for (const projectId of ids) {
    const found = await toldOf(db, projectId, reader, context.config);
    if (found !== null) told.push({ projectId, ...found });
  }
  try {
    if (told.length > 0)
      await mailer.send(
        noticeLetter(
          reader,
          told.map((each) => each.told),
        ),
      );
  } catch (error) {
    // The reply of a mail server may repeat the letter, so only the kind of error is told.
    context.log.error({ name: error instanceof Error ? error.name : "unknown" }, "a letter of notices did not leave");
    return;
  }
  for (const { projectId, upTo } of told)
    await moveNoticeMark(db, { projectId, personId: reader.personId }, { lettered: upTo });
  await noteLettered(db, reader.personId, now);
}

/** What a project has to tell that no letter told; null where there is nothing. */
async function toldOf(
  db: Connection,
  projectId: string,
  { personId, since }: LetterReader,
  { secretsKey, publicUrl }: Config,
): Promise<{ upTo: number; told: ProjectTold } | null> {
  const { roles } = await readHeld(db, projectId, personId);
  const { lettered: after } = await readNoticeMark(db, projectId, personId);
  const asked = { kinds: noticedKinds(roles), after, since, limit: mostOfProject };
  const numbers = await findNoticed(db, { projectId, personId }, asked);
  const upTo = numbers[0];
  if (upTo === undefined) return null;
  const { name } = await readProjectRow(db, projectId);
  const entries = (await readEntriesNumbered(db, projectId, numbers)).toReversed();
  const address = publicUrl === undefined ? null : new URL(`/projects/${projectId}`, publicUrl).href;
  return { upTo, told: { name, address, entries, head: await headOf(db, projectId, secretsKey) } };
}

async function headOf(db: Connection, projectId: string, secretsKey: string | undefined) {
  const signer = await signerFor(db, secretsKey);
  const number = await lastNumber(db, projectId);
  if (!signer.ok || number === undefined) return null;
  const { head } = await readHead(db, projectId, number);
  return signHead({ project: projectId, number, head, time: new Date().toISOString() }, signer.value.key);
}
