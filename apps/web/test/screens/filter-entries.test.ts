import type { RecordEntry, RecordPayload } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { filterEntries, noFilter } from "../../src/screens/record/filter-entries.ts";

const tilda = { id: "00000000-0000-4000-8000-000000000001", name: "Tilda Varrow", role: "architect" } as const;
const emmet = { id: "00000000-0000-4000-8000-000000000002", name: "Emmet Quillon", role: "engineer" } as const;
const digest = "0".repeat(64);

const entry = (number: number, actor: RecordEntry["actor"], payload: RecordPayload): RecordEntry => ({
  projectId: "00000000-0000-4000-8000-000000000009",
  ...{ number, actor, payload, kind: payload.kind, at: "2027-01-01T00:00:00.000Z", leaf: digest, head: digest },
});
const drawn = (id: string): RecordPayload => ({
  ...{ kind: "drawn", actId: digest, draftNumber: 1, contentDigest: digest, inverse: [], undoes: null },
  operations: [{ kind: "container.turn", id, turnMdeg: 0 }],
});
const entries = [
  entry(1, tilda, { kind: "project opened", name: "Chandler's Steps" }),
  entry(2, tilda, drawn("u1")),
  entry(3, tilda, drawn("u2")),
  entry(4, tilda, { kind: "revision sent", letter: "A", contentDigest: digest, draftNumber: 2, remark: null }),
  entry(5, emmet, { kind: "note settled", noteId: tilda.id }),
];
const nameOf = (id: string) => ({ u1: "G1", u2: "F1" })[id] ?? id;
const numbers = (filter: Partial<typeof noFilter>) =>
  filterEntries(entries, { ...noFilter, ...filter }, nameOf).map(({ number }) => number);

describe("filterEntries(entries, filter, nameOf)", () => {
  it("shows everything where nothing is looked for", () => expect(numbers({})).toEqual([1, 2, 3, 4, 5]));

  it("finds by person, by matter and by the label on the drawing, in their order", () => {
    expect(numbers({ personId: emmet.id })).toEqual([5]);
    expect(numbers({ matter: "drawing" })).toEqual([2, 3]);
    expect(numbers({ matter: "revisions" })).toEqual([4]);
    expect(numbers({ matter: "people" })).toEqual([1]);
    expect(numbers({ element: " f1 " })).toEqual([3]);
    expect(numbers({ element: "F1", personId: emmet.id })).toEqual([]);
  });
});
