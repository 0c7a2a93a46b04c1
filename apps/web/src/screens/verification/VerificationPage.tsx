import { catalogRows } from "@cornerway/engine";
import { certainties, type Certainty } from "@cornerway/schema";
import { useQuery } from "@tanstack/react-query";
import { Link } from "@tanstack/react-router";
import { Ruled } from "../../controls/Ruled.tsx";
import { Trouble } from "../../controls/Trouble.tsx";
import { PageSheet } from "../../sheet/PageSheet.tsx";
import { CoverageTable } from "./CoverageTable.tsx";
import { FamilyTable } from "./FamilyTable.tsx";
import { countsOf, fetchManual, type Manual } from "./manual.ts";
import "./verification.css";

/** What the engine was held against, and where its values come from. Only published and derived count as verified. */
export function VerificationPage() {
  const manual = useQuery({ queryKey: ["manual"], queryFn: fetchManual, staleTime: Infinity });
  if (manual.isPending) return <Ruled label="Fetching the verification" />;
  if (manual.isError) return <Trouble error={manual.error} again={() => void manual.refetch()} />;
  return <VerificationOf manual={manual.data} />;
}

export const VerificationOf = ({ manual }: { manual: Manual }) => (
  <PageSheet
    title="Verification"
    heading="What is verified, and what is not"
    caption={`Engine ${manual.engineVersion}`}
    way={
      <Link className="command" to="/">
        To the desk
      </Link>
    }
  >
    <p className="verification-lead">
      Every value below stands beside the one it was held against. A value from memory has to be confirmed against the
      text by an engineer; it is counted apart and is never called verified. Nothing was tuned to a reference.
    </p>
    <div className="page-columns">
      <section>
        <h2 className="caption">Results against references</h2>
        <Counts rows={countsOf(manual.families.flatMap(({ rows }) => rows))} />
      </section>
      <section>
        <h2 className="caption">Values of the catalogue</h2>
        <Counts rows={countsOf(catalogRows.map(({ certainty }) => ({ certainty, within: true })))} plain />
      </section>
    </div>
    {manual.families.map((family) => (
      <FamilyTable key={family.id} family={family} />
    ))}
    <CoverageTable />
  </PageSheet>
);

const meaning: Record<Certainty, string> = {
  published: "read in the source named",
  derived: "worked out from published values, or by an independent solution",
  memory: "from memory: confirm against the text",
  "common practice": "common practice, no published source",
};

function Counts({ rows, plain = false }: { rows: ReturnType<typeof countsOf>; plain?: boolean }) {
  const sum = (of: "cases" | "within") => rows.reduce((all, row) => all + row[of], 0);
  return (
    <table>
      <thead>
        <tr className="caption">
          <th scope="col">Certainty</th>
          <th scope="col">Where it is from</th>
          <th scope="col" className="figure">
            {plain ? "Values" : "Cases"}
          </th>
          {plain ? null : (
            <th scope="col" className="figure">
              Within
            </th>
          )}
        </tr>
      </thead>
      <tbody>
        {certainties.map((certainty) => {
          const row = rows.find((each) => each.certainty === certainty);
          return (
            <tr key={certainty}>
              <th scope="row">{certainty}</th>
              <td>{meaning[certainty]}</td>
              <td className="figure">{row?.cases ?? 0}</td>
              {plain ? null : <td className="figure">{row?.within ?? 0}</td>}
            </tr>
          );
        })}
        <tr className="verification-sum">
          <th scope="row" colSpan={2}>
            all
          </th>
          <td className="figure">{sum("cases")}</td>
          {plain ? null : <td className="figure">{sum("within")}</td>}
        </tr>
      </tbody>
    </table>
  );
}
