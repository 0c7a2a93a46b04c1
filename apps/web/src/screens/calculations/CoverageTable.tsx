import type { CoverageRow } from "@cornerway/schema";
import { PageScroll } from "../../sheet/PageScroll.tsx";

/** What can go wrong, for which parts it is judged, and what no strength run makes. */
export function CoverageTable({ rows }: { rows: readonly CoverageRow[] }) {
  const checks = [...new Set(rows.map(({ check }) => check))];
  const left = rows.filter(({ run }) => !run).length;
  return (
    <section>
      <h3 id="calculations-coverage">Coverage</h3>
      <p>
        {rows.length - left} of {rows.length} pairs of limit state and part are judged. What is not run is answered for
        by no verdict; what is not covered needs the engineer where it acts.
      </p>
      <PageScroll label="Coverage, limit state by limit state">
        <table className="calculations-coverage">
          <thead>
            <tr className="caption">
              <th scope="col">Limit state</th>
              <th scope="col">Checked</th>
              <th scope="col">Bounded</th>
              <th scope="col">Not run, or not covered</th>
              <th scope="col">Why</th>
            </tr>
          </thead>
          <tbody>
            {checks.map((check) => (
              <Line key={check} check={check} rows={rows.filter((row) => row.check === check)} />
            ))}
          </tbody>
        </table>
      </PageScroll>
    </section>
  );
}

function Line({ check, rows }: { check: string; rows: readonly CoverageRow[] }) {
  const parts = (is: (row: CoverageRow) => boolean) =>
    rows
      .filter(is)
      .map(({ part }) => part)
      .join(", ");
  return (
    <tr>
      <th scope="row">{check}</th>
      <td>{parts(({ run, coverage }) => run && coverage === "checked")}</td>
      <td>{parts(({ run, coverage }) => run && coverage === "bounded")}</td>
      <td>{parts(({ run }) => !run)}</td>
      <td>{rows.find(({ why }) => why !== undefined)?.why}</td>
    </tr>
  );
}
