import { surveyFindings } from "@cornerway/engine";
import {
  containerNumberWords,
  lastInspection,
  positionOf,
  surveyDepartures,
  surveyState,
  type SurveyDeparture,
  type SurveyedContainer,
  type SurveyFinding,
  type SurveyLimits,
} from "@cornerway/schema";
import type { CalculationFlow } from "../paper/calculation-flow.ts";
import { containersIn, limitsIn } from "../found-in-record.ts";
import { day } from "../paper/words.ts";
import type { SetSource } from "../set-source.ts";

/** The containers that stand for the units of this revision: plate, damage, thickness, and where the survey says otherwise. */
export function laySurvey(flow: CalculationFlow, source: SetSource): void {
  const containers = containersIn(source.record.entries);
  const limits = limitsIn(source.record.entries);
  flow.subject("Survey of the containers");
  flow.paragraph(surveyWords(source, containers));
  if (containers.length === 0) return;
  flow.heading("Identity and plate");
  flow.table({
    name: "Plates",
    size: 7.8,
    columns: [
      ...[
        { heading: "Unit", share: 8 },
        { heading: "Number, ISO 6346", share: 18 },
        { heading: "Type", share: 8 },
        { heading: "Approval", share: 16 },
      ],
      ...[
        { heading: "Made", share: 9 },
        { heading: "Tare, kg", share: 9 },
        { heading: "Gross, kg", share: 10 },
        { heading: "Stacking, kg", share: 12 },
        { heading: "State", share: 12 },
      ],
    ],
    rows: containers.map(plateRow),
  });
  flow.heading("Damage and thickness against limits");
  flow.table({
    name: "Damage and thickness",
    size: 7.8,
    columns: [
      { heading: "Number", share: 18 },
      { heading: "Part", share: 34 },
      { heading: "Found, mm", share: 12 },
      { heading: "Limit, mm", share: 12 },
      { heading: "Outcome", share: 24 },
    ],
    rows: containers.flatMap((each) => findingRows(each, limits)),
  });
  flow.heading("Where this revision says otherwise");
  flow.table({
    name: "Survey against drawing",
    size: 8,
    columns: [
      { heading: "Number", share: 24 },
      { heading: "Survey and drawing", share: 76 },
    ],
    rows: containers.flatMap((each) =>
      surveyDepartures(source.scheme, each).map((departure) => [nameOf(each), departureWords(departure)]),
    ),
  });
  flow.heading("Limits and their sources");
  flow.table({
    name: "Limits of the survey",
    size: 7.6,
    columns: [
      { heading: "Part", share: 24 },
      { heading: "No more than", share: 14 },
      { heading: "Source", share: 62 },
    ],
    rows: limitRows(limits),
  });
}

function surveyWords({ scheme }: SetSource, containers: readonly SurveyedContainer[]): string {
  if (containers.length === 0)
    return "No container was surveyed up to the head of this set. Members, grade and condition are those of a generic container, and are verified in the field before anything is cut.";
  const placed = containers.filter((each) => surveyState(each) === "accepted" && positionOf(each) !== undefined).length;
  return `${containers.length} containers were offered. ${placed} of the ${scheme.containers.length} units have an accepted container. Limits are about fitness for transport; passing them proves little for a building. Measured thickness stands in the model and in the checks where it is drawn; where it is not, it is listed below and the results are stale.`;
}

const nameOf = ({ containerNumber }: SurveyedContainer): string => containerNumberWords(containerNumber);

function plateRow(container: SurveyedContainer): string[] {
  const plate = lastInspection(container)?.plate;
  const dash = (value: string | number | null | undefined) =>
    value === null || value === undefined ? "–" : String(value);
  return [
    ...[positionOf(container)?.tag ?? "none", nameOf(container), container.type, dash(plate?.approvalNumber)],
    ...[dash(plate?.madeIn), dash(plate?.tareKg), dash(plate?.maxGrossKg), dash(plate?.stackingKg)],
    surveyState(container),
  ];
}

function findingRows(container: SurveyedContainer, limits: SurveyLimits): string[][] {
  const inspection = lastInspection(container);
  if (inspection === undefined) return [];
  const findings = surveyFindings(inspection, limits);
  const when = `inspected ${day(`${inspection.day}T00:00:00.000Z`)} by ${inspection.by.name}`;
  if (findings.length === 0) return [[nameOf(container), `nothing: ${when}`, "", "", ""]];
  return findings.map((finding) => [
    nameOf(container),
    partOf(finding),
    mm(finding.foundUm),
    mm(finding.limitUm),
    outcomeOf(finding),
  ]);
}

const partOf = (finding: SurveyFinding): string =>
  finding.of === "damage"
    ? `${finding.member}, ${finding.place}, ${finding.kind}`
    : `${finding.member}, least thickness, assumed ${mm(finding.assumedUm)}`;

const outcomeOf = ({ beyond }: SurveyFinding): string =>
  beyond === null ? "no limit stated: the engineer judges" : beyond ? "beyond" : "within";

const mm = (um: number | null): string => (um === null ? "–" : String(Math.round(um / 10) / 100));

function departureWords(departure: SurveyDeparture): string {
  switch (departure.what) {
    case "no such unit":
      return "The unit it was assigned to is not in this revision.";
    case "other type":
      return `The unit is drawn as ${departure.drawn}; the container is ${departure.surveyed}.`;
    case "not accepted":
      return `It is assigned and ${departure.state}.`;
    case "thickness":
      return `${departure.member}: ${mm(departure.measuredUm)} mm measured; this set takes ${departure.drawnUm === null ? "the assumed thickness" : `${mm(departure.drawnUm)} mm`}.`;
    case "tare":
      return `Tare ${departure.plateKg} kg on the plate; this set takes ${departure.drawnKg === null ? "the range of the type" : `${departure.drawnKg} kg`}.`;
  }
}

const limitRows = ({ damage, leastThickness }: SurveyLimits): string[][] => [
  ...damage.map(({ member, kind, limitUm, source, certainty }) => [
    `${member}, ${kind}`,
    `${mm(limitUm)} mm`,
    `${source} (${certainty})`,
  ]),
  ["every part, least thickness", `${leastThickness.permille / 10} % of assumed`, leastThickness.source],
];
