import { loadGroups, type LoadDerivation, type StrengthReport } from "@cornerway/schema";
import { ColumnHeads } from "../../controls/ColumnHeads.tsx";
import { PageScroll } from "../../sheet/PageScroll.tsx";
import { useUnits } from "../../units/use-units.ts";
import { workedValue } from "../../units/worked-value.ts";
import { certaintyInTable } from "../../working/certainty-words.ts";
import { SymbolName } from "../../working/Formula.tsx";

const groupWords: Readonly<Record<LoadDerivation["group"], string>> = {
  dead: "Dead load, each unit at its most and at its least",
  imposed: "Imposed load of the floors",
  roof: "Live load of the roofs",
  snow: "Snow",
  wind: "Wind on the main system",
  earthquake: "Earthquake",
};

interface LoadTablesProps {
  report: StrengthReport;
  /** True where wind, snow and earthquake of the place are entered. */
  hasPlace: boolean;
  onOpen: (elementId: string, id: string) => void;
}

/** The loads of the place as they were worked out, each open to its derivation; the sum of each case; limits tried. */
export function LoadTables({ report, hasPlace, onOpen }: LoadTablesProps) {
  return (
    <section>
      <h3 id="calculations-loads">Loads of the place</h3>
      {hasPlace ? null : (
        <p>Wind, snow and earthquake of the place are not entered: what stands here is gravity alone.</p>
      )}
      {loadGroups.map((group) => (
        <Group key={group} group={group} loads={report.loads.filter((load) => load.group === group)} onOpen={onOpen} />
      ))}
      <Cases cases={report.cases} />
      <WindLimits limits={report.windLimits} />
    </section>
  );
}

function Group({
  group,
  loads,
  onOpen,
}: {
  group: LoadDerivation["group"];
  loads: readonly LoadDerivation[];
  onOpen: LoadTablesProps["onOpen"];
}) {
  const units = useUnits();
  if (loads.length === 0) return null;
  return (
    <details>
      <summary>
        <b>{groupWords[group]}</b> · {loads.length} {loads.length === 1 ? "derivation" : "derivations"}
      </summary>
      <PageScroll label={groupWords[group]}>
        <table>
          <ColumnHeads heads={["Load", "Value", "Clause", "Certainty"]} />
          <tbody>
            {loads.map(({ id, title, symbol, value, unit, clause, certainty }) => (
              <tr key={id}>
                <th scope="row">
                  <button type="button" className="working-way" onClick={() => onOpen("", id)}>
                    {title}
                  </button>
                </th>
                <td>
                  <SymbolName of={symbol} /> = {workedValue(value, unit, units)}
                </td>
                <td>
                  {clause.document} {clause.place}
                </td>
                <td>{certaintyInTable[certainty]}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </PageScroll>
    </details>
  );
}

function Cases({ cases }: { cases: StrengthReport["cases"] }) {
  const units = useUnits();
  const force = (kn: number) => workedValue(Math.abs(kn) < 0.0005 ? 0 : kn, "kN", units);
  return (
    <details>
      <summary>
        <b>Sum of each action case</b> · {cases.length} cases
      </summary>
      <PageScroll label="Sum of each action case">
        <table>
          <ColumnHeads
            heads={["Case", { figure: "Along site x" }, { figure: "Along site y" }, { figure: "Upwards" }]}
          />
          <tbody>
            {cases.map(({ id, xKn, yKn, zKn }) => (
              <tr key={id}>
                <th scope="row">{id}</th>
                <td className="figure">{force(xKn)}</td>
                <td className="figure">{force(yKn)}</td>
                <td className="figure">{force(zKn)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </PageScroll>
    </details>
  );
}

function WindLimits({ limits }: { limits: StrengthReport["windLimits"] }) {
  const units = useUnits();
  if (limits.length === 0) return null;
  return (
    <details>
      <summary>
        <b>Limits of the wind procedure</b> · {limits.filter(({ holds }) => holds).length} of {limits.length} hold
      </summary>
      <PageScroll label="Limits of the wind procedure">
        <table>
          <tbody>
            {limits.map(({ limit, holds, value, most, unit, clause }) => (
              <tr key={limit}>
                <th scope="row">{limit}</th>
                <td>{holds ? "holds" : "does not hold: the enclosing box stands in, and the engineer says"}</td>
                <td>
                  {workedValue(value, unit, units)} of {workedValue(most, unit, units)}
                </td>
                <td>
                  {clause.document} {clause.place}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </PageScroll>
    </details>
  );
}
