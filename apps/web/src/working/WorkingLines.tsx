import { parseExpression } from "@cornerway/engine";
import type { CheckWorking } from "@cornerway/schema";
import { createElement } from "react";
import { PageScroll } from "../sheet/PageScroll.tsx";
import { expressionMath, numberMath, row, sign, symbolMath } from "./Formula.tsx";

type WorkingStep = CheckWorking["steps"][number];
type ValueStep = Extract<WorkingStep, { kind: "value" }>;
type ConditionStep = Extract<WorkingStep, { kind: "condition" }>;

const relations = { "<=": "≤", "<": "<", ">=": "≥", ">": ">" } as const;
const against = { "<=": ">", "<": "≥", ">=": "<", ">": "≤" } as const;

/** The lines of one calculation in their order: formula, values put in, result; the place in the clause at the right. */
export function WorkingLines({ title, steps }: { title: string; steps: readonly WorkingStep[] }) {
  return (
    <PageScroll label={`Lines of ${title}`}>
      <ol className="working-lines">
        {steps.map((step, at) => (
          <li key={at}>
            {step.kind === "value" ? <ValueLine step={step} /> : <ConditionLine step={step} />}
            {step.place === undefined ? null : <span className="working-place">{step.place}</span>}
          </li>
        ))}
      </ol>
    </PageScroll>
  );
}

function ValueLine({ step }: { step: ValueStep }) {
  const { symbol, formula, substituted, result, unit } = step;
  const plain = isPlainNumber(substituted);
  return math(
    symbolMath(symbol),
    sign("="),
    expressionMath(parseExpression(formula)),
    ...(plain ? [] : [sign("="), expressionMath(parseExpression(substituted))]),
    sign("="),
    numberMath(result),
    ...unitMath(unit),
  );
}

function ConditionLine({ step }: { step: ConditionStep }) {
  const { left, relation, right, leftValue, rightValue, holds } = step;
  const side = (text: string, value: number) => {
    const expression = parseExpression(text);
    return expression.kind === "number"
      ? [numberMath(value)]
      : [expressionMath(expression), sign("="), numberMath(value)];
  };
  return math(
    ...side(left, leftValue),
    sign(holds ? relations[relation] : against[relation]),
    ...side(right, rightValue),
  );
}

/** A formula that is one number or one symbol needs no line of its own put in. */
const isPlainNumber = (text: string) => /^[\d.e+-]+$/.test(text);

const unitMath = (unit: string) =>
  unit === "1" ? [] : [createElement("mspace", { width: "0.18em" }), createElement("mtext", null, unit)];

const math = (...children: Parameters<typeof row>) =>
  createElement("math", { display: "inline", displaystyle: "true" }, row(...children));
