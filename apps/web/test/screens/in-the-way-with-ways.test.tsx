import { assess } from "@cornerway/engine";
import { demoCostBook, type Project, type Revision, type Role } from "@cornerway/schema";
import { QueryClient, QueryClientProvider } from "@tanstack/react-query";
import { cleanup, render, screen, waitFor } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
// taken here, so that no test waits until it is read
import "../../src/remedies/RemediesSlip.tsx";
import { hindrances } from "../../src/screens/status/hindrances.ts";
import { InTheWayWithWays } from "../../src/screens/status/InTheWayWithWays.tsx";
import type { RemedyQuestion, RemedyWord } from "../../src/worker/remedy-messages.ts";
import { lockedAtFour } from "../remedies/locked-at-four.ts";
import { demoScheme } from "../support/demo-scheme.ts";

const asked: RemedyQuestion[] = [];

/** In place of the thread that searches: answers every mark with one way. */
class Searching {
  #hear: (event: { data: RemedyWord }) => void = () => undefined;
  addEventListener(_kind: string, hear: (event: { data: RemedyWord }) => void) {
    this.#hear = hear;
  }
  postMessage(question: RemedyQuestion) {
    asked.push(question);
    const found = { offered: [lockedAtFour], apart: [], failed: [], looked: 1, proved: 1, leftOut: 0 };
    const list = { markId: question.markId, under: "gravity loads only" as const, ...found };
    const { turn } = question;
    this.#hear({
      data: { kind: "step", turn, step: { kind: "found", remedy: lockedAtFour, done: 1, of: 1 } },
    });
    this.#hear({ data: { kind: "listed", turn, list } });
  }
  terminate() {
    return undefined;
  }
}

const project = (role: Role): Project => ({
  ...{ id: "00000000-0000-4000-8000-000000000009", name: "Chandler's Steps", place: "2 Quay Rise", client: "A. Pell" },
  ...{ roles: [role], awaitsConfirmation: false, engineerToConfirm: false, revision: "A", verdict: "does not work" },
  ...{ stamp: null, waitsFor: null, since: null, containers: 0, last: 0, members: [] },
});

const digest = "1".repeat(64);
const author = { id: "00000000-0000-4000-8000-000000000011", name: "Nadia Wrensfield", role: "architect" } as const;
const revision: Revision = {
  ...{ letter: "A", remark: null, sentBy: author, sentAt: "2027-03-10T09:00:00.000Z", contentDigest: digest },
  ...{ resultDigest: null, verdict: "does not work", assessment: "waiting", stamp: null },
  ...{ scheme: demoScheme, result: null },
};
const inTheWay = hindrances({
  ...{ marks: assess(demoScheme).marks, scope: null, requests: [], scheme: demoScheme, revision: "A", units: "SI" },
});

function shown(role: Role) {
  render(
    <QueryClientProvider client={new QueryClient({ defaultOptions: { queries: { retry: false } } })}>
      <InTheWayWithWays {...{ project: project(role), revision, inTheWay, requests: [] }} />
    </QueryClientProvider>,
  );
}

beforeEach(() => {
  asked.length = 0;
  vi.stubGlobal("Worker", Searching);
  const answer = { number: 0, book: demoCostBook, digest, changed: null };
  const headers = { "content-type": "application/json" };
  vi.stubGlobal("fetch", () => Promise.resolve(new Response(JSON.stringify(answer), { status: 200, headers })));
});

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

describe("what stands in the way, as an owner reads it", () => {
  it("offers what would make it work under each mark, and looks for that mark when it is pressed", async () => {
    shown("owner");
    await userEvent.click(await screen.findByRole("button", { name: "What would make it work" }));
    expect(asked.map(({ markId }) => markId)).toEqual(["tips-over:t1"]);
    expect(asked[0]?.scheme).toEqual(demoScheme);
  });

  it("says what is done and what it costs in plain words, and that others draw it", async () => {
    shown("owner");
    await userEvent.click(await screen.findByRole("button", { name: "What would make it work" }));
    const way = await screen.findByRole("region", { name: /^Way a\./ });
    expect(way.textContent).toContain("Hold T1 down at four bearings with welded plates.");
    await waitFor(() => expect(way.textContent).toContain("$760"));
    expect(way.textContent).not.toContain("rail");
    const take = screen.getByRole("button", { name: /Draw it so/ });
    expect(take.getAttribute("aria-disabled")).toBe("true");
    expect(take.title).toMatch(/^The architect draws it, or the engineer asks for it\./);
  });

  it("gives a reader, who sees no prices, the way without money", async () => {
    shown("reader");
    await userEvent.click(await screen.findByRole("button", { name: "What would make it work" }));
    const way = await screen.findByRole("region", { name: /^Way a\./ });
    expect(way.textContent).not.toContain("$");
  });
});
