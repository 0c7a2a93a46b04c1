import type { OptionNow, UnitSystem, Verdict } from "@cornerway/schema";
import { VerdictSymbol } from "../../look/VerdictSymbol.tsx";
import { verdictClass, verdictWords } from "../../look/verdict-class.ts";
import { ForShow } from "../../prices/ForShow.tsx";
import { printQuantity, unitOf } from "../../units/quantity.ts";
import { useUnits } from "../../units/use-units.ts";
import { moneyText } from "../../wording/money.ts";

/** What is compared: verdict, premium, steel. */
export function OptionFacts({ option: { answer, price, containers } }: { option: OptionNow }) {
  const units = useUnits();
  const verdict: Verdict = answer.state === "done" ? answer.verdict : "not checked";
  return (
    <>
      <p className={verdictClass(verdict)}>
        <VerdictSymbol verdict={verdict} sizePx={16} /> {verdictWords(verdict)}
      </p>
      <p className="lettered">{answerWords(answer)}</p>
      <dl className="option-facts">
        <dt>Premium</dt>
        <dd>
          {moneyText(price.total, price.currency)} <ForShow forShow={price.forShow} />
          {price.standsApart ? <span>, and what stands apart</span> : null}
          {answer.state === "done" ? null : <span> as drawn: what it leaves open is not known</span>}
        </dd>
        <dt>Steel</dt>
        <dd>{steelText(price.steelKg, units)}</dd>
        <dt>Containers</dt>
        <dd>{containers}</dd>
      </dl>
    </>
  );
}

/** On which loads it was judged, or why it is not. */
export function answerWords(answer: OptionNow["answer"]): string {
  switch (answer.state) {
    case "waiting":
      return "Being checked.";
    case "failed":
      return `It could not be checked: ${answer.why}.`;
    case "unreadable":
      return "Checked by a newer engine; its answer cannot be read here.";
    case "done":
      return `Screening by ${answer.scope}.`;
  }
}

const gramsPerKg = 1000;

/** Steel in whole kilograms, or pounds, as it is written on drawings. */
const steelText = (kg: number, units: UnitSystem): string =>
  `${grouped(printQuantity("mass", kg * gramsPerKg, units))} ${unitOf("mass", units)}`;

/** Thousands apart, as in prose. */
const grouped = (figures: string): string => figures.replace(/\B(?=(\d{3})+$)/g, ",");
