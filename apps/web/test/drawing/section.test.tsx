import type { SectionLine } from "@cornerway/engine";
import { cleanup, fireEvent, render, screen } from "@testing-library/react";
import { afterEach, describe, expect, it } from "vitest";
import { SectionMark } from "../../src/drawing/section/SectionMark.tsx";
import { SectionView } from "../../src/drawing/section/SectionView.tsx";
import { SectionSlip } from "../../src/paper/SectionSlip.tsx";
import { firstLine } from "../../src/paper/section-line.ts";
import { layViews } from "../../src/paper/lay-views.ts";
import { demoScheme } from "../support/demo-scheme.ts";

afterEach(cleanup);

const across: SectionLine = { fromXMm: 6000, fromYMm: -3000, toXMm: 6000, toYMm: 9000 };
const field = { widthPx: 934, heightPx: 868 };

describe("a section on the sheet", () => {
  it("says what it cuts, and stands in the place of the picture at a scale of its own", () => {
    const views = layViews(field, demoScheme, "south", 0, { section: across });
    render(
      <svg>
        <SectionView scheme={demoScheme} line={across} transform={views.isometric.transform} />
      </svg>,
    );
    expect(screen.getByRole("img").getAttribute("aria-label")).toMatch(/^Section through G1, .*F1/);
    expect(views.isometric.rect).toEqual(layViews(field, demoScheme, "south", 0).isometric.rect);
  });

  it("says that a line beside the building cuts nothing", () => {
    const beside = { ...across, fromXMm: 90_000, toXMm: 90_000 };
    render(
      <svg>
        <SectionView scheme={demoScheme} line={beside} transform={{ originXPx: 0, originYPx: 400, pxPerM: 20 }} />
      </svg>,
    );
    expect(screen.getByRole("img").getAttribute("aria-label")).toBe("Section: the line cuts no container");
  });

  it("has a line whose ends move by the arrow keys, 100 mm or a metre at a time, and never onto each other", () => {
    const lines: SectionLine[] = [];
    render(
      <svg>
        <SectionMark
          line={across}
          view={{ originXPx: 0, originYPx: 400, pxPerM: 20 }}
          onLine={(line) => lines.push(line)}
        />
      </svg>,
    );
    const end = screen.getByRole("button", { name: /^First end/ });
    fireEvent.keyDown(end, { key: "ArrowRight" });
    fireEvent.keyDown(end, { key: "ArrowDown", shiftKey: true });
    expect(lines).toEqual([
      { ...across, fromXMm: 6100 },
      { ...across, fromYMm: -4000 },
    ]);
  });

  it("has a typed twin", async () => {
    const lines: (SectionLine | null)[] = [];
    render(<SectionSlip scheme={demoScheme} storey={0} line={across} onLine={(line) => lines.push(line)} />);
    fireEvent.input(screen.getByLabelText("To, east, m"), { target: { value: "7.25" } });
    fireEvent.click(screen.getByRole("button", { name: "Cut along this line" }));
    await expect.poll(() => lines).toEqual([{ ...across, toXMm: 7250 }]);
    fireEvent.click(screen.getByRole("button", { name: "Along the building" }));
    expect(lines.at(-1)).toEqual(firstLine(demoScheme, "y", 0));
    fireEvent.click(screen.getByRole("button", { name: "Put the section away" }));
    expect(lines.at(-1)).toBeNull();
  });

  it("begins with a line inside what the plan shows", () => {
    const line = firstLine(demoScheme, "x", 0);
    const { plan } = layViews(field, demoScheme, "south", 0);
    const y = plan.transform.originYPx - ((line?.fromYMm ?? 0) * plan.transform.pxPerM) / 1000;
    expect(y).toBeLessThan(plan.rect.topPx + plan.rect.heightPx);
  });
});
