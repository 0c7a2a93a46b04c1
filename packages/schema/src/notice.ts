import { z } from "zod";
import { ProjectId } from "./ids.ts";
import { RecordEntry, type RecordKind } from "./record-entry.ts";
import type { Role } from "./roles.ts";

/**
 * Whom an entry of a kind concerns, beyond whoever may see it: those for whom it changes what waits. Never whoever did it.
 * A kind that is not here is read in the record by whoever looks.
 */
export const concerns: Partial<Record<RecordKind, readonly Role[]>> = {
  "role given": ["owner"],
  "role confirmed": ["engineer", "architect"],
  "role removed": ["owner"],
  "revision sent": ["engineer", "checker", "owner"],
  assessed: ["architect", "engineer"],
  "assessment failed": ["architect", "engineer"],
  "note written": ["architect", "engineer"],
  "request made": ["architect", "owner"],
  "request taken in": ["engineer", "owner"],
  "request declined": ["engineer", "owner"],
  "stamp pressed": ["architect", "owner", "checker"],
  "question asked": ["engineer"],
  "question followed": ["architect", "checker", "owner", "engineer"],
  "condition followed": ["architect", "engineer", "checker", "owner"],
  "decision made": ["architect", "engineer"],
  "revision checked": ["engineer", "architect"],
  "mark disposed": ["architect", "checker"],
  "values confirmed": ["checker"],
  "issued for seal": ["architect", "checker", "owner", "reader"],
  "sealed copy kept": ["architect", "owner", "reader"],
  "set printed": ["architect", "engineer", "owner", "reader"],
  "comments brought in": ["architect", "engineer"],
  "comment followed": ["architect", "engineer", "reader"],
  "container followed": ["architect", "engineer", "owner"],
  "site word said": ["architect", "engineer", "owner"],
  "reader link opened": ["owner"],
  "webhook stopped": ["architect", "owner"],
};

/** True when an entry of the kind concerns someone who holds any of these roles. */
export const concernsAny = (held: readonly Role[], kind: RecordKind): boolean =>
  held.some((role) => concerns[kind]?.includes(role) ?? false);

/** An entry that concerns someone. */
export const Notice = z
  .strictObject({ projectId: ProjectId, projectName: z.string(), entry: RecordEntry, seen: z.boolean() })
  .meta({ id: "Notice" });
export type Notice = z.infer<typeof Notice>;

/** The latest of them over all projects, newest first, and how many are not seen yet. */
export const Notices = z.strictObject({ notices: z.array(Notice), unseen: z.int().min(0) }).meta({ id: "Notices" });
export type Notices = z.infer<typeof Notices>;

export const noticeLetters = ["none", "at once", "daily"] as const;
/** How someone is told of them by letter. */
export const NoticeSetting = z.strictObject({ letters: z.enum(noticeLetters) }).meta({ id: "NoticeSetting" });
export type NoticeSetting = z.infer<typeof NoticeSetting>;

/** Everything of a project up to an entry is seen. */
export const NoticesSeen = z.strictObject({ upTo: z.int().min(1).max(2_147_483_647) }).meta({ id: "NoticesSeen" });
export type NoticesSeen = z.infer<typeof NoticesSeen>;
