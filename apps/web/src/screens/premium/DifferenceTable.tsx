import type { PremiumDifference } from "@cornerway/schema";
import { ForShow } from "../../prices/ForShow.tsx";
import { PageScroll } from "../../sheet/PageScroll.tsx";
import { useUnits } from "../../units/use-units.ts";
import { moneyText } from "../../wording/money.ts";
import type { NameOf } from "../../wording/name-of.ts";
import { itemWords, quantityWords } from "./take-off-words.ts";

/** The lines that are not the same in two revisions; their money together is the difference of the totals. */
export function DifferenceTable({ difference, nameOf }: { difference: PremiumDifference; nameOf: NameOf }) {
  const units = useUnits();
  const { before, after, lines, currency, totalBefore, totalAfter, forShow } = difference;
  const sum = `From ${moneyText(totalBefore, currency)} to ${moneyText(totalAfter, currency)}`;
  if (lines.length === 0) return <p>{sum}. Nothing that is paid for has changed.</p>;
  return (
    <>
      <p>
        {sum}: {moneyText(totalAfter - totalBefore, currency)}. Both by the cost book as it is now.{" "}
        <ForShow forShow={forShow} />
      </p>
      <PageScroll label={`What changed from revision ${before} to ${after}`}>
        <table>
          <thead>
            <tr>
              <th scope="col">Element</th>
              <th scope="col">What</th>
              <th scope="col" className="figure">
                In {before}
              </th>
              <th scope="col" className="figure">
                In {after}
              </th>
              <th scope="col" className="figure">
                {currency}
              </th>
            </tr>
          </thead>
          <tbody>
            {lines.map((line) => (
              <tr key={`${line.elementId} ${line.item} ${line.section ?? ""}`}>
                <th scope="row">{nameOf(line.elementId)}</th>
                <td>{itemWords(line)}</td>
                <td className="figure">{line.before === null ? "none" : quantityWords(line.before, units)}</td>
                <td className="figure">{line.after === null ? "none" : quantityWords(line.after, units)}</td>
                <td className="figure">{moneyText(line.money, currency)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </PageScroll>
    </>
  );
}
