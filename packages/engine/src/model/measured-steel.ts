import type { MemberName, Override } from "@cornerway/schema";

/** Members of a container whose measured thickness stands in the model and in the checks. */
export const measurable = [
  ...["top side rail", "bottom side rail", "top end rail", "bottom end rail"],
  ...["door header", "door sill", "cross member"],
] as const satisfies readonly MemberName[];
export type Measurable = (typeof measurable)[number];

/** Measured thickness by member, mm. */
export type MeasuredSteel = Readonly<Partial<Record<Measurable, number>>>;

const isMeasurable = (member: MemberName | undefined): member is Measurable =>
  measurable.some((known) => known === member);

/** True where all that a finding says stands in the model: a thickness, and neither another section nor a proved yield. */
export const isTaken = ({ member, section, yieldMpa, thicknessUm }: Override): boolean =>
  isMeasurable(member) && thicknessUm !== undefined && section === undefined && yieldMpa === undefined;

/** What was measured of one container; of a member said twice the thinner. */
export function measuredSteel(overrides: readonly Override[], unitId: string): MeasuredSteel {
  const found: Partial<Record<Measurable, number>> = {};
  for (const { elementId, member, thicknessUm } of overrides) {
    if (elementId !== unitId || thicknessUm === undefined || !isMeasurable(member)) continue;
    found[member] = Math.min(found[member] ?? Infinity, thicknessUm / 1000);
  }
  return found;
}
