import { elementById, strengthFacts, worstVerdict, type Assessment, type Mark, type Scheme } from "@cornerway/schema";

const strengthKinds: ReadonlySet<string> = new Set(strengthFacts.map((fact) => fact.shape.kind.value));

export const isOfStrength = ({ fact }: Mark): boolean => strengthKinds.has(fact.kind);

/** The load path's answer while strength is waited for: nothing is said to work yet. */
export const awaitingStrength = (assessment: Assessment): Assessment => ({
  ...assessment,
  verdict: worstVerdict([assessment.verdict, "not checked"]),
  units: assessment.units.map((unit) => ({ ...unit, verdict: worstVerdict([unit.verdict, "not checked"]) })),
});

/** What strength said of an earlier scheme, where it still concerns something drawn. */
export const staleMarks = (earlier: Assessment | null, scheme: Scheme): Mark[] =>
  (earlier?.marks ?? []).filter(
    (mark) => isOfStrength(mark) && mark.elements.every((id) => elementById(scheme, id) !== undefined),
  );
