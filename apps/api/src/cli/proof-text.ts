import { lockSentence } from "@cornerway/engine";
import type { Assessment, CheckResult, StrengthProof } from "@cornerway/schema";

/** What stands behind strength as lines of text: envelope, what governs each part, loads, what is assumed and not judged. */
export function proofLines(
  strength: NonNullable<Assessment["strength"]>,
  { report }: StrengthProof,
  tag: (id: string) => string,
): string[] {
  return [
    "ENVELOPE",
    ...strength.envelope.map(
      ({ assumptions, runs, withoutEquilibrium }) =>
        `  ${assumptions}: ${runs} runs, ${withoutEquilibrium} without equilibrium as drawn`,
    ),
    "",
    "WHAT GOVERNS EACH PART",
    ...report.results.map((result) => `  ${resultLine(result, tag)}`),
    "",
    "LOADS OF THE PLACE",
    ...report.loads.map(
      ({ title, symbol, value, unit, clause, certainty }) =>
        `  ${title}: ${symbol} = ${Number(value.toPrecision(4))} ${unit} (${clause.document} ${clause.place}, ${certainty})`,
    ),
    "",
    "ASSUMED",
    ...strength.assumed.map((what) => `  ${what}`),
    "",
    "NOT JUDGED",
    ...strength.notJudged.map((what) => `  ${what}`),
    "",
  ];
}

function resultLine(result: CheckResult, tag: (id: string) => string): string {
  const { ownerId, part, place, check, utilisation, refused, ifProved, coverage, certainty, run } = result;
  const stock = part === "lock" ? `. ${lockSentence}` : "";
  const use = utilisation === null ? `not stated (${refused ?? ""})` : utilisation.toFixed(2);
  const proved = ifProved === undefined ? "" : `, if proved ${ifProved.toFixed(2)}`;
  const held = result.held.length === 0 ? "" : `; only with ${result.held.map(tag).join(", ")} held by connections`;
  return `${tag(ownerId)} ${part} ${place}: ${check} ${use}${proved} (${coverage}, ${certainty ?? "no working"}) ${result.assumptions}; ${run}${held}${stock}`;
}
