/**
 * Outside width of an added post, mm, read from the name of its section: the first figure, in inches below 20
 * (HSS4x4x1/4), in millimetres above (HSS 102×102×6.4). A name without a figure is taken as 100 mm wide.
 */
export function postSizeMm(section: string): number {
  const figure = /[0-9]+(?:\.[0-9]+)?/.exec(section);
  if (figure === null) return assumedMm;
  const size = Number(figure[0]);
  const mm = size < 20 ? size * mmPerInch : size;
  return mm > 0 && mm <= mostMm ? mm : assumedMm;
}

const mmPerInch = 25.4;
const assumedMm = 100;
/** Wider than any rolled or hollow section in common use. */
const mostMm = 1000;
