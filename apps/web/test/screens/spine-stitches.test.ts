import type { RecordEntry, RecordPayload } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { spineStitches } from "../../src/room/spine-stitches.ts";

const digest = "0".repeat(64);

const entry = (number: number, payload: RecordPayload): RecordEntry => ({
  projectId: "00000000-0000-4000-8000-000000000001",
  number,
  at: "2026-01-01T00:00:00.000Z",
  actor: { id: "00000000-0000-4000-8000-000000000002", name: "Tilda Varrow", role: "architect" },
  kind: payload.kind,
  leaf: digest,
  head: digest,
  payload,
});

const drawn = (number: number) =>
  entry(number, {
    kind: "drawn",
    actId: "00000000-0000-4000-8000-000000000003",
    draftNumber: number,
    contentDigest: digest,
    operations: [],
    inverse: [],
    undoes: null,
  });
const sent = (number: number, letter: string) =>
  entry(number, { kind: "revision sent", letter, contentDigest: digest, draftNumber: number, remark: null });
const settled = (number: number) =>
  entry(number, { kind: "note settled", noteId: "00000000-0000-4000-8000-000000000004" });

describe("spineStitches(record)", () => {
  it("counts entries before the first revision, between revisions, and after the last without the moves not sent", () => {
    const record = [
      drawn(1),
      drawn(2),
      sent(3, "A"),
      settled(4),
      drawn(5),
      sent(6, "B"),
      settled(7),
      drawn(8),
      drawn(9),
    ];
    const { since, before, entries } = spineStitches(record);
    expect([before, since.get("A"), since.get("B"), entries]).toEqual([2, 2, 1, 9]);
  });

  it("is empty for an empty record", () => {
    expect(spineStitches([])).toEqual({ since: new Map(), before: 0, entries: 0 });
  });
});
