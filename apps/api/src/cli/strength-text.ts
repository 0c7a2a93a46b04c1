import {
  lockSentence,
  type ElementResult,
  type HoldNeeded,
  type Strength,
  type StrengthReason,
} from "@cornerway/engine";
import { cautionLine, cautions, elementNames, kilonewtonsExact, verdictHeadings, type Scheme } from "@cornerway/schema";

type Stated = Extract<Strength, { accepted: true }>;

/** What strength says as text for people: the envelope, units with their reasons, what governs each part, cautions. */
export function strengthText(scheme: Scheme, answer: Stated): string {
  const names = elementNames(scheme);
  const tag = (id: string): string => names.get(id) ?? id;
  return lines([
    cautionLine,
    "",
    "Strength, screening only. Forces factored unless said.",
    "",
    "ENVELOPE",
    ...answer.envelope.map(
      ({ assumptions, runs, withoutEquilibrium, worstResidual }) =>
        `  ${assumptions}: ${runs} runs, ${withoutEquilibrium} without equilibrium as drawn, residual ${worstResidual.toExponential(1)}`,
    ),
    "",
    "UNITS",
    ...answer.units.flatMap(({ unitId, verdict, reasons }) => [
      `  ${tag(unitId)}  ${verdictHeadings[verdict]}`,
      ...reasons.map((reason) => `    ${reasonText(reason)}`),
    ]),
    "",
    "WHAT GOVERNS",
    ...answer.results.map((result) => `  ${resultText(result, tag)}`),
    "",
    "WHAT NOTHING DRAWN HOLDS",
    ...answer.holds.map((hold) => `  ${holdText(hold, tag)}`),
    "",
    "ASSUMED",
    ...answer.assumed.map((what) => `  ${what}`),
    "",
    "NOT JUDGED",
    ...answer.notJudged.map((what) => `  ${what}`),
    "",
    "CAUTIONS",
    ...cautions.map((caution) => `  ${caution}`),
  ]);
}

function resultText(result: ElementResult, tag: (id: string) => string): string {
  const { ownerId, element, place, limitState, utilisation, refused, covered, certainty } = result;
  const use = utilisation === undefined ? `not stated (${refused ?? ""})` : utilisation.toFixed(2);
  const proved = result.ifProved === undefined ? "" : `, if proved ${result.ifProved.toFixed(2)}`;
  const held = result.held.length === 0 ? "" : `; only with ${result.held.map(tag).join(", ")} held by connections`;
  const pad =
    result.wouldDo === undefined
      ? ""
      : `; a pad ${metres(result.wouldDo.sideMm)} by ${metres(result.wouldDo.sideMm)}, ${metres(result.wouldDo.depthMm)} deep, would do`;
  const stock = element === "lock" ? `. ${lockSentence}` : "";
  return `${tag(ownerId)} ${element} ${place}: ${limitState} ${use}${proved} (${covered}, ${certainty ?? "no working"}) ${result.assumptions}; ${result.governingRun}${held}${pad}${stock}`;
}

const metres = (mm: number): string => `${(mm / 1000).toFixed(1)} m`;

const holdText = (hold: HoldNeeded, tag: (id: string) => string): string =>
  `${tag(hold.ownerId)} at ${hold.places.join(", ")}: ${needText(hold)}`;

const needText = (hold: HoldNeeded): string =>
  hold.kind === "uplift"
    ? `a hold-down or lock that pulls ${kilonewtonsExact(hold.forceN / 1000)}`
    : `locks or made connections against ${kilonewtonsExact(hold.forceN / 1000)} sideways, friction ${kilonewtonsExact(hold.frictionN / 1000)}`;

function reasonText(reason: StrengthReason): string {
  switch (reason.kind) {
    case "over":
      return `${reason.partId}: ${reason.utilisation.toFixed(2)} of its strength under every assumption`;
    case "beyond its bound":
      return `${reason.partId}: ${reason.utilisation.toFixed(2)} of its safe bound${reason.upperBound === undefined ? "" : `, ${reason.upperBound.toFixed(2)} of the upper one`}`;
    case "assumption decides":
      return `${reason.partId}: within its strength with ${reason.least}, beyond it with ${reason.most}`;
    case "over if held down":
      return `${reason.partId}: ${reason.utilisation?.toFixed(2) ?? "beyond what can be stated"} of its strength once connections hold what lifts`;
    case "strength refused":
      return `${reason.partId}: no strength can be stated, ${reason.why}`;
    case "not covered":
      return `${reason.limitState} of the ${reason.element} is not covered: ${reason.why}`;
    case "moves":
      return `moves in ${reason.runs} of ${reason.of} runs, first ${reason.first}. ${reason.words}`;
    case "runs without equilibrium":
      return `${reason.runs} of ${reason.of} runs have no equilibrium: another unit moves`;
    case "hold not drawn":
      return `nothing drawn resists at ${reason.hold.places.join(", ")}: needs ${needText(reason.hold)} (${reason.hold.run})`;
    case "wind outside its limits":
      return `wind is outside the procedure's limits (${reason.limits.join(", ")}); the enclosing box stands in`;
    case "sheet walls otherwise":
      return `sheet walls are ${reason.rule} by the engineer: his own system is not drawn, they are counted here`;
    case "no lateral wall": {
      const { way, storey, wholeStorey, walls } = reason.gap;
      const why = walls.map(({ face, fails }) => `${face}: ${fails.join(", ")}`).join("; ");
      return `no wall counts ${way}${wholeStorey ? `, nor of any unit in storey ${storey}` : ""} (${why})`;
    }
    case "seismic system not drawn":
      return `the system named along ${reason.axis} is not drawn: frames and braces are no part of the model`;
    case "simplified path closed":
      return `the path for a single unit is closed along ${reason.axis}: not ${reason.fails.join(", ")}`;
    case "irregular":
      return `irregular against earthquakes: ${reason.irregularity.kind}, ${reason.irregularity.consequence}`;
    case "seismic system refused":
      return `no earthquake system is permitted along ${reason.axis}`;
    case "left out of the model":
      return `the model leaves out: ${reason.note.kind}`;
  }
}

const lines = (text: readonly string[]): string => `${text.join("\n")}\n`;
