import type { Premium } from "@cornerway/schema";
import { PageScroll } from "../../sheet/PageScroll.tsx";
import { useUnits } from "../../units/use-units.ts";
import { moneyText } from "../../wording/money.ts";
import type { NameOf } from "../../wording/name-of.ts";
import { hoursWords, itemWords, quantityWords } from "./take-off-words.ts";

/** Every line of a premium: what, how much, how long, and the money. */
export function LineTable({ premium, nameOf }: { premium: Premium; nameOf: NameOf }) {
  const units = useUnits();
  const { lines, currency } = premium;
  if (lines.length === 0) return <p>Nothing is drawn beyond the plain stack.</p>;
  return (
    <details className="premium-lines">
      <summary>{lines.length === 1 ? "The one line" : `All ${lines.length} lines`}</summary>
      <PageScroll label="Lines of the premium">
        <table>
          <thead>
            <tr>
              <th scope="col">Element</th>
              <th scope="col">What</th>
              <th scope="col" className="figure">
                How much
              </th>
              <th scope="col">Where</th>
              <th scope="col" className="figure">
                Hours
              </th>
              <th scope="col" className="figure">
                {currency}
              </th>
              <th scope="col">Rates</th>
            </tr>
          </thead>
          <tbody>
            {lines.map((line) => (
              <tr key={`${line.elementId} ${line.item} ${line.section ?? ""}`}>
                <th scope="row">{nameOf(line.elementId)}</th>
                <td>{itemWords(line)}</td>
                <td className="figure">{quantityWords(line, units)}</td>
                <td>{line.where}</td>
                <td className="figure">{line.hoursAt === null ? "" : hoursWords(line.hours)}</td>
                <td className="figure">{moneyText(line.money, currency)}</td>
                <td>{line.forShow ? "for show" : "given"}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </PageScroll>
    </details>
  );
}
