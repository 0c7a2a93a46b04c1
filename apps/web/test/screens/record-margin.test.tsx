import type { RecordEntry } from "@cornerway/schema";
import { cleanup, render, screen } from "@testing-library/react";
import { afterEach, describe, expect, it } from "vitest";
import { RecordMargin } from "../../src/screens/record/RecordMargin.tsx";

const entry = (number: number): RecordEntry => ({
  projectId: "00000000-0000-4000-8000-000000000001",
  number,
  at: "2027-03-10T09:00:00.000Z",
  actor: { id: "00000000-0000-4000-8000-000000000002", name: "A. Vale", role: "architect" },
  kind: "revision sent",
  leaf: "0".repeat(64),
  head: "1".repeat(64),
  payload: null,
});

afterEach(cleanup);

describe("the margin of the record", () => {
  it("says why numbers are missing when the reader may not see every entry", () => {
    render(<RecordMargin entries={[entry(1), entry(3)]} />);
    expect(screen.queryByText(/A number that is missing here/)).not.toBeNull();
  });

  it("says nothing of it when no number is missing", () => {
    render(<RecordMargin entries={[entry(1), entry(2)]} />);
    expect(screen.queryByText(/A number that is missing here/)).toBeNull();
  });
});
