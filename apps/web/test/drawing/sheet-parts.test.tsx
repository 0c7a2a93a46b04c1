import { cautionLine, cautions, type Disposition } from "@cornerway/schema";
import { cleanup, fireEvent, render, screen, within } from "@testing-library/react";
import { afterEach, describe, expect, it, vi } from "vitest";
import { LeaderLayer } from "../../src/sheet/LeaderLayer.tsx";
import { LevelStrip } from "../../src/sheet/LevelStrip.tsx";
import { NotesMargin } from "../../src/sheet/NotesMargin.tsx";
import { ReviewStamp } from "../../src/sheet/ReviewStamp.tsx";
import { Slip } from "../../src/sheet/Slip.tsx";
import { TitleBlock } from "../../src/sheet/TitleBlock.tsx";
import { Tray } from "../../src/sheet/Tray.tsx";
import type {
  LevelStripProps,
  NotesMarginProps,
  SheetNote,
  TitleBlockProps,
  TrayProps,
} from "../../src/sheet/contract.ts";

afterEach(cleanup);

const titleBlock: TitleBlockProps = {
  projectName: "Sluice Row Workshop",
  subtitle: "Two Bridges Trust · Fenquill",
  sheet: 1,
  scale: "as noted",
  date: "10 Mar 2027",
  revision: "C",
  verdict: "does not work",
  onSheet: () => undefined,
};

describe("the title block", () => {
  it("always holds the caution line, which opens the five cautions and closes with Escape", () => {
    render(<TitleBlock {...titleBlock} />);
    const line = screen.getByRole("button", { name: cautionLine });
    const list = () => screen.queryAllByRole("listitem").map((item) => item.textContent);
    expect(list()).toEqual([]);
    fireEvent.click(line);
    expect(list()).toEqual([...cautions]);
    fireEvent.keyDown(line, { key: "Escape" });
    expect(list()).toEqual([]);
  });

  it("turns to a sheet that is there, and not to one asleep, which says why", () => {
    const onSheet = vi.fn<TitleBlockProps["onSheet"]>();
    render(<TitleBlock {...titleBlock} onSheet={onSheet} asleepSheets={new Map([[4, "Compare is not drawn yet"]])} />);
    fireEvent.click(screen.getByRole("button", { name: /Review/ }));
    fireEvent.click(screen.getByRole("button", { name: /Compare/ }));
    expect(onSheet.mock.calls).toEqual([[3]]);
    expect(screen.getByRole("button", { name: /Compare/ }).getAttribute("title")).toBe("Compare is not drawn yet");
  });

  it("says the verdict in words beside its shape", () => {
    render(<TitleBlock {...titleBlock} verdict="needs the engineer" />);
    expect(screen.getByText("Needs the engineer").parentElement?.querySelector("svg")).not.toBeNull();
  });
});

describe("the tray", () => {
  it("gives a tool into the hand and takes it back", () => {
    const onTake = vi.fn<TrayProps["onTake"]>();
    const { rerender } = render(<Tray inHand={null} onTake={onTake} />);
    fireEvent.click(screen.getByRole("button", { name: "Cut" }));
    rerender(<Tray inHand="cut" onTake={onTake} />);
    fireEvent.click(screen.getByRole("button", { name: "Cut" }));
    expect(onTake.mock.calls).toEqual([["cut"], [null]]);
  });

  it("asleep, keeps its six tools in reach, says why and gives none", () => {
    const onTake = vi.fn<TrayProps["onTake"]>();
    render(<Tray inHand={null} onTake={onTake} asleepBecause="Only the architect draws" />);
    const tools = screen.getAllByRole("button");
    expect(tools).toHaveLength(6);
    for (const tool of tools) {
      expect(tool.getAttribute("aria-label")).toMatch(/\. Only the architect draws$/);
      expect(tool.hasAttribute("disabled")).toBe(false);
      fireEvent.click(tool);
    }
    expect(onTake).not.toHaveBeenCalled();
  });
});

describe("the level strip", () => {
  it("cuts the plan at the level chosen, and never at the roof", () => {
    const onChoose = vi.fn<LevelStripProps["onChoose"]>();
    render(
      <LevelStrip
        levels={[
          { storey: 0, name: "Ground", zMm: 0, yPx: 400 },
          { storey: null, name: "Roof", zMm: 2896, yPx: 255 },
        ]}
        chosenStorey={null}
        onChoose={onChoose}
      />,
    );
    fireEvent.click(screen.getByRole("button", { name: /Roof/ }));
    fireEvent.click(screen.getByRole("button", { name: /Ground/ }));
    expect(onChoose.mock.calls).toEqual([[0]]);
    expect(screen.getByRole("button", { name: /Roof/ }).textContent).toContain("+2.896");
  });
});

describe("a note", () => {
  const note: SheetNote = {
    number: 2,
    markIds: ["m"],
    verdict: "does not work",
    screening: true,
    body: "D3 is cut where the load of T1 comes down. Nothing is left beneath it.",
    comments: [
      {
        id: "1",
        text: "Could the post be the jamb?",
        authorName: "A. Vale",
        role: "engineer",
        at: "11 Mar 16:20",
        settled: false,
      },
      {
        id: "2",
        text: "Settled long ago.",
        authorName: "I. Brook",
        role: "architect",
        at: "2 Mar 09:00",
        settled: true,
      },
    ],
    anchor: null,
  };

  it("is a section named by its verdict, and says that it is screening until an engineer has answered", () => {
    const { rerender } = render(<NotesMargin heading="Notes" notes={[note]} />);
    const section = screen.getByRole("region", { name: /Does not work screening/ });
    expect(section.id).toBe("note-2");
    rerender(<NotesMargin heading="Notes" notes={[{ ...note, screening: false }]} />);
    expect(screen.queryByText("screening")).toBeNull();
  });

  it("sets people's words apart in the colour of their role, and folds what is settled to a count", () => {
    render(<NotesMargin heading="Notes" notes={[note]} />);
    expect(screen.getByText("Could the post be the jamb?").closest("blockquote")?.className).toContain("hand-engineer");
    expect(
      within(screen.getByText("1 settled").closest("details") ?? document.body).getByText("Settled long ago."),
    ).toBeTruthy();
  });
});

describe("many notes in the margin", () => {
  const noteOf = (number: number): SheetNote => ({
    ...{ number, markIds: [`m${number}`], verdict: "does not work", screening: true },
    ...{ body: `T${number} tips over.`, comments: [], anchor: null },
  });
  const isFolded = (count: number): boolean => {
    const notes = Array.from({ length: count }, (_, index) => noteOf(index + 1));
    render(<NotesMargin heading={`${count} notes`} notes={notes} />);
    return screen.getByRole("region", { name: `${count} notes` }).classList.contains("notes-dense");
  };

  it("stand folded, four stand in full", () => {
    expect(isFolded(5)).toBe(true);
    expect(isFolded(4)).toBe(false);
  });
});

describe("the heights the margin tells for its leaders", () => {
  /** Each note's number stands 100 px lower for every slip laid before it. */
  function layOut() {
    const box = (top: number) => new DOMRect(1092, top, 24, 24);
    return vi.spyOn(HTMLElement.prototype, "getBoundingClientRect").mockImplementation(function (this: HTMLElement) {
      if (this.classList.contains("notes-scroll")) return new DOMRect(1084, 60, 340, 500);
      return this.dataset["noteNumber"] === undefined
        ? new DOMRect(0, 0, 1440, 900)
        : box(100 * (1 + document.querySelectorAll(".slip").length));
    });
  }
  const note: SheetNote = {
    number: 1,
    markIds: ["m"],
    verdict: "works as built",
    screening: true,
    body: "F3 stands on G3.",
    comments: [],
    anchor: null,
  };

  it("are told again when a slip moves the notes down, and left out when it moves them out of sight", async () => {
    const spy = layOut();
    const onSlots = vi.fn<NonNullable<NotesMarginProps["onSlots"]>>();
    const margin = (slips: number) => (
      <div className="sheet">
        <NotesMargin
          heading="Notes"
          notes={[note]}
          onSlots={onSlots}
          slip={Array.from({ length: slips }, (_, index) => (
            <Slip key={index} label="Not drawn">
              D1 is in the way.
            </Slip>
          ))}
        />
      </div>
    );
    const { rerender } = render(margin(0));
    rerender(margin(1));
    await vi.waitFor(() => expect(onSlots).toHaveBeenCalledTimes(2));
    rerender(margin(5));
    await vi.waitFor(() => expect(onSlots).toHaveBeenCalledTimes(3));
    expect(onSlots.mock.calls.map(([slots]) => slots.map(({ yPx }) => yPx))).toEqual([[112], [212], []]);
    spy.mockRestore();
  });
});

describe("the leaders of a sheet", () => {
  const anchors = [
    { number: 1, xPx: 600, yPx: 290, end: "dot" as const },
    { number: 2, xPx: 600, yPx: 250, end: "dot" as const },
  ];
  const slots = [
    { number: 1, xPx: 1084, yPx: 100 },
    { number: 2, xPx: 1084, yPx: 400 },
  ];
  const numbers = (chosenNumber: number | null, ends: readonly (typeof anchors)[number][] = anchors) => {
    cleanup();
    const { container } = render(
      <svg>
        <LeaderLayer anchors={ends} slots={slots} chosenNumber={chosenNumber} />
      </svg>,
    );
    return [...container.querySelectorAll("g:not(.number-when-narrow) > text")].map((text) => text.textContent);
  };

  it("leave the number of a note on the drawing where its leader would cross, and draw it while the note is chosen", () => {
    const alone = numbers(null);
    expect(alone).toHaveLength(1);
    expect(numbers(Number(alone[0]))).toEqual([]);
  });

  it("leave it there too where the leader would fall more than 200 px across the drawing", () => {
    expect(numbers(null, [{ number: 1, xPx: 600, yPx: 300, end: "dot" }])).toEqual([]);
    expect(numbers(null, [{ number: 1, xPx: 600, yPx: 301, end: "dot" }])).toEqual(["1"]);
  });

  it("leave it there too where the leader would run over more than 52 % of the sheet", () => {
    // The margin begins at 1,084 px: 0.52 × 1,084 = 563.7, so that the farthest end stands at 520.3.
    expect(numbers(null, [{ number: 1, xPx: 521, yPx: 100, end: "dot" }])).toEqual([]);
    expect(numbers(null, [{ number: 1, xPx: 520, yPx: 100, end: "dot" }])).toEqual(["1"]);
  });
});

describe("the review stamp", () => {
  const next = { "No exceptions taken": "a", "Make corrections noted": "b", "Revise and resubmit": "c", Rejected: "d" };
  const choosing = {
    state: "choosing",
    revision: "C",
    subject: "Revision C",
    chosen: null,
    next,
    signer: "Anna Vale",
    text: "",
    onText: () => undefined,
  } as const;

  it("is not pressed before something is chosen, and lets nothing asleep be chosen", () => {
    const onChoose = vi.fn<(disposition: Disposition) => void>();
    const onPress = vi.fn<() => void>();
    render(
      <ReviewStamp
        {...choosing}
        asleepBecause={{ "No exceptions taken": "No strength is judged yet." }}
        onChoose={onChoose}
        onPress={onPress}
      />,
    );
    fireEvent.click(screen.getByRole("button", { name: "Press the stamp" }));
    fireEvent.click(screen.getByRole("radio", { name: /No exceptions taken/ }));
    fireEvent.click(screen.getByRole("radio", { name: /Rejected/ }));
    expect(onPress).not.toHaveBeenCalled();
    expect(onChoose.mock.calls).toEqual([["Rejected"]]);
  });

  it("once pressed is a picture that says what it says", () => {
    render(
      <ReviewStamp
        state="pressed"
        disposition="Revise and resubmit"
        revision="B"
        date="24 Feb 2027"
        signer="A. Vale"
      />,
    );
    expect(
      screen.getByRole("img", { name: "Stamped: Revise and resubmit, revision B, 24 Feb 2027, A. Vale" }),
    ).toBeTruthy();
    expect(screen.queryByRole("button")).toBeNull();
  });
});
