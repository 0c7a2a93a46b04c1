import type { NoteComment } from "./contract.ts";

/** What people wrote on a note: italic, in their own colour. Settled comments fold to their count and stay findable. */
export function NoteComments({ comments }: { comments: readonly NoteComment[] }) {
  const open = comments.filter(({ settled }) => !settled);
  const settled = comments.filter(({ settled: done }) => done);
  return (
    <>
      {open.map((comment) => (
        <Comment key={comment.id} comment={comment} />
      ))}
      {settled.length > 0 && (
        <details className="settled">
          <summary>{settled.length} settled</summary>
          {settled.map((comment) => (
            <Comment key={comment.id} comment={comment} />
          ))}
        </details>
      )}
    </>
  );
}

function Comment({ comment: { text, authorName, role, at } }: { comment: NoteComment }) {
  return (
    <blockquote className={`comment hand-${role}`}>
      <p>{text}</p>
      <footer>
        {authorName}, {at}
      </footer>
    </blockquote>
  );
}
