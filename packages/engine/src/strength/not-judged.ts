/** What strength leaves out whatever the scheme; printed with every answer. */
export const notJudged = [
  "sway enlargement (B₂) by storey",
  "walls of the lateral system against the code's table, irregularities, overstrength",
  "pressures on single parts: sheets bent out of their plane, windows and their frames",
  "flow in floor and roof sheets; folds beside a window",
  "deflection, drift, closing of gaps",
  "pads that give: supports are rigid; level error of posts and seats",
  "lifting, erection stages, the bare state",
  "connections: welds of frames, ties, anchors in the concrete; locks by their rating, others by a stated detail",
  "vibration, fatigue, fire, corrosion",
] as const;
