import { describe, expect, it } from "vitest";
import { readAudit } from "../runner/audit.mjs";

// Forms of `npm audit --json`, report version 2, from its manual (from memory), cut to what is read.
const hole = (severity: string, fixAvailable: boolean | object) => ({ severity, range: "<1.2.3", fixAvailable });
const report = (vulnerabilities: object) => JSON.stringify({ auditReportVersion: 2, vulnerabilities });

describe("readAudit", () => {
  it("finds grave what is high or critical and has a mend", () => {
    const told = readAudit(report({ a: hole("critical", true), b: hole("high", { name: "c", version: "2.0.0" }) }));
    expect(told).toEqual({
      grave: ["a <1.2.3: critical, a mend is there", "b <1.2.3: high, a mend is there"],
      others: [],
    });
  });

  it("tells of lesser holes and of those without a mend, and does not fail for them", () => {
    const told = readAudit(report({ a: hole("moderate", true), b: hole("critical", false) }));
    expect(told).toEqual({
      grave: [],
      others: ["a <1.2.3: moderate, a mend is there", "b <1.2.3: critical, no mend yet"],
    });
  });

  it("never takes the want of a report for a clean one", () => {
    const refused = { message: "405 Method Not Allowed - POST /-/npm/v1/security/advisories/bulk", method: "POST" };
    expect(readAudit(JSON.stringify(refused))).toEqual({ why: refused.message });
    for (const text of ["", "npm error", "null", "{}", "[]"]) expect(readAudit(text)).toHaveProperty("why");
  });
});
