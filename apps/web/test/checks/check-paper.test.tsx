import { QueryClient, QueryClientProvider } from "@tanstack/react-query";
import { cautionLine, type CheckWorking } from "@cornerway/schema";
import { cleanup, render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, describe, expect, it, vi } from "vitest";
import CheckPaper, { type CheckPaperProps } from "../../src/checks/CheckPaper.tsx";
import type { CheckSource } from "../../src/checks/check-source.ts";
import { checkWord, ownChecks } from "../../src/checks/own-checks.ts";
import { judgedProof, judgedScheme } from "../support/judged-unit.ts";

afterEach(cleanup);

const { report, workings } = judgedProof;
const [fullest] = report.results;
if (fullest === undefined) throw new Error("something governs");

function source(fetchWorking: CheckSource["fetchWorking"] = fetched): CheckSource {
  return { report, scheme: judgedScheme, key: ["test", Math.random()], fetchWorking };
}
const fetched = (id: string): Promise<CheckWorking | null> =>
  Promise.resolve(workings.find((kept) => kept.id === id)?.working ?? null);

function laid(given: CheckSource, checkId: string | null = null, deflectedIn?: CheckPaperProps["deflectedIn"]) {
  const onCheck = vi.fn<CheckPaperProps["onCheck"]>();
  const onClose = vi.fn<CheckPaperProps["onClose"]>();
  render(
    <QueryClientProvider client={new QueryClient({ defaultOptions: { queries: { retry: false } } })}>
      <CheckPaper source={given} elementId="g1" {...{ checkId, deflectedIn, onCheck, onClose }} />
    </QueryClientProvider>,
  );
  return { onCheck, onClose, paper: within(screen.getByRole("dialog")) };
}

describe("the working of a check", () => {
  it("opens at the fullest check of the element: run, assumptions, envelope, certainty, calculation, cautions", async () => {
    const { paper } = laid(source());
    expect(paper.getByText(fullest.run)).toBeTruthy();
    for (const { assumptions } of fullest.envelope)
      expect(paper.getByRole("rowheader", { name: assumptions })).toBeTruthy();
    if (fullest.ifProved !== undefined) expect(paper.getByText(/343 MPa/)).toBeTruthy();
    expect(paper.getByText(cautionLine)).toBeTruthy();
    const title = workings.find(({ id }) => id === fullest.id)?.working.title ?? "";
    expect(await paper.findByRole("heading", { name: title })).toBeTruthy();
  });

  it("turns through the checks of the element, and takes itself away with Escape", async () => {
    const { paper, onCheck, onClose } = laid(source());
    const own = ownChecks(report, judgedScheme, "g1");
    const [, second] = own;
    await userEvent.selectOptions(paper.getByLabelText(/Checks here/), second?.id ?? "");
    expect(onCheck).toHaveBeenCalledWith(second?.id);
    screen.getByRole("dialog").focus();
    await userEvent.keyboard("{Escape}");
    expect(onClose).toHaveBeenCalledOnce();
  });

  it("has the way to the part deflected under its governing run, and takes itself away for it", async () => {
    const drawn = vi.fn<(run: string) => void>();
    const { paper, onClose } = laid(source(), null, (run) => () => drawn(run));
    await userEvent.click(paper.getByRole("button", { name: "Draw G1 as it deflects under this run" }));
    expect(drawn).toHaveBeenCalledExactlyOnceWith(fullest.run);
    expect(onClose).toHaveBeenCalledOnce();
    cleanup();
    expect(laid(source(), null, () => undefined).paper.queryByRole("button", { name: /deflects/ })).toBeNull();
  });

  it("opens the derivation of a load under its name", async () => {
    const [load] = report.loads;
    const { paper } = laid(source(), load?.id);
    expect(await paper.findByRole("heading", { name: load?.title ?? "" })).toBeTruthy();
  });

  it("says that the scheme has moved on where the working is gone, and what went wrong where it cannot be fetched", async () => {
    expect(await laid(source(() => Promise.resolve(null))).paper.findByText(/moved on/)).toBeTruthy();
    cleanup();
    const broken = laid(source(() => Promise.reject(new Error("The line is down."))));
    expect(await broken.paper.findByRole("alert")).toBeTruthy();
  });
});

describe("checkWord", () => {
  const envelope = (...uses: (number | null)[]) =>
    uses.map((utilisation, n) => ({ assumptions: `set ${n}`, utilisation }));
  const base = { ...fullest, utilisation: 0.5, coverage: "checked", held: [], envelope: envelope(0.5) } as const;

  it.each([
    ["Works", base],
    ["Does not work", { ...base, utilisation: 1.4, envelope: envelope(1.2, 1.4) }],
    ["An assumption decides", { ...base, utilisation: 1.4, envelope: envelope(0.9, 1.4) }],
    ["Beyond its bound", { ...base, utilisation: 1.4, coverage: "bounded", envelope: envelope(1.4) }],
    ["Works once held", { ...base, held: ["g1"] }],
    ["Over once held", { ...base, utilisation: 2, held: ["g1"] }],
    ["Needs the engineer", { ...base, utilisation: null }],
  ] as const)("says %s", (word, result) => {
    expect(checkWord({ ...result, held: [...result.held], envelope: [...result.envelope] })).toBe(word);
  });
});
