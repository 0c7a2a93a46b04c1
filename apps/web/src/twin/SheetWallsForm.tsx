import { DesignBasis } from "@cornerway/schema";
import { useState } from "react";
import { readRule, settleSheetWalls, sheetWallFields, sheetWallRule } from "./fields/basis-fields.ts";
import { PartForm } from "./part/PartForm.tsx";
import "./basis-form.css";

/** The engineer's choice of how sheet walls count, with its reason: asked for like any change, and printed with its author. */
export function SheetWallsForm({ basis, onBasis }: { basis: DesignBasis; onBasis: (basis: DesignBasis) => void }) {
  /** The rule as it is chosen here; null until one is: that of the basis stands, also once a change of it is taken back. */
  const [chosen, choose] = useState<DesignBasis["sheetWalls"]["rule"] | null>(null);
  const rule = chosen ?? basis.sheetWalls.rule;
  return (
    <section className="basis-form" aria-label="How sheet walls count">
      <p>The permit set prints the choice, its reason, who asked for it and when.</p>
      <PartForm
        element={basis}
        schema={DesignBasis}
        fields={[sheetWallRule, ...sheetWallFields(rule)]}
        command="Lay it on the request"
        settle={settleSheetWalls}
        onAnswer={(path, text) => {
          if (path === "sheetWalls.rule") choose(readRule(text) ?? rule);
        }}
        onElement={(next) => {
          choose(null);
          if (JSON.stringify(next) !== JSON.stringify(basis)) onBasis(next);
        }}
      />
    </section>
  );
}
