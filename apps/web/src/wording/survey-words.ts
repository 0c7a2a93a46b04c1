import type { RecordPayload, SurveyDeparture, SurveyFinding, SurveyState } from "@cornerway/schema";
import { containerNumberWords } from "@cornerway/schema";

export const numberWords = containerNumberWords;

export const stateWords: Record<SurveyState, string> = {
  offered: "offered, not inspected yet",
  inspected: "inspected, waits for the engineer",
  accepted: "accepted",
  repair: "to be repaired",
  rejected: "rejected",
};

/** What one step on a container says in the record. */
export function surveyStepSentence({
  containerNumber,
  step,
}: Extract<RecordPayload, { kind: "container followed" }>): string {
  const name = numberWords(containerNumber);
  switch (step.step) {
    case "inspected":
      return `${name} inspected on ${step.day}: ${counted(step.damages.length, "damage")}, ${counted(step.thicknesses.length, "thickness", "thicknesses")} measured.`;
    case "judged":
      return `${name} ${step.outcome === "repair" ? "is to be repaired" : step.outcome}${step.text === null ? "." : `: ${step.text}`}`;
    case "assigned":
      return `${name} assigned to ${step.tag}.`;
    case "released":
      return `${name} released from its place: ${step.text}`;
  }
}

const counted = (count: number, one: string, many = `${one}s`): string =>
  count === 0 ? `no ${one}` : `${count} ${count === 1 ? one : many}`;

export const damageWords = { bent: "bent", torn: "torn or cracked" } as const;

/** One finding beside its limit. `mm` writes a length. */
export function findingWords(finding: SurveyFinding, mm: (lengthUm: number) => string): string {
  const found = mm(finding.foundUm);
  if (finding.of === "damage") {
    const { member, place, kind, limitUm } = finding;
    const limit = limitUm === null ? "no limit is stated: the engineer judges" : `limit ${mm(limitUm)}`;
    return `${member}, ${place}: ${damageWords[kind]} ${found}, ${limit}`;
  }
  const { member, assumedUm, limitUm } = finding;
  if (assumedUm === null || limitUm === null) return `${member}: ${found} thick; nothing is assumed of it`;
  return `${member}: ${found} thick, assumed ${mm(assumedUm)}, at least ${mm(limitUm)}`;
}

/** Where the newest revision says otherwise than the survey. */
export function departureWords(departure: SurveyDeparture, mm: (lengthUm: number) => string): string {
  switch (departure.what) {
    case "no such unit":
      return "the unit it was assigned to is not in this revision";
    case "other type":
      return `the unit is drawn as ${departure.drawn}; the container is ${departure.surveyed}`;
    case "not accepted":
      return `it is assigned and ${stateWords[departure.state]}`;
    case "thickness": {
      const { member, drawnUm, measuredUm } = departure;
      return `${member}: ${mm(measuredUm)} measured, judged with ${drawnUm === null ? "what is assumed" : mm(drawnUm)}`;
    }
    case "tare": {
      const { drawnKg, plateKg } = departure;
      return `tare ${plateKg} kg on the plate, judged with ${drawnKg === null ? "the range of its type" : `${drawnKg} kg`}`;
    }
  }
}
