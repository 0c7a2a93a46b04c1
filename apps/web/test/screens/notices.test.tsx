import type { Notice } from "@cornerway/schema";
import { cleanup, render, screen, within } from "@testing-library/react";
import { afterEach, describe, expect, it, vi } from "vitest";
import { headingOf, newestOf } from "../../src/screens/notices/NoticesPage.tsx";
import { NoticeTable } from "../../src/screens/notices/NoticeTable.tsx";

vi.mock("@tanstack/react-router", () => ({
  Link: ({ children }: { children: unknown }) => <a href="/">{children as string}</a>,
}));
afterEach(cleanup);

const digest = "0".repeat(64);
const notice = (number: number, seen: boolean, projectName = "Lock Lane"): Notice => ({
  projectId:
    projectName === "Lock Lane" ? "00000000-0000-4000-8000-000000000001" : "00000000-0000-4000-8000-000000000002",
  projectName,
  seen,
  entry: {
    projectId: "00000000-0000-4000-8000-000000000001",
    ...{ number, at: "2027-03-10T09:00:00.000Z", kind: "revision sent", leaf: digest, head: digest },
    actor: { id: "00000000-0000-4000-8000-000000000003", name: "Ines Marrow", role: "architect" },
    payload: { kind: "revision sent", letter: "B", contentDigest: digest, draftNumber: 4, remark: null },
  },
});

describe("what is new", () => {
  it("says of each thing who did what in which project, and in a word whether it is seen", () => {
    render(<NoticeTable notices={[notice(9, false), notice(4, true, "Quay House")]} />);
    const fresh = within(screen.getByRole("row", { name: /Lock Lane/ }));
    expect(fresh.queryByText("Revision B sent.")).not.toBeNull();
    expect(fresh.queryByText("new")).not.toBeNull();
    expect(fresh.queryByText("entry 9")).not.toBeNull();
    expect(within(screen.getByRole("row", { name: /Quay House/ })).queryByText("new")).toBeNull();
  });

  it("is missed in so many words where there is nothing", () => {
    render(<NoticeTable notices={[]} />);
    expect(screen.queryByText("Nothing that others did has concerned your parts so far.")).not.toBeNull();
  });

  it("is counted in its heading", () => {
    expect([0, 1, 2].map(headingOf)).toEqual(["Nothing new concerns you", "One thing is new", "2 things are new"]);
  });

  it("is seen up to the last entry of each project that is told of", () => {
    const newest = newestOf([notice(4, false), notice(9, false), notice(3, false, "Quay House")]);
    expect([...newest.values()]).toEqual([9, 3]);
  });
});
