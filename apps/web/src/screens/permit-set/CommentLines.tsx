import type { PlanCheckComment } from "@cornerway/schema";
import { dayAndTimeOf } from "../../controls/calendar.ts";
import { Command } from "../../controls/Command.tsx";
import { Refused } from "../../controls/Refused.tsx";
import { useCommentStep } from "../../data/plan-check.ts";
import { useRoom, whyNot } from "../../room/room-context.ts";
import { newUuid } from "../../tools/new-uuid.ts";
import { ReplyForm } from "./ReplyForm.tsx";

/** One comment word for word, who sees to it, what was answered, and what may be done about it. */
export function CommentLines({ comment }: { comment: PlanCheckComment }) {
  const { project, me } = useRoom();
  const step = useCommentStep(project.id, comment.id);
  const { number, discipline, text, about, state, reply, closed, assignedTo } = comment;
  const answers = state === "open" && whyNot(project, "answer-comment") === undefined;
  const closes = state === "answered" && whyNot(project, "close-comment") === undefined && me.byLink !== true;
  return (
    <li value={comment.order}>
      <h3>
        {number}
        {discipline === null ? "" : `, ${discipline}`}
        {about === null ? "" : `, on ${about}`} · {state}
      </h3>
      <blockquote>{text}</blockquote>
      {assignedTo === null ? null : <p>{assignedTo.name} sees to it.</p>}
      {reply === null ? null : (
        <p className="comment-reply">
          <b>{replyWords[reply.form]}</b> {reply.text} Revision {reply.revision}, sheet {reply.sheet}
          {reply.detail === null ? "" : `, detail ${reply.detail}`}
          {reply.page === null ? "" : `, page ${reply.page}`}. {reply.by.name}, {dayAndTimeOf(reply.at)}.
        </p>
      )}
      {closed === null ? null : (
        <p>
          Closed by {closed.by.name}, {dayAndTimeOf(closed.at)}.
        </p>
      )}
      {whyNot(project, "keep-comments") === undefined && state === "open" ? (
        <AssignField comment={comment} onAssign={(to) => step.mutate({ id: newUuid(), step: "assigned", to })} />
      ) : null}
      {answers ? <ReplyForm comment={comment} /> : null}
      {closes ? (
        <Command quiet onPress={() => step.mutate({ id: newUuid(), step: "closed" })}>
          {`Close comment ${number}`}
        </Command>
      ) : null}
      <Refused error={step.error} />
    </li>
  );
}

const replyWords = { done: "Done.", explained: "Explained.", "not applicable": "Not applicable." } as const;

function AssignField({ comment, onAssign }: { comment: PlanCheckComment; onAssign: (personId: string) => void }) {
  const { project } = useRoom();
  return (
    <label className="field">
      <span>Who sees to it</span>
      <select value={comment.assignedTo?.id ?? ""} onChange={({ target }) => onAssign(target.value)}>
        <option value="" disabled>
          nobody yet
        </option>
        {project.members.map(({ id, name }) => (
          <option key={id} value={id}>
            {name}
          </option>
        ))}
      </select>
    </label>
  );
}
