import type { RecordEntry } from "@cornerway/schema";
import { cleanup, fireEvent, render, screen } from "@testing-library/react";
import { afterEach, expect, it, vi } from "vitest";
import { RecordStrip } from "../../src/screens/record/RecordStrip.tsx";

afterEach(cleanup);

const entry = (number: number, payload: RecordEntry["payload"]): RecordEntry => ({
  projectId: "00000000-0000-4000-8000-000000000001",
  number,
  at: "2027-03-10T09:00:00.000Z",
  actor: { id: "00000000-0000-4000-8000-000000000002", name: "A. Vale", role: "architect" },
  kind: payload?.kind ?? "note written",
  leaf: "0".repeat(64),
  head: "1".repeat(64),
  payload,
});
const digest = "2".repeat(64);
const sent = {
  kind: "revision sent",
  ...{ letter: "B", draftNumber: 4, contentDigest: digest, remark: null },
} as const;

it("the strip of the record leads to what was sent, and to nothing that has no sign of its own", () => {
  const onEntry = vi.fn<(number: number) => void>();
  render(<RecordStrip entries={[entry(1, null), entry(7, sent), entry(8, null)]} onEntry={onEntry} />);
  const ways = screen.getAllByRole("button");
  expect(ways.map(({ textContent }) => textContent)).toEqual(["Bentry 7"]);
  screen.getByRole("img", { name: "Revision B" });
  if (ways[0] !== undefined) fireEvent.click(ways[0]);
  expect(onEntry.mock.calls).toEqual([[7]]);
});
