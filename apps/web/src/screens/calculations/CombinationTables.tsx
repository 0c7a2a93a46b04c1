import type { StrengthReport } from "@cornerway/schema";
import { ColumnHeads } from "../../controls/ColumnHeads.tsx";
import { PageScroll } from "../../sheet/PageScroll.tsx";

const levelWords = {
  strength: "At strength level, for steel and concrete",
  allowable: "At allowable level, for the ground",
} as const;

/** Every combination solved, with how many load vectors it was tried by. */
export const CombinationTables = ({ report: { combinations } }: { report: StrengthReport }) => (
  <section>
    <h3 id="calculations-combinations">Combinations</h3>
    {(["strength", "allowable"] as const).map((level) => {
      const own = combinations.filter((one) => one.level === level);
      return (
        <details key={level}>
          <summary>
            <b>{levelWords[level]}</b> · {own.length} combinations
          </summary>
          <PageScroll label={levelWords[level]}>
            <table>
              <ColumnHeads heads={["Combination", { figure: "Load vectors" }, "Clause"]} />
              <tbody>
                {own.map(({ text, runs, clause }) => (
                  <tr key={`${text} ${clause.place}`}>
                    <th scope="row">{text}</th>
                    <td className="figure">{runs}</td>
                    <td>
                      {clause.document} {clause.place}
                    </td>
                  </tr>
                ))}
              </tbody>
            </table>
          </PageScroll>
        </details>
      );
    })}
  </section>
);
