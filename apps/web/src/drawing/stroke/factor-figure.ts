/** "83 times larger", "2.4 times larger"; a movement larger than what is drawn is made smaller. */
export function factorFigure(factor: number): string {
  if (factor === 1) return "at its own size";
  const [times, way] = factor > 1 ? [factor, "larger"] : [1 / factor, "smaller"];
  return `${times >= 10 ? Math.round(times) : Number(times.toPrecision(2))} times ${way}`;
}
