import { cleanup, render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import type { Operation } from "@cornerway/schema";
import { afterEach, describe, expect, it } from "vitest";
import { RemediesSlip } from "../../src/remedies/RemediesSlip.tsx";
import type { RemediesSoFar } from "../../src/worker/remedy-run.ts";
import { demoScheme } from "../support/demo-scheme.ts";
import { lockedAtFour } from "./locked-at-four.ts";

const apart = { ...lockedAtFour, id: "apart", verdict: "needs the engineer" as const, premium: null, less: null };
const so: RemediesSoFar = {
  ...{ markId: "tips-over:t1", scheme: demoScheme, found: [lockedAtFour, apart], list: null, proving: null },
  ...{ done: 2, of: 2, state: "searching", broke: null },
};

function laid(
  over: Partial<RemediesSoFar> = {},
  {
    pricesSeen = true,
    plain = false,
    asleepBecause,
  }: { pricesSeen?: boolean; plain?: boolean; asleepBecause?: string } = {},
) {
  const taken: Operation[][] = [];
  const pressed: string[] = [];
  render(
    <RemediesSlip
      so={{ ...so, ...over }}
      name="T1"
      pricesSeen={pricesSeen}
      plain={plain}
      take={{ label: "Draw it so", onTake: (operations) => void taken.push(operations), asleepBecause }}
      onStop={() => void pressed.push("stop")}
      onAgain={() => void pressed.push("again")}
      onClose={() => void pressed.push("close")}
    />,
  );
  return { taken, pressed };
}

afterEach(cleanup);

describe("the ways for a mark", () => {
  it("say what is done, how it then stands, what it takes, and that less does not do", () => {
    laid();
    const way = screen.getByRole("region", { name: /^Way a\./ });
    expect(way.textContent).toContain("Hold T1 down at four bearings with welded plates.");
    expect(way.textContent).toContain("Works with steel");
    expect(way.textContent).toContain("Under gravity alone; wind and earthquake not checked.");
    expect(way.textContent).toContain("11 kg");
    expect(way.textContent).toContain("$760");
    expect(way.textContent).toContain("for show");
    expect(way.textContent).toContain("0.42 of it, 0.40 to 0.42 by assumption");
    expect(way.textContent).toContain("Less does not do: hold T1 down at two bearings with stock locks.");
    expect(way.textContent).toContain("Still open after it");
  });

  it("set what is for the engineer apart, under its own heading, without a price", () => {
    laid();
    expect(screen.getByRole("heading", { name: "Needs the engineer, without a price" })).not.toBeNull();
    const way = screen.getByRole("region", { name: /^Way b\./ });
    expect(within(way).queryByText(/\$/)).toBeNull();
  });

  it("draw a way as one act", async () => {
    const { taken } = laid();
    await userEvent.click(screen.getAllByRole("button", { name: "Draw it so" })[0] ?? document.body);
    expect(taken).toEqual([lockedAtFour.operations]);
  });

  it("sleep where one may not draw, and say why", async () => {
    const { taken } = laid({}, { asleepBecause: "Only the architect draws." });
    const [button] = screen.getAllByRole("button", { name: /Draw it so/ });
    expect(button?.getAttribute("aria-disabled")).toBe("true");
    await userEvent.click(button ?? document.body);
    expect(taken).toEqual([]);
  });

  it("give an owner no parts and whoever sees no prices no money", () => {
    laid({}, { pricesSeen: false, plain: true });
    const way = screen.getByRole("region", { name: /^Way a\./ });
    expect(way.textContent).not.toContain("rail");
    expect(way.textContent).not.toContain("$");
  });

  it("may be left while they are searched, and looked for again", async () => {
    const { pressed } = laid({ proving: lockedAtFour.change, done: 1, of: 4 });
    expect(screen.getByRole("status").textContent).toContain("Kind 2 of 4: Hold T1 down");
    await userEvent.click(screen.getByRole("button", { name: "Leave the search" }));
    expect(pressed).toEqual(["stop"]);
  });

  it("name what has to stand first, where nothing was looked for before it does", () => {
    laid({
      ...{ found: [], state: "searched", markId: "overhang:f1:door" },
      list: {
        ...{ markId: "overhang:f1:door", under: "gravity loads only", offered: [], apart: [], looked: 0, proved: 0 },
        ...{ leftOut: 0, failed: [], settleFirst: ["t1"] },
      },
    });
    expect(
      screen.getByText(
        "Nothing was looked for yet: T1 comes down on it and does not stand. Settle that first, then look again.",
      ),
    ).not.toBeNull();
  });

  it("send what strength notes of a unit that falls to what makes it stand", () => {
    laid({
      ...{ found: [], state: "searched", markId: "uplift:t1" },
      list: {
        ...{ markId: "uplift:t1", under: "gravity loads only", offered: [], apart: [], looked: 0, proved: 0 },
        ...{ leftOut: 0, failed: [], settleFirst: ["t1"] },
      },
    });
    expect(
      screen.getByText(
        "Nothing was looked for yet: T1 does not stand, and this goes with what makes it stand. Settle that first, then look again.",
      ),
    ).not.toBeNull();
  });

  it("say so where nothing was found", () => {
    laid({
      ...{ found: [], state: "searched" },
      list: {
        ...{ markId: so.markId, under: "gravity loads only", offered: [], apart: [], looked: 1, proved: 0, leftOut: 0 },
        failed: [{ change: lockedAtFour.change, also: [], why: { kind: "does not settle it" } }],
      },
    });
    expect(screen.getByRole("heading", { name: "No way found for T1" })).not.toBeNull();
    expect(screen.getByText("1 that do not do")).not.toBeNull();
  });

  it("leave it to the engineer where no change of the drawing is known that would settle it", () => {
    const none = { offered: [], apart: [], failed: [], looked: 0, proved: 0, leftOut: 0 };
    laid({
      ...{ found: [], state: "searched" },
      list: { markId: so.markId, under: "gravity loads only", ...none },
    });
    const words = "No change of the drawing is known that would settle it: it is the engineer's to settle.";
    expect(screen.getByText(words)).not.toBeNull();
  });
});
