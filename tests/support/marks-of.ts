import type { Assessment, FactOf, MarkKind } from "@cornerway/schema";

/** The facts of one kind in an assessment, each with its verdict and elements. */
export const factsOf = <K extends MarkKind>(assessment: Assessment, kind: K) =>
  assessment.marks.flatMap(({ fact, verdict, elements, id }) =>
    isOf(fact, kind) ? [{ ...fact, verdict, elements, id }] : [],
  );

const isOf = <K extends MarkKind>(fact: { kind: MarkKind }, kind: K): fact is FactOf<K> => fact.kind === kind;

/** The verdict of one unit. */
export const verdictOf = (assessment: Assessment, unitId: string) =>
  assessment.units.find(({ id }) => id === unitId)?.verdict;

/** A bearing by its id. */
export const bearingOf = (assessment: Assessment, id: string) =>
  assessment.bearings.find((bearing) => bearing.id === id);

/** The sum of what a pad, a post on bare ground or a unit on bare ground gives back, kN. */
export const reactionOf = (assessment: Assessment, elementId: string) =>
  assessment.statics.reactions
    .filter((reaction) => reaction.elementId === elementId)
    .reduce((sum, { forceKn }) => sum + forceKn, 0);
