import { coverageTable, effectOnVerdict, limitStates, type Coverage, type LimitState } from "@cornerway/engine";
import { PageScroll } from "../../sheet/PageScroll.tsx";

const told: readonly Coverage[] = ["checked", "bounded", "not covered"];

/** What can go wrong, and how far it is judged for which parts. */
export function CoverageTable() {
  const lines = coverageTable();
  return (
    <section>
      <h2 className="caption">What the engine can check, limit state by limit state</h2>
      <p>
        Verdicts of strength rest on these; sheet 6 of a project says which of them its run makes. Bounded:{" "}
        {effectOnVerdict.bounded}. Not covered: {effectOnVerdict["not covered"]}. Not run: no strength run makes the
        check and no verdict answers for it.
      </p>
      <PageScroll label="Table of limit states">
        <table className="coverage">
          <thead>
            <tr className="caption">
              <th scope="col">Limit state</th>
              {told.map((coverage) => (
                <th scope="col" key={coverage}>
                  {coverage}
                </th>
              ))}
              <th scope="col">not run</th>
              <th scope="col">Why</th>
            </tr>
          </thead>
          <tbody>
            {limitStates.map((limitState) => (
              <Line key={limitState} limitState={limitState} lines={lines} />
            ))}
          </tbody>
        </table>
      </PageScroll>
    </section>
  );
}

function Line({ limitState, lines }: { limitState: LimitState; lines: ReturnType<typeof coverageTable> }) {
  const own = lines.filter((line) => line.limitState === limitState);
  const elements = (coverage: Coverage) =>
    own
      .filter((line) => line.coverage === coverage && (line.run || coverage === "not covered"))
      .map(({ element }) => element)
      .join(", ");
  const notRun = own
    .filter(({ run, coverage }) => !run && (coverage === "checked" || coverage === "bounded"))
    .map(({ element }) => element)
    .join(", ");
  return (
    <tr>
      <th scope="row">{limitState}</th>
      {told.map((coverage) => (
        <td key={coverage}>{elements(coverage)}</td>
      ))}
      <td>{notRun}</td>
      <td>{own.find(({ why }) => why !== undefined)?.why}</td>
    </tr>
  );
}
