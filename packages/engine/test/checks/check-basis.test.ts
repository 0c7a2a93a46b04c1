import { describe, expect, it } from "vitest";
import { steels } from "../../src/catalog/materials.ts";
import { containerMembers } from "../../src/catalog/sections/container-members.ts";
import { corrugatedSheet, folds } from "../../src/catalog/sections/corrugated-sheet.ts";
import { checkBasisOf, type CheckBasis } from "../../src/checks/check-basis.ts";
import { codeBasis } from "../../src/checks/code-basis.ts";
import { codeSets } from "../../src/codes/loads/code-sets.ts";
import type { CheckedMember } from "../../src/checks/checked-member.ts";

const rail: CheckedMember = {
  element: "bottom side rail",
  section: containerMembers["bottom side rail"],
  steel: steels.unproved,
  lengths: { strongMm: 2500, weakMm: 300, twistMm: 300 },
  unbracedMm: 300,
  cb: 1,
};
const demand = { axialN: 1e4, shearStrongN: 0, shearWeakN: 0, momentStrongNmm: 1e6, momentWeakNmm: 0, torsionNmm: 0 };

describe("checkBasisOf", () => {
  it("brings the editions of the building code as one set", () => {
    const edition = (code: "IBC 2021" | "IBC 2024") => {
      const { tension, torsion } = checkBasisOf(code, "LRFD").memberStrengths(rail);
      return [tension, torsion].map(
        (strength) => strength.ok && `${strength.working.clause.document} ${strength.working.clause.edition}`,
      );
    };
    expect(edition("IBC 2021")).toEqual(["AISI S100 2016", "AISC 360 2016"]);
    expect(edition("IBC 2024")).toEqual(["AISI S100 2016 with supplements", "AISC 360 2022"]);
  });

  it("takes the editions the load codes' closed set names", () => {
    for (const code of ["IBC 2021", "IBC 2024"] as const) {
      const basis = codeBasis(code, "LRFD");
      expect(codeSets[code].steel).toBe(`AISC 360-${basis.steel.edition.slice(2)}`);
      expect(codeSets[code].coldFormed.includes("supplements")).toBe(basis.thin.edition.includes("supplements"));
    }
  });

  it("another set is another object of the same shape: whoever asks it does not notice", () => {
    const american = checkBasisOf("IBC 2021", "LRFD");
    const dummy: CheckBasis = { ...american, memberUtilisation: () => ({ limitState: "tension", utilisation: 0.5 }) };
    const ask = (basis: CheckBasis) =>
      basis.memberUtilisation(basis.capacities(basis.memberStrengths(rail)), demand).utilisation;
    expect(ask(dummy)).toBe(0.5);
    expect(ask(american)).toBeGreaterThan(0);
  });

  it("a whole 40 ft side wall counts and its table caps it at 1.226 N/mm", () => {
    const { check, counts } = checkBasisOf("IBC 2021", "LRFD").wall({
      table: { type: "1AAA", wall: "side" },
      facts: {
        lengthMm: 12_192,
        openingsMm: 0,
        piecesMm: [12_192],
        boundaryOnFourSides: true,
        openingsFramed: "unknown",
        smallHolesWithinLimit: true,
        kind: "sheet",
        doorsWeldedShut: "unknown",
      },
      forceN: 10_000,
      panel: { sheet: corrugatedSheet(folds.side, 1.6), steel: steels.unproved, heightMm: 2650 },
    });
    expect(counts).toBe(true);
    expect(check?.ok === true ? check.utilisation : Number.NaN).toBeCloseTo(10_000 / 12_192 / 1.2259, 4);
  });
});
