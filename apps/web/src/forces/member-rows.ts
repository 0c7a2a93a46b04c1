import type { Extreme, MemberForces } from "@cornerway/engine";
import {
  figuresIn,
  type CheckResult,
  type Figures,
  type Scheme,
  type StrengthReport,
  type UnitSystem,
} from "@cornerway/schema";

/** Forces of one member with the check that governs it. */
export interface MemberRow {
  name: string;
  /** "112.4 kN pressed"; "14.2 kN pulled". */
  axial: string;
  shear: string;
  moment: string;
  /** Where shear and moment are greatest. */
  where: string;
  /** Null where no check is its own. */
  check: CheckResult | null;
}

/** Members of a thing, or of the unit an opening is cut in, the fullest first. */
export function memberRows(
  members: readonly MemberForces[],
  report: StrengthReport | null,
  scheme: Scheme,
  { elementId, units }: { elementId: string; units: UnitSystem },
): MemberRow[] {
  const holder = scheme.openings.find(({ id }) => id === elementId)?.containerId ?? elementId;
  const figures = figuresIn(units);
  return members
    .filter(({ ownerId }) => ownerId === holder)
    .map((member): MemberRow => ({ ...forcesOf(member, figures), check: checkOf(member, report) }))
    .toSorted((a, b) => used(b) - used(a));
}

const used = ({ check }: MemberRow): number => (check === null ? -1 : (check.utilisation ?? Infinity));

/** The report names a member as its forces do; the fullest comes first. */
const checkOf = ({ ownerId, part, place }: MemberForces, report: StrengthReport | null): CheckResult | null =>
  report?.results.find((result) => result.ownerId === ownerId && result.part === part && result.place === place) ??
  null;

function forcesOf(
  { part, place, pressed, pulled, shear, moment }: MemberForces,
  { forceExact, moment: momentFigure, length }: Figures,
): Omit<MemberRow, "check"> {
  const pulls = -pulled.value > pressed.value;
  return {
    name: `${part} ${place}`,
    axial: pulls ? `${forceExact(-pulled.value)} pulled` : `${forceExact(pressed.value)} pressed`,
    shear: forceExact(shear.value),
    moment: momentFigure(moment.value),
    where: whereWords(part, moment, length),
  };
}

const upright = (part: string): boolean => part.endsWith("post") || part === "jamb";
const across = (part: string): boolean => part === "sill" || part.endsWith("header") || part === "cross member";

/** Where a member is bent most: along the unit, across it, or up an upright. */
function whereWords(part: string, { at }: Extreme, length: Figures["length"]): string {
  if (upright(part)) return `${length(at.zMm)} up`;
  if (!across(part)) return `${length(at.uMm)} from the front`;
  if (Math.abs(at.yMm) < 1) return "in the middle";
  return `${length(Math.abs(at.yMm))} ${at.yMm > 0 ? "left" : "right"} of the middle`;
}
