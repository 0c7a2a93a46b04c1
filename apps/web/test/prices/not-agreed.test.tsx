import { demoCostBook, digestOf, type ChangeRequest, type Decision, type Project, type Role } from "@cornerway/schema";
import { QueryClient, QueryClientProvider } from "@tanstack/react-query";
import { cleanup, fireEvent, render, screen, waitFor } from "@testing-library/react";
import { afterEach, describe, expect, it, vi } from "vitest";
import { NotAgreed, NotAgreedWord } from "../../src/prices/NotAgreed.tsx";
import { HereBoard } from "../../src/room/here-board.ts";
import { RoomContext } from "../../src/room/room-context.ts";
import { schemeOf, unitAt } from "../support/schemes.ts";

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const uuid = (n: number) => `00000000-0000-4000-8000-0000000000${10 + n}`;
const digest = (n: number) => String(n).repeat(64);
const at = "2027-03-10T09:00:00.000Z";
const author = { id: uuid(1), name: "Nadia Wrensfield", role: "architect" } as const;

const request: ChangeRequest = {
  ...{ id: uuid(2), number: 1, revision: "A", contentDigest: digest(1), text: "Two posts.", operations: [] },
  ...{ author: { ...author, role: "engineer" }, madeAt: at, state: "taken in" },
  answer: { by: author, at, reason: null },
};
const line = { elementId: "b1", item: "pad", section: null, before: null, after: null };
const costBook = { number: 0, digest: digestOf(demoCostBook) };
const priced = (money: number) => ({
  ...{ requestId: request.id, revision: "A", contentDigest: digest(2), premiumDigest: digest(3), costBook },
  ...{ currency: "USD", forShow: true, totalBefore: 0, totalAfter: money, notPriced: [] },
  lines: money === 0 ? [] : [{ ...line, money }],
});
const agreed: Decision = {
  ...{ id: uuid(3), revision: "A", requestId: request.id, decision: "agree", reason: null, money: 4290 },
  ...{ contentDigest: digest(2), costBookDigest: costBook.digest, premiumDigest: digest(3) },
  ...{ currency: "USD", forShow: true, author: { ...author, role: "owner" }, decidedAt: at },
};

type Given = { role: Role; money?: number; revision?: string; drawn?: string; decisions?: unknown[] };

/** Shows the request on a project whose newest revision holds `drawn`; what is sent is kept. */
function shown({ role, money = 4290, revision = "A", drawn = digest(1), decisions = [] }: Given) {
  const sent: object[] = [];
  const newest = {
    ...{ letter: revision, remark: null, sentBy: author, sentAt: at, contentDigest: drawn, resultDigest: null },
    ...{ verdict: "not checked", assessment: "waiting", stamp: null, result: null },
    scheme: schemeOf([unitAt("g1", "G1", 0, 0, 0)]),
  };
  vi.stubGlobal("fetch", async (asked: Request) => {
    const json = (body: unknown, status = 200) =>
      new Response(JSON.stringify(body), { status, headers: { "content-type": "application/json" } });
    if (asked.method === "POST") {
      const body: object = await asked.json();
      sent.push(body);
      return json({ ...agreed, ...body }, 201);
    }
    if (asked.url.endsWith("/premium")) return json(priced(money));
    return json(asked.url.endsWith("/decisions") ? decisions : newest);
  });
  const project: Project = {
    ...{ id: uuid(9), name: "Chandler's Steps", place: "2 Quay Rise", client: "Pellmouth Ferry Society" },
    ...{ roles: [role], awaitsConfirmation: false, engineerToConfirm: false, revision, verdict: "not checked" },
    ...{ stamp: null, waitsFor: null, since: null, containers: 1, last: 0, members: [] },
  };
  render(
    <QueryClientProvider client={new QueryClient({ defaultOptions: { queries: { retry: false } } })}>
      <RoomContext
        value={{
          ...{ project, draft: null, here: new HereBoard("nobody"), lineDownSince: null },
          me: { id: author.id, name: author.name, email: "nadia@wrensfield.example", administrator: false },
          say: () => undefined,
          tell: () => undefined,
        }}
      >
        <p data-testid="line">
          Change request 1, taken in
          <NotAgreedWord request={request} />
        </p>
        <NotAgreed request={request} />
      </RoomContext>
    </QueryClientProvider>,
  );
  return sent;
}

const region = () => screen.findByRole("region", { name: "Price of change request 1" });
const says = async (words: string) => waitFor(() => expect(screen.getByTestId("line").textContent).toBe(words));

describe("a change that was taken in before the owner agreed", () => {
  it("is told as not yet agreed, and the owner agrees to what it was priced at", async () => {
    const sent = shown({ role: "owner" });
    expect((await region()).textContent).toContain("Not yet agreed by the owner.");
    await says("Change request 1, taken in. It adds $4,290 to the premium, not yet agreed by the owner");
    fireEvent.click(screen.getByRole("button", { name: "Agree to $4,290" }));
    await waitFor(() => expect(sent).toHaveLength(1));
    expect(sent[0]).toMatchObject({
      ...{ revision: "A", requestId: request.id, decision: "agree" },
      ...{ contentDigest: digest(2), costBookDigest: costBook.digest, premiumDigest: digest(3) },
    });
  });

  it("is told so to the architect, who agrees to nothing", async () => {
    shown({ role: "architect" });
    expect((await region()).textContent).toContain("Not yet agreed by the owner.");
    expect(screen.queryByRole("button")).toBeNull();
  });

  it("may be agreed to on the next revision while that is what was priced, and no more once it is another", async () => {
    shown({ role: "owner", revision: "B", drawn: digest(2) });
    await region();
    expect(screen.getByRole("button", { name: "Agree to $4,290" }).getAttribute("aria-disabled")).not.toBe("true");
    cleanup();
    shown({ role: "owner", revision: "B", drawn: digest(5) });
    await says("Change request 1, taken in. It adds $4,290 to the premium, never agreed by the owner");
    expect(screen.queryByRole("region")).toBeNull();
  });

  it("waits for nothing once the owner agreed, and asks for nothing where it costs nothing", async () => {
    shown({ role: "owner", decisions: [{ decision: agreed, stale: [], latest: true }] });
    await says("Change request 1, taken in, agreed by the owner");
    expect(screen.queryByRole("region")).toBeNull();
    cleanup();
    shown({ role: "owner", money: 0 });
    await new Promise((resolve) => setTimeout(resolve, 0));
    expect(screen.queryByRole("region")).toBeNull();
    expect(screen.getByTestId("line").textContent).toBe("Change request 1, taken in");
  });
});
