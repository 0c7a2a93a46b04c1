/** Px of one metre at 1:1 on a screen of 96 px to the inch (CSS px, 25.4 mm to the inch). */
const pxPerMetreFullSize = 96_000 / 25.4;

const ratios = [20, 25, 33, 40, 50, 60, 75, 90, 100, 125, 150, 175, 200, 250, 300, 400, 500, 600, 800, 1000] as const;

export type DrawingScale = { pxPerM: number; label: string };

/** The largest scale of the office's list at which `widthMm` × `heightMm` fits the px given; the last one if none does. */
export function fittingScale(
  size: { widthMm: number; heightMm: number },
  field: { widthPx: number; heightPx: number },
): DrawingScale {
  const most = Math.min((field.widthPx * 1000) / size.widthMm, (field.heightPx * 1000) / size.heightMm);
  const ratio = ratios.find((candidate) => pxPerMetreFullSize / candidate <= most) ?? 1000;
  return { pxPerM: pxPerMetreFullSize / ratio, label: `1:${ratio}` };
}
