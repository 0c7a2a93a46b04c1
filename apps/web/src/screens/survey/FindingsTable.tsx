import type { SurveyFinding } from "@cornerway/schema";
import { ColumnHeads } from "../../controls/ColumnHeads.tsx";
import { PageScroll } from "../../sheet/PageScroll.tsx";
import { useUnits } from "../../units/use-units.ts";
import { gaugeLength } from "../../wording/millimetres.ts";
import { damageWords } from "../../wording/survey-words.ts";

/** Damage and thickness, each beside its limit. */
export function FindingsTable({ findings }: { findings: readonly SurveyFinding[] }) {
  const units = useUnits();
  if (findings.length === 0) return <p>No damage was found, and no thickness measured.</p>;
  const long = (um: number | null) => (um === null ? "–" : gaugeLength(um, units));
  return (
    <PageScroll label="Table of damage and thickness">
      <table>
        <ColumnHeads heads={["Part", "What", { figure: "Found" }, { figure: "Limit" }, "Outcome"]} />
        <tbody>
          {findings.map((finding) => (
            <tr key={keyOf(finding)}>
              <th scope="row">
                {finding.member}
                {finding.of === "damage" ? `, ${finding.place}` : ""}
              </th>
              <td>{whatOf(finding, long)}</td>
              <td className="figure">{long(finding.foundUm)}</td>
              <td className="figure">{long(finding.limitUm)}</td>
              <td className={finding.beyond === true ? "survey-beyond" : undefined}>{outcomeOf(finding)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </PageScroll>
  );
}

const keyOf = (finding: SurveyFinding): string =>
  finding.of === "damage" ? `${finding.member} ${finding.place} ${finding.kind} ${finding.foundUm}` : finding.member;

const whatOf = (finding: SurveyFinding, long: (um: number | null) => string): string =>
  finding.of === "damage" ? damageWords[finding.kind] : `least thickness, assumed ${long(finding.assumedUm)}`;

const outcomeOf = ({ beyond }: SurveyFinding): string =>
  beyond === null ? "the engineer judges" : beyond ? "beyond its limit" : "within";
