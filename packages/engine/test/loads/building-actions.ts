import type { Scheme } from "@cornerway/schema";
import { designBasisFor } from "../../src/codes/loads/design-basis-for.ts";
import type { ActionCase } from "../../src/loads/action-case.ts";
import { boxFactors } from "../../src/loads/box-factors.ts";
import { buildingForm, windShapeOf } from "../../src/loads/building-form.ts";
import { buildingFrame, type BuildingFrame } from "../../src/loads/building-frame.ts";
import { caseResultant, type CaseResultant } from "../../src/loads/case-resultant.ts";
import { seismicCases } from "../../src/loads/seismic-cases.ts";
import type { SiteHazards } from "../../src/loads/site-hazards.ts";
import { snowCases } from "../../src/loads/snow-cases.ts";
import { windCases } from "../../src/loads/wind-cases.ts";
import { windowlessEnvelope } from "./windowless-envelope.ts";

export const basis = designBasisFor("IBC 2021");

export function framed(scheme: Scheme): BuildingFrame {
  const building = buildingFrame(scheme);
  if (building === undefined) throw new Error("the sample has containers");
  return building;
}

export function windOf(scheme: Scheme, hazards: SiteHazards): ActionCase[] {
  const building = framed(scheme);
  const limits = basis.wind.shapeLimits(buildingForm(building));
  const wind = basis.wind.mainSystem(hazards, windShapeOf(building), windowlessEnvelope(building));
  return windCases(building, wind, basis.wind.loadCases(), boxFactors(building, limits));
}

export const snowOf = (scheme: Scheme, hazards: SiteHazards): ActionCase[] => [
  ...snowCases(framed(scheme), hazards, basis).cases,
];

export const seismicOf = (scheme: Scheme, hazards: SiteHazards) =>
  seismicCases(scheme, framed(scheme), basis, hazards, () => []);

export const caseNamed = (cases: readonly ActionCase[], id: string): ActionCase => {
  const found = cases.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no case ${id}; there are ${cases.map((one) => one.id).join(", ")}`);
  return found;
};

export const sumOf = (scheme: Scheme, action: ActionCase): CaseResultant =>
  caseResultant(
    action,
    framed(scheme).boxes.map(({ placed }) => placed),
    { xMm: 0, yMm: 0, zMm: 0 },
  );
