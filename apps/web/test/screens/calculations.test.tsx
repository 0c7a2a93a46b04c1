import { cleanup, render, screen, within } from "@testing-library/react";
import { afterEach, describe, expect, it, vi } from "vitest";
import { CalculationsPage, type CalculationsPageProps } from "../../src/screens/calculations/CalculationsPage.tsx";
import { NoCalculations } from "../../src/screens/calculations/NoCalculations.tsx";
import { judgedAssessment, judgedProof, judgedScheme } from "../support/judged-unit.ts";

afterEach(cleanup);

const { report } = judgedProof;

function laid(report = judgedProof.report) {
  const { strength } = judgedAssessment;
  if (strength === undefined) throw new Error("strength was judged");
  const onOpen = vi.fn<CalculationsPageProps["onOpen"]>();
  const given = { assessment: judgedAssessment, scheme: judgedScheme, letter: "A", strength, report, onOpen };
  const { container } = render(<CalculationsPage {...given} />);
  for (const fold of container.querySelectorAll("details")) fold.open = true;
  return { onOpen, container, strength };
}

describe("the calculations of a revision", () => {
  it("give every part its row with a way to its working, by kind of part, the fullest first", () => {
    const { onOpen } = laid();
    const tables = screen.getAllByRole("region", { name: /^Governing checks, / });
    const kinds = [...new Set(report.results.map(({ part }) => part))];
    expect(tables.map((table) => table.getAttribute("aria-label"))).toEqual(
      kinds.map((part) => `Governing checks, ${part}`),
    );
    const ways = tables.flatMap((table) => within(table).getAllByRole("button"));
    expect(ways).toHaveLength(report.results.length);
    const [first] = ways;
    const [fullest] = report.results;
    first?.click();
    expect(onOpen).toHaveBeenCalledWith(fullest?.ownerId, fullest?.id);
  });

  it("derive every load of the place, and say that wind, snow and earthquake are not entered", () => {
    const { onOpen } = laid();
    for (const { title } of report.loads)
      expect(screen.getAllByRole("button", { name: title }).length).toBeGreaterThan(0);
    expect(screen.getByText(/gravity alone/)).toBeTruthy();
    screen.getAllByRole("button", { name: report.loads[0]?.title ?? "" })[0]?.click();
    expect(onOpen).toHaveBeenCalledWith("", report.loads[0]?.id);
  });

  it("list every combination, every set of the envelope, and every limit state with what is not run", () => {
    const { strength } = laid();
    for (const { text } of report.combinations)
      expect(screen.getAllByRole("rowheader", { name: text }).length).toBeGreaterThan(0);
    const envelope = within(screen.getByRole("region", { name: "Envelope" }));
    for (const { assumptions } of strength.envelope)
      expect(envelope.getByRole("rowheader", { name: assumptions })).toBeTruthy();
    const coverage = within(screen.getByRole("region", { name: /^Coverage/ }));
    const checks = [...new Set(report.coverage.map(({ check }) => check))];
    expect(coverage.getAllByRole("rowheader").map(({ textContent }) => textContent)).toEqual(checks);
  });

  it("let every wide table be scrolled by keyboard under a name", () => {
    const { container } = laid();
    for (const table of container.querySelectorAll("table")) {
      const scroll = table.closest(".page-scroll");
      expect(scroll?.getAttribute("tabindex")).toBe("0");
      expect(scroll?.getAttribute("aria-label")).toBeTruthy();
    }
  });
});

describe("what stands beside a figure", () => {
  it("is that a stock lock is no code-listed connector, in the table of the locks alone", () => {
    const results = report.results.map((result, at) => (at === 0 ? { ...result, part: "lock" } : result));
    const { container } = laid({ ...report, results });
    const said = [...container.querySelectorAll("details")].filter(({ textContent }) =>
      textContent?.includes("no code-listed connector"),
    );
    expect(said.map((fold) => fold.querySelector("b")?.textContent)).toEqual(["lock"]);
  });

  it("is each limit of the wind procedure with its number, and what stands in where one does not hold", () => {
    const clause = { document: "ASCE/SEI 7", edition: "16", place: "27.1.2", certainty: "memory" } as const;
    laid({
      ...report,
      windLimits: [
        { limit: "closed below", holds: false, value: 0.37, most: 0, unit: "1", clause },
        { limit: "one block", holds: true, value: 1, most: 1, unit: "1", clause },
      ],
    });
    const table = within(screen.getByRole("region", { name: "Limits of the wind procedure" }));
    const row = table.getByRole("rowheader", { name: "closed below" }).closest("tr");
    expect(row?.textContent).toMatch(/does not hold: the enclosing box stands in.*0\.37.*27\.1\.2/);
    expect(table.getAllByText("holds")).toHaveLength(1);
  });
});

describe("where there are no calculations", () => {
  it("the owner is told where it stands in plain words, with no figure of force", () => {
    const { container } = render(<NoCalculations letter="A" result={judgedAssessment} owner />);
    expect(container.textContent).toMatch(/sheet 5/);
    expect(container.textContent).not.toMatch(/kN|kip|MPa/);
  });

  it("says why: nothing sent, not checked yet, hazards refused, checked before strength was judged", () => {
    const { strength: _, ...pathOnly } = judgedAssessment;
    const words = [
      <NoCalculations key="1" letter={null} result={null} owner={false} />,
      <NoCalculations key="2" letter="A" result={null} owner={false} />,
      <NoCalculations
        key="3"
        letter="A"
        result={{ ...pathOnly, strengthRefused: ["wind of IBC 2024"] }}
        owner={false}
      />,
      <NoCalculations key="4" letter="A" result={pathOnly} owner={false} />,
    ].map((each) => {
      const { container } = render(each);
      return container.textContent ?? "";
    });
    const expected = [/has sent a revision/, /not checked yet/, /wind of IBC 2024/, /before strength was judged/];
    for (const [at, pattern] of expected.entries()) expect(words[at]).toMatch(pattern);
  });
});
