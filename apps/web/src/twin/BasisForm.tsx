import { DesignBasis, type CodeEdition, type Operation } from "@cornerway/schema";
import { useState } from "react";
import { Command } from "../controls/Command.tsx";
import {
  basisFields,
  firstHazards,
  hazardFields,
  readRule,
  settleSheetWalls,
  sheetWallFields,
  sheetWallRule,
} from "./fields/basis-fields.ts";
import { PartForm } from "./part/PartForm.tsx";
import "./basis-form.css";

export interface BasisFormProps {
  basis: DesignBasis;
  /** The edition the project has adopted: hazards are begun for it. */
  edition: CodeEdition;
  asleepBecause?: string | undefined;
  onDraw: (operations: Operation[]) => void;
}

/** What the project takes as given beyond what is drawn: hazards, ground, concrete, tolerances, lifting, systems. */
export default function BasisForm({ basis, edition, asleepBecause, onDraw }: BasisFormProps) {
  const [begun, begin] = useState<DesignBasis | null>(null);
  const [rule, setRule] = useState(basis.sheetWalls.rule);
  const shown = begun ?? basis;
  const other = editionsOf(shown).filter((read) => read !== edition);
  const draw = (next: DesignBasis) => {
    begin(null);
    if (JSON.stringify(next) !== JSON.stringify(basis)) onDraw([{ kind: "basis.change", basis: next }]);
  };
  return (
    <section className="basis-form" aria-label="Design basis">
      {shown.hazards === null ? <p>No hazards are stated yet: wind, snow and earthquake are not judged.</p> : null}
      {other.length === 0 ? null : (
        <p className="field-fault" role="note">
          {`Values read for ${[...new Set(other)].join(" and ")} stand under a project of ${edition}. Maps change between editions: read them anew.`}
        </p>
      )}
      <PartForm
        element={shown}
        schema={DesignBasis}
        fields={[
          ...(shown.hazards === null ? [] : hazardFields),
          ...basisFields,
          sheetWallRule,
          ...sheetWallFields(rule),
        ]}
        command="Take this as the basis"
        settle={settleSheetWalls}
        asleepBecause={asleepBecause}
        onAnswer={(path, text) => {
          if (path === "sheetWalls.rule") setRule(readRule(text) ?? rule);
        }}
        onElement={draw}
      />
      <div className="twin-row">
        {shown.hazards === null ? (
          <Command asleepBecause={asleepBecause} onPress={() => begin({ ...shown, hazards: firstHazards(edition) })}>
            State the hazards of the site
          </Command>
        ) : (
          <Command quiet asleepBecause={asleepBecause} onPress={() => draw({ ...shown, hazards: null })}>
            Take the hazards off
          </Command>
        )}
      </div>
    </section>
  );
}

const editionsOf = ({ hazards }: DesignBasis): CodeEdition[] =>
  hazards === null ? [] : [hazards.wind.edition, hazards.snow.edition, hazards.seismic.edition];
