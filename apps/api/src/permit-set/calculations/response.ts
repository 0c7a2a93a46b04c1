import type { PlanCheckComment } from "@cornerway/schema";
import type { CalculationFlow } from "../paper/calculation-flow.ts";
import { capital, day } from "../paper/words.ts";
import type { SetSource } from "../set-source.ts";

/** The letter that answers each comment of the authority, in its own order and words. */
export function layResponse(flow: CalculationFlow, { comments, project, revision, authority }: SetSource): void {
  flow.subject("Response to plan-check comments");
  if (comments.length === 0) {
    flow.paragraph("No comment of the authority has been brought in for this project.");
    return;
  }
  const answered = comments.filter(({ reply }) => reply !== null).length;
  const closed = comments.filter(({ closed: end }) => end !== null).length;
  const to = authority.name === null ? "" : `To ${authority.name}. `;
  flow.paragraph(`${to}${project.name}, ${project.place}. Revision ${revision.letter} of ${day(revision.sentAt)}.`);
  flow.paragraph(
    `${comments.length} comments came in; ${answered} are answered below and ${comments.length - answered} are still open; ${closed} are closed. Comments stand word for word as they came.`,
  );
  flow.table({
    name: "Response to comments",
    size: 7.8,
    columns: [
      { heading: "No.", share: 7 },
      { heading: "Discipline", share: 11 },
      { heading: "Comment, verbatim", share: 36 },
      { heading: "Response", share: 32 },
      { heading: "Sheet, detail, page", share: 14 },
      { heading: "Rev.", share: 5 },
      { heading: "Closed by", share: 11 },
    ],
    rows: comments.map(rowOf),
  });
}

function rowOf({ number, discipline, text, reply, closed }: PlanCheckComment): string[] {
  if (reply === null) return [number, discipline ?? "", text, "Open", "", "", ""];
  const where = [
    reply.sheet,
    reply.detail === null ? "" : `detail ${reply.detail}`,
    reply.page === null ? "" : `page ${reply.page}`,
  ];
  return [
    number,
    discipline ?? "",
    text,
    `${capital(reply.form)}. ${reply.text}`,
    where.filter((part) => part !== "").join(", "),
    reply.revision,
    closed?.by.name ?? "",
  ];
}
