import { render, screen, within } from "@testing-library/react";
import type { Working } from "@cornerway/engine";
import { describe, expect, it } from "vitest";
import { figure } from "../../src/working/figure.ts";
import { Formula } from "../../src/working/Formula.tsx";
import { WorkingSheet } from "../../src/working/WorkingSheet.tsx";

describe("figure", () => {
  it.each([
    [0, "0"],
    [0.9, "0.9"],
    [349.8552, "349.9"],
    [-0.23, "−0.23"],
    [2900, "2900"],
    [66_600, "66 600"],
    [1_234_567, "1 234 567"],
    [20_500_000, "2.05 × 10⁷"],
    [0.000_012_34, "1.234 × 10⁻⁵"],
    [1.0999, "1.1"],
  ])("prints %d as %s", (value, text) => expect(figure(value)).toBe(text));
});

const mathOf = (text: string) => {
  const { container } = render(<Formula of={text} />);
  return container.querySelector("math")?.innerHTML.replaceAll("\u2062", "·").replaceAll("\u2061", "") ?? "";
};

describe("Formula", () => {
  it.each([
    ["a/b", "<mfrac><mi>a</mi><mi>b</mi></mfrac>"],
    ["F_cr", "<msub><mi>F</mi><mtext>cr</mtext></msub>"],
    ["sqrt(E/F_y)", "<msqrt><mfrac><mi>E</mi><msub><mi>F</mi><mi>y</mi></msub></mfrac></msqrt>"],
    [
      "(a + b)^2",
      "<msup><mrow><mo>(</mo><mrow><mi>a</mi><mo>+</mo><mi>b</mi></mrow><mo>)</mo></mrow><mn>2</mn></msup>",
    ],
    ["2 * 3", "<mrow><mn>2</mn><mo>×</mo><mn>3</mn></mrow>"],
    ["0.9*F", "<mrow><mn>0.9</mn><mo>·</mo><mi>F</mi></mrow>"],
    [
      "a - (b + c)",
      "<mrow><mi>a</mi><mo>−</mo><mrow><mo>(</mo><mrow><mi>b</mi><mo>+</mo><mi>c</mi></mrow><mo>)</mo></mrow></mrow>",
    ],
    ["min(a, b)", "<mrow><mi>min</mi><mo></mo><mo>(</mo><mi>a</mi><mo>,</mo><mi>b</mi><mo>)</mo></mrow>"],
    ["-a^2", "<mrow><mo>−</mo><msup><mi>a</mi><mn>2</mn></msup></mrow>"],
  ])("sets %s", (text, math) => expect(mathOf(text)).toBe(`<mrow>${math}</mrow>`));

  it("sets two numbers apart that a fraction ends or begins", () => {
    expect(mathOf("3 * (1 / 2)")).toContain("<mo>×</mo>");
  });
});

// AISC 360-16 E3, equation E3-4, put in by hand: π²·200000/(2900/38.6)² = 349.7 MPa.
const working: Working = {
  title: "Elastic buckling stress",
  clause: { document: "AISC 360", edition: "16", place: "E3", certainty: "memory" },
  certainty: "memory",
  symbols: [
    { symbol: "L_c", meaning: "effective length", value: 2900, unit: "mm", certainty: "derived" },
    { symbol: "r", meaning: "radius of gyration", value: 38.6, unit: "mm", source: "AISC Manual", certainty: "memory" },
  ],
  steps: [
    {
      kind: "value",
      ...{ symbol: "F_e", formula: "π^2*200000/(L_c/r)^2", substituted: "π^2 * 200000 / (2900 / 38.6)^2" },
      ...{ result: 349.7, unit: "MPa", place: "Eq. E3-4" },
    },
    {
      kind: "condition",
      ...{ left: "L_c/r", relation: "<=", right: "60", leftValue: 75.13, rightValue: 60, holds: false },
    },
  ],
  result: { symbol: "F_e", value: 349.7, unit: "MPa" },
  limit: { symbol: "F_y", value: 345, unit: "MPa" },
  utilisation: 0.15,
  notes: ["Both ends are taken as pinned."],
  parts: [],
};

describe("WorkingSheet", () => {
  it("shows what enters with its source and certainty, the lines, the clause, the result against its limit", () => {
    render(<WorkingSheet working={working} number="27.1" />);
    const section = within(screen.getByRole("region", { name: "27.1 Elastic buckling stress" }));
    expect(section.getByText("AISC Manual, from memory")).toBeTruthy();
    expect(section.getByText(/from memory, confirm against the text/)).toBeTruthy();
    expect(section.getByText("Eq. E3-4")).toBeTruthy();
    expect(section.getByText("0.15")).toBeTruthy();
    expect(section.getByText(/349\.7 MPa\s*of\s*345 MPa/)).toBeTruthy();
    expect(section.getByText("Both ends are taken as pinned.")).toBeTruthy();
  });

  it("writes a condition that does not hold as what is true: 75.13 is more than 60", () => {
    const { container } = render(<WorkingSheet working={working} number="27.1" />);
    const lines = [...container.querySelectorAll(".working-lines math")].map((line) => line.textContent);
    expect(lines[1]).toBe("Lcr=75.13>60");
  });

  it("puts calculations whose results enter before it, numbered under it", () => {
    const whole = { ...working, parts: [{ ...working, title: "Slenderness" }] };
    const { container } = render(<WorkingSheet working={whole} number="3" />);
    const titles = [...container.querySelectorAll("h3")].map(({ textContent }) => textContent);
    expect(titles).toEqual(["Slenderness", "Elastic buckling stress"]);
    expect(screen.getByRole("region", { name: "3.1 Slenderness" })).toBeTruthy();
  });
});
