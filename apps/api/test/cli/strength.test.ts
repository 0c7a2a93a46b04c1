import { Assessment, StrengthProof, cautionLine, cautions, emptyScheme } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { z } from "zod";
import { assessCommand } from "../../src/cli/assess-command.ts";
import { readSiteRequest } from "../../src/cli/site-request.ts";
import { strengthCommand } from "../../src/cli/strength-command.ts";
import { lockedStack } from "../support/locked-stack.ts";

const edition = "IBC 2021";
const site = {
  hazards: {
    riskCategory: "II",
    wind: { edition, speedMs: 40, exposure: "B", elevationM: 0, topographicFactor: 1 },
    snow: { edition, groundPa: 500, roofExposure: "partially exposed", thermal: "heated" },
    seismic: { edition, ss: 0.1, s1: 0.05, siteClass: "D", longPeriodS: 8 },
  },
};
const scheme = {
  ...emptyScheme,
  containers: [{ id: "u1", tag: "U1", type: "1D", xUm: 0, yUm: 0, zUm: 0, turnMdeg: 0 }],
};
const run = (drawn: unknown, place?: unknown, asText = false) =>
  strengthCommand(
    { name: "scheme.json", value: drawn },
    place === undefined ? undefined : { name: "hazards.json", value: place },
    asText,
  );

describe("cornerway strength", () => {
  it("prints envelope, units with reasons and what governs as JSON, and ends with 0", () => {
    const { out, err, code } = run(scheme, site);
    expect(err).toBe("");
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ accepted: true, units: [{ unitId: "u1" }] });
  });

  it("reads the site from the scheme's own design basis, and a site file takes its place", () => {
    const own = { ...scheme, basis: { ...scheme.basis, hazards: site.hazards } };
    expect(run(own).out).toBe(run(scheme, site).out);
    expect(run(scheme).out).not.toBe(run(scheme, site).out);
    const other = { ...site.hazards, wind: { ...site.hazards.wind, edition: "IBC 2024" } };
    const wrong = { ...own, basis: { ...own.basis, hazards: other } };
    expect(run(wrong).err).toMatch(/^scheme\.json: \/basis\/hazards\/wind: /);
  });

  it("prints text with the caution line first and every caution for --text", () => {
    const { out } = run(scheme, site, true);
    expect(out.startsWith(`${cautionLine}\n`)).toBe(true);
    for (const caution of cautions) expect(out).toContain(caution);
    expect(out).toContain("Strength, screening only");
  });

  it("names the wrong field of a site file by JSON pointer, and ends with 1", () => {
    const wrong = { hazards: { ...site.hazards, riskCategory: "V" } };
    expect(run(scheme, wrong)).toMatchObject({ out: "", code: 1 });
    expect(run(scheme, wrong).err).toMatch(/^hazards\.json: \/hazards\/riskCategory: /);
  });

  it("refuses hazards of another edition and a scheme without containers", () => {
    const other = { hazards: { ...site.hazards, wind: { ...site.hazards.wind, edition: "IBC 2024" } } };
    expect(run(scheme, other).err).toMatch(/^hazards\.json: \/hazards\/wind: .*IBC 2021 is adopted/);
    expect(run(emptyScheme, site).err).toBe("scheme.json: /containers: there is no container\n");
  });

  it("takes the weakest soil and 17.2 MPa concrete where the site file says nothing", () => {
    expect(readSiteRequest(site)).toMatchObject({
      ok: true,
      basis: { soil: { class: "clay or silt" }, concreteMpa: 17.2 },
    });
  });
});

describe("cornerway assess", () => {
  const own = { ...scheme, basis: { ...scheme.basis, hazards: site.hazards } };
  const assessed = (drawn: unknown, asText = false) =>
    assessCommand("scheme.json", drawn, { asText, loadPathOnly: false });

  it("says what was judged, marks with strength and the workings they name, as JSON", () => {
    const { out, code } = assessed(own);
    expect(code).toBe(0);
    const { assessment, proof } = z.object({ assessment: Assessment, proof: StrengthProof }).parse(JSON.parse(out));
    expect(assessment.scope).toBe("load path, and strength under all loads");
    expect(assessment.strength?.vectors).toBeGreaterThan(0);
    expect(assessment.marks.map(({ fact }) => fact.kind)).toContain("slides");
    expect(proof.report.results.length).toBeGreaterThan(20);
    expect(proof.workings.map(({ id }) => id)).toContain(proof.report.results.find(({ clause }) => clause)?.id);
  });

  it("prints scope and cautions as text, and names hazards of another edition by pointer", () => {
    const { out } = assessed(own, true);
    expect(out).toContain("(load path, and strength under all loads)");
    expect(out).toMatch(/WHAT GOVERNS EACH PART\n {2}\S+ /);
    expect(out).toMatch(/NOT JUDGED\n {2}\S/);
    for (const caution of cautions) expect(out).toContain(caution);
    const wind = { ...site.hazards.wind, edition: "IBC 2024" };
    const wrong = { ...own, basis: { ...own.basis, hazards: { ...site.hazards, wind } } };
    expect(assessed(wrong)).toMatchObject({ code: 1, out: "" });
    expect(assessed(wrong).err).toMatch(/^scheme\.json: \/basis\/hazards\/wind: /);
    expect(assessed(emptyScheme).err).toBe("scheme.json: /containers: there is no container\n");
  });
});

// A rating of a stock lock is never shown alone; steel without a record is 235 MPa, and 343 MPa counts only once it is proved.
describe("what the texts say beside a figure", () => {
  const told = [
    run(lockedStack, undefined, true).out,
    assessCommand("scheme.json", lockedStack, { asText: true, loadPathOnly: false }).out,
  ];

  it.each(told)("each lock has the sentence that it is no code-listed connector on its own line (text %#)", (text) => {
    const locks = text.split("\n").filter((line) => /^ {2}\S+ lock .*: lock (tension|shear) \d/.test(line));
    expect(locks).toHaveLength(4);
    for (const line of locks)
      expect(line).toMatch(/no code-listed connector.*needs a test or the engineer's own check/);
  });

  it.each(told)("a rail has its utilisation at 343 MPa, no more than at 235, called if proved (text %#)", (text) => {
    const rails = [...text.matchAll(/bottom side rail .*?: .*? ([\d.]+), if proved ([\d.]+)/g)];
    expect(rails.length).toBeGreaterThan(0);
    for (const [, use, proved] of rails) expect(Number(proved)).toBeLessThanOrEqual(Number(use));
  });
});
