import { cautionLine, containerNumberWords, type RecordEntry, type SignedHead } from "@cornerway/schema";
import { capital } from "../../permit-set/paper/words.ts";
import type { Letter } from "../../mail/mailer.ts";

/** What one project has to tell, with the head of its record where heads are signed. */
export interface ProjectTold {
  name: string;
  /** Where it is opened; null where the service does not know under which address people reach it. */
  address: string | null;
  entries: readonly RecordEntry[];
  head: SignedHead | null;
}

/** One letter of what concerns someone. What people wrote is not in it: it is read where it was written. */
export const noticeLetter = (to: { email: string; name: string }, projects: readonly ProjectTold[]): Letter => ({
  to: to.email,
  subject: subjectOf(projects),
  text: `${to.name}, this concerns you:

${projects.map(projectLines).join("\n")}
Letters are chosen and ended on the page of your account.

${cautionLine}
`,
});

function subjectOf(projects: readonly ProjectTold[]): string {
  const count = projects.reduce((sum, { entries }) => sum + entries.length, 0);
  const [first, ...others] = projects;
  const where = others.length === 0 ? (first?.name ?? "") : `${projects.length} projects`;
  return count === 1 && first?.entries[0] !== undefined
    ? `${first.name}: ${noticeWords(first.entries[0])}`
    : `${count} things in ${where}`;
}

const projectLines = ({ name, address, entries, head }: ProjectTold): string =>
  [
    name,
    ...(address === null ? [] : [address]),
    ...entries.map(
      (entry) => `- ${noticeWords(entry)}, by ${entry.actor.name}, ${entry.actor.role} (entry ${entry.number})`,
    ),
    ...(head === null ? [] : headLines(head)),
    "",
  ].join("\n");

/** A head in a letter lies outside the service: against it one sees later whether the record was altered. */
const headLines = ({ number, head, fingerprint }: SignedHead): string[] => [
  `Keep to check the record by: head ${number}:${head}`,
  `signed by the key ${fingerprint}`,
];

/** An entry in few words, without what anyone wrote in it. */
export function noticeWords({ kind, payload }: RecordEntry): string {
  switch (payload?.kind) {
    case "revision sent":
      return `Revision ${payload.letter} sent`;
    case "assessed":
      return `Revision ${payload.letter} checked by the engine: ${payload.verdict}`;
    case "assessment failed":
      return `Revision ${payload.letter} could not be checked`;
    case "question asked":
      return `Question ${payload.question.number} asked`;
    case "question followed":
      return `Question ${payload.number}: ${payload.step.step}`;
    case "condition followed":
      return `Condition ${payload.number}: ${payload.step.step}`;
    case "request made":
      return `Change request ${payload.request.number} made`;
    case "request taken in":
      return `Change request ${payload.number} taken in`;
    case "request declined":
      return `Change request ${payload.number} declined`;
    case "stamp pressed":
      return `Revision ${payload.stamp.revision} stamped`;
    case "issued for seal":
      return `Revision ${payload.issue.revision} issued for seal`;
    case "set printed":
      return `Permit set of revision ${payload.letter} printed`;
    case "container followed":
      return `Container ${containerNumberWords(payload.containerNumber)}: ${payload.step.step}`;
    case "site word said":
      return `On site, ${payload.word.key.split(":")[0]}: ${payload.word.says}`;
    case "comments brought in":
      return `${payload.comments.length} comments of the authority brought in`;
    default:
      return capital(kind);
  }
}
