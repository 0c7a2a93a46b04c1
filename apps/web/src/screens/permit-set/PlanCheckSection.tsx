import { Ruled } from "../../controls/Ruled.tsx";
import { Trouble } from "../../controls/Trouble.tsx";
import { registerFile, useRegister } from "../../data/plan-check.ts";
import { useRoom, whyNot } from "../../room/room-context.ts";
import { BringInForm } from "./BringInForm.tsx";
import { CommentLines } from "./CommentLines.tsx";

/** What the authority asks, word for word, and what is answered; as many go out as came in. */
export function PlanCheckSection() {
  const { project } = useRoom();
  const register = useRegister(project.id);
  if (register.isPending) return <Ruled label="Fetching the register" />;
  if (register.data === undefined) return <Trouble error={register.error} again={() => void register.refetch()} />;
  const { comments, count } = register.data;
  return (
    <section aria-labelledby="plan-check">
      <h2 className="caption" id="plan-check">
        Plan check
      </h2>
      <p>
        {count.in} comments came in: {count.open} open, {count.answered} answered, {count.closed} closed. The next set
        prints the letter that answers them.
      </p>
      {comments.length === 0 ? null : (
        <a className="command command-quiet" href={registerFile(project.id)} download>
          Take the register as a table
        </a>
      )}
      <ol className="comment-list">
        {comments.map((comment) => (
          <CommentLines key={comment.id} comment={comment} />
        ))}
      </ol>
      {whyNot(project, "keep-comments") === undefined ? <BringInForm /> : null}
    </section>
  );
}
