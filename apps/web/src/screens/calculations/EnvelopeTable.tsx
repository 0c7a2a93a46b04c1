import type { Assessment, StrengthReport } from "@cornerway/schema";
import { PageScroll } from "../../sheet/PageScroll.tsx";
import type { NameOf } from "../../wording/name-of.ts";

interface EnvelopeTableProps {
  strength: NonNullable<Assessment["strength"]>;
  report: StrengthReport;
  nameOf: NameOf;
}

/** The assumptions every verdict is drawn from, and the runs that do not stand as drawn. */
export const EnvelopeTable = ({ strength, report, nameOf }: EnvelopeTableProps) => (
  <section>
    <h3 id="calculations-envelope">Envelope</h3>
    <p>
      A verdict that changes from one set of assumptions to another is the engineer's, and names the one it hangs on.
    </p>
    <PageScroll label="Envelope">
      <table>
        <thead>
          <tr className="caption">
            <th scope="col">Assumptions</th>
            <th scope="col" className="figure">
              Load vectors
            </th>
            <th scope="col" className="figure">
              Without equilibrium as drawn
            </th>
          </tr>
        </thead>
        <tbody>
          {strength.envelope.map(({ assumptions, runs, withoutEquilibrium }) => (
            <tr key={assumptions}>
              <th scope="row">{assumptions}</th>
              <td className="figure">{runs}</td>
              <td className="figure">{withoutEquilibrium}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </PageScroll>
    {report.withoutEquilibrium.length === 0 ? null : (
      <details>
        <summary>
          <b>What does not stand as drawn</b> · {report.withoutEquilibrium.length} ways
        </summary>
        <PageScroll label="Runs without equilibrium">
          <table>
            <tbody>
              {report.withoutEquilibrium.map(({ assumptions, words, held, first, runs }) => (
                <tr key={`${assumptions} ${words} ${held?.join(" ") ?? ""}`}>
                  <th scope="row">{runs} runs</th>
                  <td>{assumptions}</td>
                  <td>
                    {words}{" "}
                    {held === undefined
                      ? "Nothing made it stand."
                      : `It stands with ${held.map(nameOf).join(", ")} held by connections.`}
                  </td>
                  <td>first {first}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </PageScroll>
      </details>
    )}
  </section>
);
