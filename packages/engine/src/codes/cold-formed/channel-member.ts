import type { Steel } from "../../catalog/materials.ts";
import type { PressedSection } from "../../catalog/sections/section.ts";
import type { SectionPoint } from "../../catalog/sections/thin-walled-section.ts";

/** Which flange: at the head or at the foot of the section as it stands. */
export type Flange = "head" | "foot";

/** An unlipped pressed channel, web upright: outside widths, mm. */
export type Channel = {
  readonly section: PressedSection;
  readonly steel: Steel;
  readonly webMm: number;
  readonly flangeMm: Readonly<Record<Flange, number>>;
};

/**
 * Reads an unlipped channel out of its outline (tip, corner, corner, tip, web upright). Undefined for any other outline.
 * Widths run between centrelines.
 */
export function asChannel(section: PressedSection, steel: Steel): Channel | undefined {
  const [footTip, foot, head, headTip, ...more] = section.outline;
  if (footTip === undefined || foot === undefined || head === undefined || headTip === undefined || more.length > 0)
    return undefined;
  if (!level(footTip, foot) || !level(headTip, head) || foot.xMm !== head.xMm) return undefined;
  return {
    section,
    steel,
    webMm: head.yMm - foot.yMm,
    flangeMm: { foot: Math.abs(footTip.xMm - foot.xMm), head: Math.abs(headTip.xMm - head.xMm) },
  };
}

/** Flat of the web between square corners, and of a flange from its corner to the tip, mm. No inside radius is counted. */
export const flatWebMm = (channel: Channel): number => channel.webMm - channel.section.thicknessMm;
export const flatFlangeMm = (channel: Channel, flange: Flange): number =>
  channel.flangeMm[flange] - channel.section.thicknessMm / 2;

const level = (one: SectionPoint, other: SectionPoint): boolean => one.yMm === other.yMm;
