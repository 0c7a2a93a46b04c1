import type { Premium } from "@cornerway/schema";
import { moneyText } from "../../wording/money.ts";
import type { NameOf } from "../../wording/name-of.ts";

/** The premium by container; together the total. */
export function UnitTable({ premium, nameOf }: { premium: Premium; nameOf: NameOf }) {
  const { units, currency, total } = premium;
  return (
    <section>
      <h2 className="caption">By container</h2>
      <table>
        <tbody>
          {units
            .toSorted((a, b) => b.money - a.money)
            .map(({ containerId, money }) => (
              <tr key={containerId}>
                <th scope="row">{containerId === null ? "What stands by itself" : nameOf(containerId)}</th>
                <td className="figure">{moneyText(money, currency)}</td>
              </tr>
            ))}
          <tr>
            <th scope="row">Together</th>
            <td className="figure">{moneyText(total, currency)}</td>
          </tr>
        </tbody>
      </table>
    </section>
  );
}
