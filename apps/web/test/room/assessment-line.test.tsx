import type { AssessmentRun, Project, Role } from "@cornerway/schema";
import { QueryClient, QueryClientProvider } from "@tanstack/react-query";
import { cleanup, render, screen } from "@testing-library/react";
import { userEvent } from "@testing-library/user-event";
import { afterEach, describe, expect, it, vi } from "vitest";
import { AssessmentLine, runSentence } from "../../src/room/AssessmentLine.tsx";

const waiting: AssessmentRun = {
  ...{ letter: "B", attempt: 1, state: "waiting", askedAt: "2026-11-27T09:00:00.000Z", startedAt: null },
  ...{ steps: { done: 0, of: 3 }, leftMs: null, why: null, engineVersion: null },
};
const failed: AssessmentRun = { ...waiting, state: "failed", why: "it took longer than 60 s" };

const project = (role: Role): Project => ({
  ...{ id: "00000000-0000-4000-8000-000000000009", name: "Lock Lane", place: "Lock Lane 2", client: "R. Tamm" },
  ...{
    roles: [role],
    awaitsConfirmation: false,
    engineerToConfirm: false,
    revision: "B",
    verdict: "not checked",
    stamp: null,
    waitsFor: null,
  },
  ...{ since: null, containers: 0, last: 0, members: [] },
});

const json = (value: unknown) =>
  Promise.resolve(new Response(JSON.stringify(value), { headers: { "content-type": "application/json" } }));

function shown(run: AssessmentRun, role: Role, after: AssessmentRun = run) {
  const asked: string[] = [];
  vi.stubGlobal("fetch", (request: Request) => {
    asked.push(`${request.method} ${new URL(request.url).pathname.split("/").slice(-2).join("/")}`);
    return json(request.method === "GET" ? run : after);
  });
  render(
    <QueryClientProvider client={new QueryClient()}>
      <AssessmentLine project={project(role)} letter="B" />
    </QueryClientProvider>,
  );
  return asked;
}

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

describe("runSentence", () => {
  it.each<[AssessmentRun, string]>([
    [waiting, "Revision B waits to be checked."],
    [
      { ...waiting, startedAt: "2026-11-27T09:00:01.000Z", steps: { done: 1, of: 3 }, leftMs: 4200 },
      "Revision B is being checked: 1 of 3 steps, about 5 s left.",
    ],
    [failed, "Revision B could not be checked: it took longer than 60 s."],
    [{ ...waiting, state: "unreadable" }, "Revision B was checked by a newer engine; its answer cannot be read here."],
  ])("tells %o", (run, sentence) => expect(runSentence(run)).toBe(sentence));
});

describe("AssessmentLine", () => {
  it("lets the engineer have a failed check done again, and then tells that it waits", async () => {
    const asked = shown(failed, "engineer", waiting);
    await userEvent.click(await screen.findByRole("button", { name: "Check it again" }));
    expect(await screen.findByText("Revision B waits to be checked.")).toBeTruthy();
    expect(asked).toContain("POST assessment/again");
  });

  it("lets the architect stop a check that waits or runs", async () => {
    const asked = shown(waiting, "architect", { ...failed, why: "it was stopped" });
    await userEvent.click(await screen.findByRole("button", { name: "Stop the check" }));
    expect(await screen.findByText(/it was stopped/)).toBeTruthy();
    expect(asked).toContain("POST assessment/stop");
  });

  it("only tells an owner, and is gone when the check is done", async () => {
    shown(failed, "owner");
    expect(await screen.findByText(/could not be checked/)).toBeTruthy();
    expect(screen.queryByRole("button")).toBeNull();
    cleanup();
    shown({ ...waiting, state: "done" }, "engineer");
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect(screen.queryByRole("status")).toBeNull();
  });
});
