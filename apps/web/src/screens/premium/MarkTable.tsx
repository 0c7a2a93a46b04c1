import type { Premium, Scheme } from "@cornerway/schema";
import { VerdictSymbol } from "../../look/VerdictSymbol.tsx";
import { verdictClass, verdictWords } from "../../look/verdict-class.ts";
import { PageScroll } from "../../sheet/PageScroll.tsx";
import { moneyText } from "../../wording/money.ts";
import { namesIn } from "../../wording/name-of.ts";

/** What is drawn for each mark; those that stand apart come first, without a price. */
export function MarkTable({ premium, scheme }: { premium: Premium; scheme: Scheme }) {
  const nameOf = namesIn(scheme);
  const { marks, currency } = premium;
  if (marks.length === 0) return null;
  const apart = marks.filter(({ money }) => money === null);
  const priced = marks.filter(({ money }) => money !== null && money !== 0);
  return (
    <section>
      <h2 className="caption">By mark</h2>
      <p>One part may serve several marks, so these do not add up to the total.</p>
      <PageScroll label="Premium by mark">
        <table>
          <tbody>
            {[...apart, ...priced].map(({ markId, verdict, money }) => (
              <tr key={markId}>
                <th scope="row">{markName(markId, nameOf)}</th>
                <td className={verdictClass(verdict)}>
                  <VerdictSymbol verdict={verdict} sizePx={13} /> {verdictWords(verdict)}
                </td>
                <td className="figure">{money === null ? "stands apart, no price" : moneyText(money, currency)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </PageScroll>
    </section>
  );
}

/** The identity of a mark is its kind and the ids of its elements: "wall-out:o1,f1". */
function markName(markId: string, nameOf: (id: string) => string): string {
  const [kind = "", ids = ""] = markId.split(":", 2);
  const names = ids
    .split("+")
    .filter((id) => id !== "")
    .map(nameOf);
  return `${names.join(", ")}: ${kind.replaceAll("-", " ")}`;
}
