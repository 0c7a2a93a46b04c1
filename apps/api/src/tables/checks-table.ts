import type { Table, TableSource } from "./table.ts";

/** What governs each part, worst first as it was judged: demand, capacity and ratio with the clause. Empty where strength was not judged. */
export const checksTable = ({ proof, contentDigest, assessment }: TableSource): Table => ({
  head: [
    ...["check_id", "owner_id", "part", "place", "limit_state", "combination", "assumptions", "clause", "edition"],
    ...["demand", "capacity", "unit", "ratio", "refused", "certainty", "content_digest", "engine_version"],
  ],
  rows: (proof?.report.results ?? []).map((result) => {
    const working = proof?.workings.find(({ id }) => id === result.id)?.working;
    return [
      ...[result.id, result.ownerId, result.part, result.place, result.check, result.run, result.assumptions],
      ...[result.clause === undefined ? null : `${result.clause.document} ${result.clause.place}`],
      ...[result.clause?.edition ?? null, working?.result.value ?? null, working?.limit?.value ?? null],
      ...[working?.result.unit ?? null, result.utilisation, result.refused ?? null, result.certainty ?? null],
      ...[contentDigest, assessment.engineVersion],
    ];
  }),
});
