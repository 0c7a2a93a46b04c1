import { lockSentence } from "@cornerway/engine";
import type { CheckResult, CheckWorking } from "@cornerway/schema";
import type { Derived } from "../derived.ts";
import type { CalculationFlow } from "../paper/calculation-flow.ts";
import type { SetSource } from "../set-source.ts";
import { significant } from "./words.ts";
import { WorkingSheets } from "./working-sheet.ts";

/** Checks in full at most: beyond, the table tells them and the service keeps their workings. */
const mostInFull = 30;

/** Member checks, envelope, uplift and stability where strength was run; where it was not, that and nothing else. */
export function layStrength(flow: CalculationFlow, source: SetSource, derived: Derived): void {
  const { proof, assessment } = source;
  flow.subject("Strength");
  if (proof === null || assessment.strength === undefined) {
    flow.paragraph(
      "Strength has not been checked for this revision. No member, connection, sheet, pad or anchor in this set has been shown to be adequate; stability, drift and uplift under wind and earthquake have not been worked out either.",
    );
    for (const why of assessment.strengthRefused ?? []) flow.paragraph(`It could not be: ${why}`);
    flow.paragraph("What would be checked, and what would still not be, is in the coverage table.");
    return;
  }
  const { results, withoutEquilibrium } = proof.report;
  const { vectors, checks, envelope } = assessment.strength;
  flow.paragraph(`${checks} checks over ${vectors} load vectors. Screening: an engineer judges it.`);
  flow.heading("Envelope: under which assumptions it was solved");
  flow.table({
    name: "Envelope",
    columns: [
      { heading: "Assumptions", share: 60 },
      { heading: "Runs", share: 16, right: true },
      { heading: "Without equilibrium", share: 22, right: true },
    ],
    rows: envelope.map(({ assumptions, runs, withoutEquilibrium: none }) => [assumptions, String(runs), String(none)]),
  });
  laySummary(flow, results, derived);
  layStability(flow, withoutEquilibrium, derived);
  layFull(flow, results, new Map(proof.workings.map(({ id, working }) => [id, working])), derived);
}

const worst = (a: CheckResult, b: CheckResult): number => (b.utilisation ?? Infinity) - (a.utilisation ?? Infinity);

function laySummary(flow: CalculationFlow, results: readonly CheckResult[], derived: Derived): void {
  flow.heading("Every part with its governing check, worst first");
  flow.paragraph(
    "Utilisation is the greatest over all runs that stand as drawn; least and most are over the assumptions solved. Where there is none, a strength that acts cannot be stated and the engineer has to.",
  );
  flow.paragraph(
    "If proved: the same check at a yield of 343 MPa, which counts only once a record of the steel is attached.",
  );
  if (results.some(({ part }) => part === "lock")) flow.paragraph(lockSentence);
  flow.table({
    name: "Member checks",
    size: 7.2,
    columns: [
      { heading: "Of", share: 6 },
      { heading: "Part", share: 18 },
      { heading: "Place", share: 19 },
      { heading: "Check", share: 17 },
      { heading: "Util.", share: 7, right: true },
      { heading: "If proved", share: 8, right: true },
      { heading: "Least to most", share: 12, right: true },
      { heading: "Governing run", share: 25 },
    ],
    rows: results
      .toSorted(worst)
      .map((result) => [
        derived.tag(result.ownerId),
        result.part,
        derived.tagged(result.place),
        result.check,
        result.utilisation === null ? `none: ${result.refused ?? ""}` : result.utilisation.toFixed(2),
        result.ifProved?.toFixed(2) ?? "",
        spread(result),
        derived.tagged(result.run),
      ]),
  });
}

function spread({ envelope }: CheckResult): string {
  const known = envelope.flatMap(({ utilisation }) => (utilisation === null ? [] : [utilisation]));
  return known.length === 0 ? "" : `${Math.min(...known).toFixed(2)} to ${Math.max(...known).toFixed(2)}`;
}

function layStability(
  flow: CalculationFlow,
  without: NonNullable<SetSource["proof"]>["report"]["withoutEquilibrium"],
  { tag, tagged }: Derived,
): void {
  flow.heading("Stability and uplift");
  if (without.length === 0) {
    flow.paragraph(
      "Every run stands as drawn: nothing slides, turns or lifts free under any combination solved. Where bearings lift or slide is told by the marks.",
    );
    return;
  }
  flow.table({
    name: "Runs that do not stand as drawn",
    size: 7.6,
    columns: [
      { heading: "What moves", share: 44 },
      { heading: "Had to be held", share: 22 },
      { heading: "Runs", share: 8, right: true },
      { heading: "First run", share: 30 },
    ],
    rows: without.map(({ words, held, runs, first }) => [
      tagged(words),
      held === undefined ? "nothing made it stand" : held.map(tag).join(", "),
      String(runs),
      tagged(first),
    ]),
  });
}

/** One in full for each family of parts, then the fullest of all. */
function layFull(
  flow: CalculationFlow,
  results: readonly CheckResult[],
  workings: ReadonlyMap<string, CheckWorking>,
  { tag, tagged }: Derived,
): void {
  const ordered = results.toSorted(worst).filter(({ id }) => workings.has(id));
  const families = ordered.filter(
    ({ part, check }, at) => ordered.findIndex((each) => each.part === part && each.check === check) === at,
  );
  const shown = [...new Set([...families, ...ordered])].slice(0, mostInFull);
  flow.heading("Checks in full, worst first");
  flow.paragraph(
    `${shown.length} of ${ordered.length} checks that have a working: the fullest of each kind of part and check first. They can be redone by hand from the inputs they list; the others are kept by the service with the same form.`,
  );
  const sheets = new WorkingSheets(flow);
  for (const [at, result] of shown.entries()) {
    const working = workings.get(result.id);
    if (working === undefined) continue;
    flow.gap(6);
    flow.paragraph(
      `${tag(result.ownerId)}: ${result.part}, ${tagged(result.place)}. ${tagged(result.run)}; ${result.assumptions}.${result.utilisation === null ? "" : ` Utilisation ${significant(result.utilisation)}.`}`,
      { size: 8.4 },
    );
    sheets.lay(working, `M${at + 1}`);
  }
}
