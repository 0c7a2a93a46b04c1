/** A rectangle on paper, mm: u to the right, z up. */
export type PaperRect = { u0Mm: number; u1Mm: number; z0Mm: number; z1Mm: number };

/** One fold line of a sheet and the heights where sheet is left along it; `light` is every second one. */
export type FoldLine = { uMm: number; light: boolean; runsMm: readonly { z0Mm: number; z1Mm: number }[] };

/** Fold lines at half the pitch (outer flat, inner flat in turn), stopping at openings. */
export function foldLines(sheet: PaperRect, pitchMm: number, openings: readonly PaperRect[]): FoldLine[] {
  const half = pitchMm / 2;
  const count = Math.floor((sheet.u1Mm - sheet.u0Mm) / half);
  const first = sheet.u0Mm + (sheet.u1Mm - sheet.u0Mm - (count - 1) * half) / 2;
  return Array.from({ length: count }, (_, index) => {
    const uMm = first + index * half;
    const cuts = openings.filter(({ u0Mm, u1Mm }) => uMm > u0Mm - clearMm && uMm < u1Mm + clearMm);
    return { uMm, light: index % 2 === 1, runsMm: runsBetween(sheet, cuts) };
  });
}

/** A fold closer than this to an opening's edge would only thicken its outline. */
const clearMm = 25;

function runsBetween(sheet: PaperRect, cuts: readonly PaperRect[]): { z0Mm: number; z1Mm: number }[] {
  const rising = cuts.toSorted((a, b) => a.z0Mm - b.z0Mm);
  const runs: { z0Mm: number; z1Mm: number }[] = [];
  let from = sheet.z0Mm;
  for (const cut of rising) {
    if (cut.z0Mm > from) runs.push({ z0Mm: from, z1Mm: Math.min(cut.z0Mm, sheet.z1Mm) });
    from = Math.max(from, cut.z1Mm);
  }
  if (from < sheet.z1Mm) runs.push({ z0Mm: from, z1Mm: sheet.z1Mm });
  return runs;
}
