import { assess } from "@cornerway/engine";
import { describe, expect, it } from "vitest";
import { notesFromMarks } from "../../src/notes/notes-from-marks.ts";
import { markWords } from "../../src/wording/mark-words.ts";
import { demoScheme } from "../support/demo-scheme.ts";

describe("notes of many marks of one kind", () => {
  const { marks } = assess(demoScheme);
  const say = (mark: (typeof marks)[number]) => markWords(mark, demoScheme, "architect", "SI");
  const notes = notesFromMarks({
    marks,
    written: [],
    placeOf: () => null,
    nameOf: (id) => id,
    say,
    answered: new Set(),
  });

  it("leave no sentence unsaid: each stands in the words of a note or folded under it", () => {
    const said = notes.flatMap(({ body, alike = [] }) => [body, ...alike]).join(" ");
    expect(marks.length).toBeGreaterThan(20);
    expect(marks.map((mark) => say(mark).body).filter((sentence) => !said.includes(sentence))).toEqual([]);
  });

  it("say at most two at once", () => {
    for (const { markIds, alike = [] } of notes) expect(markIds.length - alike.length).toBeLessThanOrEqual(1);
  });
});
