import { SealIssue, SurveyedContainer, type KeptFile } from "@cornerway/schema";
import { done, refuse, type Outcome } from "../../outcome.ts";
import type { Connection } from "../../store/connection.ts";
import { findFile, readFileBytes } from "../../store/file-rows.ts";
import { readMatters } from "../../store/matter-rows.ts";
import type { Part } from "../part.ts";
import { readSiteWords } from "../site/site-words.ts";

/** A file with its bytes. Whoever is only a reader gets sealed copies, photos of the survey and of the site, and nothing else. */
export async function readFile(
  db: Connection,
  { projectId, roles }: Part,
  fileId: string,
): Promise<Outcome<{ file: KeptFile; bytes: Uint8Array }>> {
  const file = await findFile(db, projectId, fileId);
  if (file === null) return refuse("not-found");
  const readsOnly = roles.every((role) => role === "reader");
  if (readsOnly && !(await isForReaders(db, projectId, fileId))) return refuse("not-found");
  const bytes = await readFileBytes(db, projectId, fileId);
  return bytes === null ? refuse("not-found") : done({ file, bytes });
}

const isForReaders = async (db: Connection, projectId: string, fileId: string): Promise<boolean> =>
  (await isSealedCopy(db, projectId, fileId)) || (await isShownPhoto(db, projectId, fileId));

async function isShownPhoto(db: Connection, projectId: string, fileId: string): Promise<boolean> {
  const containers = await readMatters(db, projectId, "container", SurveyedContainer);
  const steps = containers.flatMap((each) => each.steps);
  const words = await readSiteWords(db, projectId);
  return [...steps, ...words].some((said) => "photos" in said && said.photos.some((photo) => photo.fileId === fileId));
}

async function isSealedCopy(db: Connection, projectId: string, fileId: string): Promise<boolean> {
  const issues = await readMatters(db, projectId, "seal issue", SealIssue);
  return issues.some(({ steps }) => steps.some((copy) => copy.fileId === fileId));
}
