import type { Section } from "../catalog/sections/section.ts";

/**
 * The length at which a bar by itself would bow as it does welded along another on the same line, mm. Both are strained alike,
 * so each has the share of the compression that it has of the area, and both bow under the sum of their elastic forces:
 * L √(I (A + A₂) / ((I + I₂) A)). Derived. The softer one is held by the other, the stiffer one holds it.
 */
export function lengthBeside(own: Section, other: Section, lengthMm: number): number {
  const together = (inertia(own) + inertia(other)) / inertia(own);
  return lengthMm * Math.sqrt((own.areaMm2 + other.areaMm2) / own.areaMm2 / together);
}

const inertia = (section: Section): number => (section.kind === "angle" ? section.iMm4 : section.ixMm4);
