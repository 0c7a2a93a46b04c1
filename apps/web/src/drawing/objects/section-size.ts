const mmPerInch = 25.4;
/** A leading figure below this is inches, as American names have it. */
const leastMm = 25;
const usualMm = 100;
/** Breadth of a rolled shape against its depth, where its name gives none; for drawing only. */
const breadthShare = 0.6;

/** Depth and breadth a section is drawn with, mm, read from its name: "W8x31" is 8 in deep, "HSS6x4x1/4" 6 by 4 in. */
export function sectionSizeMm(section: string): { depthMm: number; widthMm: number } {
  const [first, second] = (section.match(/\d+(?:\.\d+)?(?![\d/])/g) ?? []).map(Number);
  const depthMm = millimetres(first) ?? usualMm;
  const tube = /^HSS/i.test(section);
  return { depthMm, widthMm: (tube ? millimetres(second) : null) ?? depthMm * breadthShare };
}

function millimetres(figure: number | undefined): number | null {
  if (figure === undefined) return null;
  const mm = figure < leastMm ? figure * mmPerInch : figure;
  return mm >= 30 && mm <= 1200 ? mm : null;
}
