import type { Premium, Scheme } from "@cornerway/schema";
import { apartWords, uncheckedWords } from "../../prices/apart-words.ts";
import { ForShow } from "../../prices/ForShow.tsx";
import { PremiumBars } from "../../prices/PremiumBars.tsx";
import { premiumGroups } from "../../prices/premium-groups.ts";
import { moneyText } from "../../wording/money.ts";
import { namesIn } from "../../wording/name-of.ts";
import { LineTable } from "./LineTable.tsx";
import { MarkTable } from "./MarkTable.tsx";
import { QuantityTable } from "./QuantityTable.tsx";
import { UnitTable } from "./UnitTable.tsx";

/** Everything a premium is made of. */
export function PremiumItems({ premium, scheme }: { premium: Premium; scheme: Scheme }) {
  const nameOf = namesIn(scheme);
  const words = [apartWords(premium), uncheckedWords(premium)].filter((each) => each !== undefined);
  return (
    <>
      <div className="page-columns">
        <section>
          <h2 className="caption">Of what is drawn</h2>
          <p className="price-total">{moneyText(premium.total, premium.currency)}</p>
          <ForShow forShow={premium.forShow} />
          <PremiumBars groups={premiumGroups(premium, scheme)} currency={premium.currency} />
          {words.map((each) => (
            <p key={each}>{each}</p>
          ))}
          {premium.notPriced.length === 0 ? null : (
            <p>No price for {premium.notPriced.map(nameOf).join(", ")}: the section is not known here.</p>
          )}
        </section>
        <QuantityTable quantities={premium.quantities} />
        <UnitTable premium={premium} nameOf={nameOf} />
      </div>
      <MarkTable premium={premium} scheme={scheme} />
      <LineTable premium={premium} nameOf={nameOf} />
    </>
  );
}
