import type { Assessment, Scheme, StrengthReport } from "@cornerway/schema";
import { namesIn } from "../../wording/name-of.ts";
import { CombinationTables } from "./CombinationTables.tsx";
import { CoverageTable } from "./CoverageTable.tsx";
import { EnvelopeTable } from "./EnvelopeTable.tsx";
import { FamilyTables } from "./FamilyTables.tsx";
import { LoadTables } from "./LoadTables.tsx";
import "./calculations.css";

export interface CalculationsPageProps {
  letter: string;
  scheme: Scheme;
  assessment: Assessment;
  strength: NonNullable<Assessment["strength"]>;
  report: StrengthReport;
  /** Opens the working kept under a name, of a part or of a load. */
  onOpen: (elementId: string, id: string) => void;
}

/** The calculations of one revision in reading order: fullest checks first, then loads, combinations, envelope, coverage. */
export function CalculationsPage({ letter, scheme, assessment, strength, report, onOpen }: CalculationsPageProps) {
  const nameOf = namesIn(scheme);
  return (
    <article className="calculations-page">
      <header>
        <p className="caption">Calculations of revision {letter}, screening</p>
        <h2>What is fullest, and why</h2>
        <p>
          {`${assessment.scope.charAt(0).toUpperCase()}${assessment.scope.slice(1)}`}. Forces are factored unless said;
          each line opens to its formula, the numbers put in and its clause. Engine {assessment.engineVersion}.
        </p>
      </header>
      <FamilyTables results={report.results} nameOf={nameOf} onOpen={onOpen} />
      <LoadTables report={report} hasPlace={scheme.basis.hazards !== null} onOpen={onOpen} />
      <CombinationTables report={report} />
      <EnvelopeTable strength={strength} report={report} nameOf={nameOf} />
      <CoverageTable rows={report.coverage} />
    </article>
  );
}
