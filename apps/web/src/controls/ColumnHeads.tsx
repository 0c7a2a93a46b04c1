/** The head of a column: its words, or words over figures, or words that only a screen reader is told. */
export type ColumnHead = string | { figure: string } | { unseen: string };

/** The head row of a table. */
export function ColumnHeads({ heads }: { heads: readonly ColumnHead[] }) {
  return (
    <thead>
      <tr className="caption">
        {heads.map((head) => (
          <Head key={JSON.stringify(head)} head={head} />
        ))}
      </tr>
    </thead>
  );
}

function Head({ head }: { head: ColumnHead }) {
  if (typeof head === "string") return <th scope="col">{head}</th>;
  if ("unseen" in head)
    return (
      <th scope="col">
        <span className="unseen">{head.unseen}</span>
      </th>
    );
  return (
    <th scope="col" className="figure">
      {head.figure}
    </th>
  );
}
