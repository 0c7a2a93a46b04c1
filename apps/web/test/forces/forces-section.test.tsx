import { loadFlow, type RunForces } from "@cornerway/engine";
import { cleanup, render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, describe, expect, it, vi } from "vitest";
import { ChosenForces } from "../../src/forces/ChosenForces.tsx";
import { forcesLayer } from "../../src/forces/forces-layer.tsx";
import { ForcesSection } from "../../src/forces/ForcesSection.tsx";
import { judgedProof, judgedScheme } from "../support/judged-unit.ts";

afterEach(cleanup);

const flow = loadFlow(judgedScheme);
if (!flow.accepted) throw new Error("the sample is accepted");
const runs = flow.runs.map(({ id }) => id);
const run = runs[0] ?? "";
const found = flow.of({ run });
if (found === null) throw new Error("the sample stands");
const forces: RunForces = found;
const told = { scheme: judgedScheme, run, runs, asked: null, forces, why: null };

describe("where the load goes", () => {
  it("offers every sum in plain words, what governs first, and takes another", async () => {
    const choose = vi.fn<(run: string) => void>();
    render(<ForcesSection shown={{ told, stand: true, choose }} deflected={false} onDeflected={() => undefined} />);
    const choice = screen.getByLabelText("Stroke width is force in");
    const options = within(choice).getAllByRole("option");
    expect(options).toHaveLength(runs.length);
    expect(options[0]?.textContent).toMatch(/^Dead load at its heaviest.*governs$/);
    await userEvent.selectOptions(choice, runs[1] ?? "");
    expect(choose).toHaveBeenCalledWith(runs[1]);
  });

  it("tells what each pad or the ground gives and, on request, how far it moves", async () => {
    const onDeflected = vi.fn<(drawn: boolean) => void>();
    render(
      <ForcesSection
        shown={{ told, stand: true, choose: vi.fn<(run: string) => void>() }}
        deflected={false}
        onDeflected={onDeflected}
      />,
    );
    const given = forces.reactions.reduce((sum, { upKn }) => sum + upKn, 0);
    expect(screen.getByText(`The ground gives ${Math.round(given)} kN in all`)).toBeTruthy();
    await userEvent.click(screen.getByLabelText(/Draw the deflected shape; at most .* mm, on/));
    expect(onDeflected).toHaveBeenCalledWith(true);
  });

  it("says that it waits, and why nothing can be told", () => {
    const shown = { told, stand: false, choose: vi.fn<(run: string) => void>() };
    const { rerender } = render(<ForcesSection shown={shown} deflected={false} onDeflected={() => undefined} />);
    expect(screen.getByRole("status").textContent).toContain("Being solved");
    const broken = { ...shown, told: { ...told, forces: null, why: "no hazards" } };
    rerender(<ForcesSection shown={broken} deflected={false} onDeflected={() => undefined} />);
    expect(screen.getByText(/no hazards/)).toBeTruthy();
  });
});

describe("forces of what is chosen", () => {
  it("stand with the check that governs each member; its working opens by keyboard", async () => {
    const onOpen = vi.fn<(elementId: string, checkId: string) => void>();
    const given = { forces, scheme: judgedScheme, report: judgedProof.report, chosenId: "g1", onOpen };
    render(<ChosenForces {...given} />);
    const [first] = screen.getAllByRole("button", { name: /^Working: / });
    first?.focus();
    await userEvent.keyboard("{Enter}");
    const [owner, checkId] = onOpen.mock.calls[0] ?? [];
    expect(owner).toBe("g1");
    expect(judgedProof.report.results.map(({ id }) => id)).toContain(checkId);
  });
});

describe("the layer on the views", () => {
  it("draws the deflected shape on elevations, what a plan cuts as rounds, and nothing where nothing was solved", () => {
    const on = { of: judgedScheme, stand: true, deflected: true };
    const layer = forcesLayer(forces, on);
    const place = { transform: { originXPx: 0, originYPx: 0, pxPerM: 40 }, scheme: judgedScheme };
    const cut = { ...place, view: "plan", cutMm: 1200 } as const;
    const plan = render(<svg>{layer?.ink(cut)}</svg>);
    // one unit on the ground: its four posts
    expect(plan.container.querySelectorAll(".cut-rounds circle")).toHaveLength(4);
    expect(plan.container.querySelector(".deflected")).toBeNull();
    expect(layer?.figures(cut, "SI").map(({ text }) => text)).toEqual(
      Array<unknown>(4).fill(expect.stringMatching(/^\d+ kN$/)),
    );
    const { container } = render(<svg>{layer?.ink({ ...place, view: "elevation", side: "south" })}</svg>);
    expect(container.querySelectorAll(".deflected path").length).toBeGreaterThan(3);
    expect(container.querySelector(".deflected text")?.textContent).toMatch(/mm, drawn .* times (larger|smaller)$/);
    expect(forcesLayer(null, on)).toBeUndefined();
  });
});
