import type { BuildingForm, ShapeLimit } from "../../../../loads/shape-limit.ts";
import { asce7, type Asce7Edition } from "../asce7-edition.ts";

/**
 * Limits of 27.1.2 and 26.2 ("regular-shaped"). The text gives words; the numbers that stand for them are judgement: 95
 * % of the rectangle filled, roofs within 300 mm of each other, a tenth of the plan open below. Rigid is 26.11:
 * low-rise, or 75/h ≥ 1 Hz with h under four plan widths.
 */
export function shapeLimits(edition: Asce7Edition, form: BuildingForm): ShapeLimit[] {
  const regular = { ...asce7(edition, "26.2, 27.1.2"), certainty: "common practice" as const };
  const rigid = asce7(edition, "26.11.2, 26.11.3");
  const least = Math.min(form.lengthXMm, form.lengthYMm);
  return [
    { code: "rectangular plan", ...atLeast(form.planFill, 0.95), unit: "1", clause: regular },
    { code: "one roof level", ...atMost(form.roofStepMm, 300), unit: "mm", clause: regular },
    { code: "parallel to the axes", ...atMost(form.turnedOff.length, 0), unit: "1", clause: regular },
    { code: "closed below", ...atMost(form.soffitShare, 0.1), unit: "1", clause: regular },
    { code: "one block", ...atMost(form.blocks, 1), unit: "1", clause: regular },
    { code: "rigid", ...atMost(form.heightMm, mostRigidHeightMm(least)), unit: "mm", clause: rigid },
    { code: "height for components", ...atMost(form.heightMm, sixtyFt), unit: "mm", clause: asce7(edition, "30.3") },
  ];
}

const sixtyFt = 60 * 304.8;
/** 75/h in feet reaches 1 Hz here. */
const oneHertzHeight = 75 * 304.8;

const mostRigidHeightMm = (leastPlanMm: number): number =>
  Math.max(Math.min(sixtyFt, leastPlanMm), Math.min(oneHertzHeight, 4 * leastPlanMm));

const atLeast = (value: number, limit: number) => ({ holds: value >= limit, value, limit });
const atMost = (value: number, limit: number) => ({ holds: value <= limit, value, limit });
