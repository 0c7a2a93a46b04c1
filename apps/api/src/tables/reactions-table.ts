import type { Table, TableSource } from "./table.ts";

/** What the ground gives to each action case as solved and recorded, unfactored; after it dead and imposed together by statics. */
export const reactionsTable = ({ assessment, proof }: TableSource): Table => ({
  head: ["support_id", "case", "x_mm", "y_mm", "z_mm", "Fx_kN", "Fy_kN", "Fz_kN"],
  rows: [
    ...(proof?.report.forces?.cases ?? []).flatMap(({ caseId, symbol, reactions }) =>
      (reactions ?? []).map(({ elementId, at, eastKn, northKn, upKn }) => [
        ...[elementId, `${symbol} (${caseId}), as solved, unfactored`, at.xMm, at.yMm, at.zMm],
        ...[eastKn, northKn, upKn],
      ]),
    ),
    ...assessment.statics.reactions.map(({ elementId, at, forceKn }) => [
      ...[elementId, "D + L, by statics, unfactored", at.xMm, at.yMm, at.zMm, 0, 0, forceKn],
    ]),
    ...(proof?.report.cases ?? []).map(({ id, symbol, xKn, yKn, zKn }) => [
      ...["all supports together", `${symbol} (${id}), what acts, reversed`, null, null, null, -xKn, -yKn, -zKn],
    ]),
  ],
});
