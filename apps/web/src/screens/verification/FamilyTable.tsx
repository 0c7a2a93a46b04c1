import type { ManualFamily, ManualRow } from "./manual.ts";
import { Symbols } from "./Symbols.tsx";
import { ColumnHeads } from "../../controls/ColumnHeads.tsx";
import { PageScroll } from "../../sheet/PageScroll.tsx";

/** One family of references: what departs first and open, the whole list folded. */
export function FamilyTable({ family: { title, about, rows } }: { family: ManualFamily }) {
  const apart = rows.filter(({ within }) => !within);
  return (
    <section>
      <h2 className="caption">{title}</h2>
      <p>{about}</p>
      {apart.map((row) => (
        <p key={row.id} className="verification-apart">
          <Symbols text={row.what} />: {figure(row.ours)} here, {figure(row.reference)} there.{" "}
          <Symbols text={row.departs ?? "Not explained."} />
        </p>
      ))}
      <details>
        <summary>
          {rows.length} cases, {rows.length - apart.length} within what was allowed
        </summary>
        <PageScroll label={`Cases of ${title}`}>
          <table>
            <ColumnHeads
              heads={["Case", "Source", "Certainty", { figure: "Reference" }, { figure: "Here" }, { figure: "Apart" }]}
            />
            <tbody>
              {rows.map((row) => (
                <Row key={row.id} row={row} />
              ))}
            </tbody>
          </table>
        </PageScroll>
      </details>
    </section>
  );
}

const Row = ({ row }: { row: ManualRow }) => (
  <tr>
    <td>
      <Symbols text={row.what} />
    </td>
    <td>{row.source}</td>
    <td>{row.certainty}</td>
    <td className="figure">
      {figure(row.reference)} {row.unit}
    </td>
    <td className="figure">
      {figure(row.ours)} {row.unit}
    </td>
    <td className="figure">{row.relative === null ? "" : `${(row.relative * 100).toFixed(2)} %`}</td>
  </tr>
);

/** Five figures at most, with a true minus. */
const figure = (value: number): string => String(Number(value.toPrecision(5))).replace("-", "−");
