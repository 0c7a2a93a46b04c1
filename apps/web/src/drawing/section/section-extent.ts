import type { PaperRect, SectionModel } from "@cornerway/engine";

/** All a section shows above ground, mm on its paper; a strip of ground where it cuts nothing. */
export function sectionExtent({ cuts, beyond }: SectionModel, groundMm: number): PaperRect {
  const shown = [...cuts, ...beyond];
  return {
    u0Mm: Math.min(...shown.map(({ u0Mm }) => u0Mm), shown.length === 0 ? 0 : Infinity),
    u1Mm: Math.max(...shown.map(({ u1Mm }) => u1Mm), shown.length === 0 ? 6000 : -Infinity),
    z0Mm: Math.min(groundMm, ...shown.map(({ z0Mm }) => z0Mm)),
    z1Mm: Math.max(groundMm + 2600, ...shown.map(({ z1Mm }) => z1Mm)),
  };
}
