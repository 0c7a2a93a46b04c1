import { cleanup, fireEvent, render, screen } from "@testing-library/react";
import type { Verdict } from "@cornerway/schema";
import { useState } from "react";
import { afterEach, describe, expect, it } from "vitest";
import { everyNote, isLookedFor } from "../../src/notes/note-filter.ts";
import { NoteFilters } from "../../src/notes/NoteFilters.tsx";
import type { NoteComment, SheetNote } from "../../src/sheet/contract.ts";

afterEach(cleanup);

const wrote = (authorName: string, settled: boolean): NoteComment => ({
  ...{ id: `${authorName} ${settled}`, text: "A word.", authorName, role: "engineer", at: "11 Mar 16:20", settled },
});

const note = (number: number, verdict: Verdict | null, comments: readonly NoteComment[] = []): SheetNote => ({
  ...{ number, markIds: [`m${number}`], verdict, screening: true, body: "", comments, anchor: null },
});

const notes = [
  note(1, "does not work"),
  note(2, "does not work", [wrote("Sabine Orrest", false)]),
  note(3, "works as built", [wrote("Sabine Orrest", true)]),
  note(4, "needs the engineer", [wrote("Emmet Quillon", true), wrote("Sabine Orrest", false)]),
  note(5, null, [wrote("Emmet Quillon", true)]),
];

function Margin() {
  const [filter, setFilter] = useState(everyNote);
  const left = notes.filter((each) => isLookedFor(each, filter));
  return (
    <>
      <NoteFilters notes={notes} left={left.length} filter={filter} onFilter={setFilter} />
      <p className="left">{left.map(({ number }) => number).join(" ")}</p>
    </>
  );
}

const left = () => document.querySelector(".left")?.textContent;
const press = (name: string) => fireEvent.click(screen.getByRole("button", { name }));
const choose = (label: string, value: string) => fireEvent.change(screen.getByLabelText(label), { target: { value } });

describe("what is looked for among the notes", () => {
  it("is a verdict, with how many there are; pressed again, any will do", () => {
    render(<Margin />);
    expect(left()).toBe("1 2 3 4 5");
    press("does not work: 2 notes");
    expect(left()).toBe("1 2");
    expect(screen.getByRole("button", { name: "does not work: 2 notes" }).getAttribute("aria-pressed")).toBe("true");
    expect(screen.getByRole("status").textContent).toContain("2 of 5 notes.");
    press("needs the engineer: 1 note");
    expect(left()).toBe("4");
    press("needs the engineer: 1 note");
    expect(left()).toBe("1 2 3 4 5");
    expect(screen.queryByRole("status")).toBeNull();
  });

  it("is what a person wrote on", () => {
    render(<Margin />);
    choose("Written on by", "Emmet Quillon");
    expect(left()).toBe("4 5");
  });

  it("is what is settled whole, or what has something open; notes nobody wrote on are neither", () => {
    render(<Margin />);
    choose("Settled", "settled");
    expect(left()).toBe("3 5");
    choose("Settled", "open");
    expect(left()).toBe("2 4");
    choose("Settled", "all");
    expect(left()).toBe("1 2 3 4 5");
  });

  it("may be all of these, and nothing; then all are shown again by one press", () => {
    render(<Margin />);
    press("works as built: 1 note");
    choose("Written on by", "Sabine Orrest");
    expect(left()).toBe("3");
    choose("Settled", "open");
    expect(left()).toBe("");
    press("Show all");
    expect(left()).toBe("1 2 3 4 5");
  });

  it("is not asked by person where nobody wrote", () => {
    render(<NoteFilters notes={[note(1, "works as built")]} left={1} filter={everyNote} onFilter={() => undefined} />);
    expect(screen.queryByRole("combobox")).toBeNull();
  });
});
