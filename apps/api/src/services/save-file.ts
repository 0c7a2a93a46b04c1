import { schemeFile, type SchemeFile } from "@cornerway/schema";
import { done, refuse, type Outcome } from "../outcome.ts";
import type { Connection } from "../store/connection.ts";
import { readDraft } from "../store/draft-rows.ts";
import { readProjectRow } from "../store/project-rows.ts";
import { readRevision } from "../store/revision-rows.ts";

/** A scheme as it is saved, and the name of its file. */
export interface SavedFile {
  name: string;
  file: SchemeFile;
}

export async function saveDraft(db: Connection, projectId: string): Promise<SavedFile> {
  const { number, contentDigest, scheme } = await readDraft(db, projectId);
  const { name: project } = await readProjectRow(db, projectId);
  return {
    name: fileName(project, `draft-${number}`),
    file: schemeFile({ project, revision: null, contentDigest, scheme }),
  };
}

export async function saveRevision(db: Connection, projectId: string, letter: string): Promise<Outcome<SavedFile>> {
  const revision = await readRevision(db, projectId, letter);
  if (revision === null) return refuse("not-found");
  const { contentDigest, scheme } = revision;
  const { name: project } = await readProjectRow(db, projectId);
  return done({
    name: fileName(project, `revision-${letter.toLowerCase()}`),
    file: schemeFile({ project, revision: letter, contentDigest, scheme }),
  });
}

/** Lower-case letters and figures of ASCII, so that it is a name everywhere and needs no escaping in a header. */
function fileName(project: string, what: string): string {
  const plain = project
    .normalize("NFKD")
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, "-")
    .replaceAll(/^-|-$/g, "");
  return `${plain === "" ? "scheme" : plain.slice(0, 60)}-${what}.json`;
}
