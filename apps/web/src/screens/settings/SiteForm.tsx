import { codeEditions, type Site } from "@cornerway/schema";
import { useMemo, useState } from "react";
import { PersonField } from "../../controls/PersonField.tsx";
import { QuantityForm } from "../../twin/QuantityForm.tsx";
import type { QuantityField } from "../../twin/quantity-field.ts";

/** North, ground and the code edition, in numbers; one press is one move of the draft and can be taken back on sheet 1. */
export function SiteForm({
  site,
  asleepBecause,
  onSite,
}: {
  site: Site;
  asleepBecause: string | undefined;
  onSite: (site: Site) => void;
}) {
  const [edition, setEdition] = useState(site.edition);
  const fields = useMemo<QuantityField[]>(
    () => [
      { name: "northMdeg", label: "True north, left of up", kind: "angle", value: site.northMdeg },
      { name: "groundZUm", label: "Ground level", kind: "length", value: site.groundZUm },
    ],
    [site],
  );
  return (
    <>
      <NorthSketch northMdeg={site.northMdeg} />
      <QuantityForm
        fields={fields}
        command="Draw the site so"
        asleepBecause={asleepBecause}
        onValues={(values) =>
          onSite({
            ...site,
            northMdeg: values["northMdeg"] ?? site.northMdeg,
            groundZUm: values["groundZUm"] ?? site.groundZUm,
            edition,
          })
        }
      >
        <PersonField label="Adopted building code edition">
          {(bound) => (
            <select
              {...bound}
              value={edition}
              disabled={asleepBecause !== undefined}
              onChange={({ target }) => setEdition(codeEditions.find((known) => known === target.value) ?? edition)}
            >
              {codeEditions.map((known) => (
                <option key={known}>{known}</option>
              ))}
            </select>
          )}
        </PersonField>
      </QuantityForm>
      {asleepBecause === undefined ? (
        <p>The edition selects loads, steel, concrete and container clauses together, as one closed set.</p>
      ) : (
        <p className="settings-why">{asleepBecause}</p>
      )}
    </>
  );
}

/** The plan's up, and true north beside it. */
const NorthSketch = ({ northMdeg }: { northMdeg: number }) => (
  <svg
    className="north-sketch"
    width="120"
    height="96"
    viewBox="-60 -52 120 96"
    role="img"
    aria-label={northWords(northMdeg)}
  >
    <rect x="-30" y="-9" width="60" height="18" fill="none" stroke="var(--ink)" strokeWidth="1.5" />
    <path d="M0 -14V-40" stroke="var(--graphite-2)" strokeWidth="0.75" strokeDasharray="6 3" />
    <g transform={`rotate(${-northMdeg / 1000})`}>
      <circle r="11" fill="var(--paper)" stroke="var(--ink)" strokeWidth="1.1" />
      <path d="M0 -30L5.4 8L0 4.6L-5.4 8Z" fill="var(--ink)" />
      <text y="-34" textAnchor="middle" fontSize="12" fontWeight="600" fill="var(--ink)">
        N
      </text>
    </g>
  </svg>
);

const northWords = (northMdeg: number): string =>
  northMdeg === 0 ? "True north is up on the plan" : `True north lies ${northMdeg / 1000}° left of up on the plan`;
