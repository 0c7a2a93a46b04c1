import type { OptionNow, OptionPick, OptionSetNow, Project, Role } from "@cornerway/schema";
import { QueryClient, QueryClientProvider } from "@tanstack/react-query";
import { createMemoryHistory, createRootRoute, createRouter, RouterProvider } from "@tanstack/react-router";
import { cleanup, fireEvent, render, screen, waitFor, within } from "@testing-library/react";
import { afterEach, describe, expect, it, vi } from "vitest";
import { HereBoard } from "../../src/room/here-board.ts";
import { RoomContext } from "../../src/room/room-context.ts";
import { answerWords } from "../../src/screens/options/OptionFacts.tsx";
import { middleOf, scaleOf, widthPx } from "../../src/screens/options/option-scale.ts";
import { OptionsPage } from "../../src/screens/options/OptionsPage.tsx";
import { schemeOf, unitAt } from "../support/schemes.ts";

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const projectId = "00000000-0000-4000-8000-000000000009";
const uuid = (n: number) => `00000000-0000-4000-8000-0000000000${10 + n}`;
const author = { id: uuid(1), name: "Nadia Wrensfield", role: "architect" } as const;
const at = "2027-03-10T09:00:00.000Z";
const digest = (n: number) => String(n).repeat(64);

const option = (place: number, name: string, more: Partial<OptionNow> = {}): OptionNow => ({
  ...{ id: uuid(10 + place), place, name, contentDigest: digest(place), containers: place, author, keptAt: at },
  answer: {
    ...{ state: "done", verdict: "works with steel", scope: "load path, and strength under gravity loads" },
    ...{ marks: 3, engineVersion: "0.3.5", resultDigest: digest(9) },
  },
  withdrawn: null,
  price: { total: 4227.35, currency: "USD", forShow: false, standsApart: false, steelKg: 2728.4 },
  ...more,
});
const scheme = schemeOf([unitAt("g1", "G1", 0, 0, 0)]);

const project = (role: Role): Project => ({
  ...{ id: projectId, name: "Chandler's Steps", place: "2 Quay Rise", client: "Pellmouth Ferry Society" },
  ...{ roles: [role], awaitsConfirmation: false, engineerToConfirm: false, revision: "A", verdict: "not checked" },
  ...{ stamp: null, waitsFor: null, since: null, containers: 0, last: 0, members: [] },
});

/** Opens the page on these sets; what is sent is kept in `sent`. */
function open(role: Role, sets: readonly OptionSetNow[]) {
  const sent: { url: string; body: unknown }[] = [];
  vi.stubGlobal("fetch", async (request: Request) => {
    const json = (status: number, body: unknown) =>
      new Response(JSON.stringify(body), { status, headers: { "content-type": "application/json" } });
    const [, id = ""] = /options\/([^/]+)$/.exec(request.url) ?? [];
    if (request.method === "GET" && id !== "") {
      const found = sets.flatMap(({ options }) => options).find((each) => each.id === id);
      return json(200, { id, contentDigest: found?.contentDigest, scheme });
    }
    if (request.method === "GET") return json(200, sets);
    const body: object = await request.json();
    sent.push({ url: new URL(request.url).pathname, body });
    return json(201, { ...body, author, [request.url.endsWith("/withdrawal") ? "withdrawnAt" : "pickedAt"]: at });
  });
  const root = createRootRoute({
    component: () => (
      <RoomContext
        value={{
          ...{ project: project(role), draft: null, here: new HereBoard("nobody"), lineDownSince: null },
          me: { id: author.id, name: author.name, email: "nadia@wrensfield.example", administrator: false },
          say: () => undefined,
          tell: () => undefined,
        }}
      >
        <OptionsPage />
      </RoomContext>
    ),
  });
  const router = createRouter({ routeTree: root, history: createMemoryHistory() });
  render(
    <QueryClientProvider client={new QueryClient({ defaultOptions: { queries: { retry: false } } })}>
      <RouterProvider router={router} />
    </QueryClientProvider>,
  );
  return sent;
}

const setOf = (options: readonly OptionNow[], picks: readonly OptionPick[] = []): OptionSetNow => ({
  ...{ id: uuid(2), number: 1, name: "Where the stair goes", author, openedAt: at },
  ...{ options: [...options], picks: [...picks] },
});
const pickOf = (place: number, role: Role = "owner"): OptionPick => ({
  ...{ id: uuid(3), optionId: uuid(10 + place), contentDigest: digest(place), reason: "Worth it." },
  ...{ author: { ...author, role }, pickedAt: at },
});

describe("alternatives side by side", () => {
  it("each say verdict, premium and steel, and what the verdict rests on", async () => {
    const waits = option(2, "With a court", { answer: { state: "waiting" } });
    const apart = { total: -310, currency: "USD", forShow: true, standsApart: true, steelKg: 0 };
    open("owner", [setOf([option(1, "Plain"), { ...waits, price: apart }])]);
    const [first, second] = await screen.findAllByRole("listitem");
    if (first === undefined || second === undefined) throw new Error("there are two");
    expect(first.textContent).toContain("1 Plain");
    expect(first.textContent).toContain("Works with steel");
    expect(first.textContent).toContain("Screening by load path, and strength under gravity loads.");
    expect(first.textContent).toContain("$4,230");
    expect(first.textContent).toContain("2,728 kg");
    expect(second.textContent).toContain("Not checked");
    expect(second.textContent).toContain("Being checked.");
    expect(second.textContent).toContain("−$310 for show, rates without a source, and what stands apart");
    expect(second.textContent).toContain("as drawn: what it leaves open is not known");
    expect(first.textContent).not.toContain("is not known");
  });

  it("are picked by the owner in two steps, with a reason, on the very drawing", async () => {
    const sent = open("owner", [setOf([option(1, "Plain"), option(2, "With a court")])]);
    fireEvent.click(await screen.findByRole("button", { name: "Pick alternative 2" }));
    expect(sent).toEqual([]);
    fireEvent.change(screen.getByLabelText("Why, where there is something to say"), { target: { value: " Light. " } });
    fireEvent.click(screen.getByRole("button", { name: "Pick alternative 2" }));
    await waitFor(() => expect(sent).toHaveLength(1));
    expect(sent[0]?.url).toBe(`/api/projects/${projectId}/option-sets/${uuid(2)}/picks`);
    expect(sent[0]?.body).toMatchObject({ optionId: uuid(12), contentDigest: digest(2), reason: "Light." });
  });

  it("show the pick that counts and leave the others to be picked", async () => {
    open("owner", [setOf([option(1, "Plain"), option(2, "With a court")], [pickOf(1, "architect"), pickOf(2)])]);
    const [first, second] = await screen.findAllByRole("listitem");
    if (first === undefined || second === undefined) throw new Error("there are two");
    expect(second.textContent).toContain("Picked by Nadia Wrensfield on");
    expect(second.textContent).toContain("Worth it.");
    within(first).getByRole("button", { name: "Pick alternative 1" });
    expect(within(second).queryByRole("button")).toBeNull();
  });

  it("are withdrawn by whoever kept them, in two steps, and by nobody else", async () => {
    const others = option(2, "With a court", { author: { ...author, id: uuid(8), name: "Ilse Brandt" } });
    const sent = open("architect", [setOf([option(1, "Plain"), others])]);
    fireEvent.click(await screen.findByRole("button", { name: "Withdraw alternative 1" }));
    expect(screen.queryByRole("button", { name: "Withdraw alternative 2" })).toBeNull();
    expect(sent).toEqual([]);
    fireEvent.change(screen.getByLabelText("Why, where there is something to say"), { target: { value: " Dark. " } });
    fireEvent.click(screen.getByRole("button", { name: "Withdraw alternative 1" }));
    await waitFor(() => expect(sent).toHaveLength(1));
    expect(sent[0]?.url).toBe(`/api/projects/${projectId}/option-sets/${uuid(2)}/options/${uuid(11)}/withdrawal`);
    expect(sent[0]?.body).toMatchObject({ reason: "Dark." });
  });

  it("stay where they stand once withdrawn, with the word on them, and are picked no more", async () => {
    const withdrawn = { id: uuid(4), reason: "Too dark.", author, withdrawnAt: at };
    open("owner", [setOf([option(1, "Plain", { withdrawn }), option(2, "With a court")])]);
    const [first] = await screen.findAllByRole("listitem");
    if (first === undefined) throw new Error("there are two");
    expect(first.textContent).toContain("Withdrawn by Nadia Wrensfield on");
    expect(first.textContent).toContain("Too dark.");
    expect(within(first).queryByRole("button")).toBeNull();
    screen.getByRole("button", { name: "Pick alternative 2" });
  });

  it("are read by the engineer, who picks none and opens none", async () => {
    open("engineer", [setOf([option(1, "Plain")])]);
    const button = await screen.findByRole("button", { name: /^Pick alternative 1\. Architect and owner pick/ });
    expect(button.getAttribute("aria-disabled")).toBe("true");
    expect(screen.queryByRole("button", { name: "Open a set of alternatives" })).toBeNull();
  });

  it("are opened by the architect under a name, never without one", async () => {
    const sent = open("architect", []);
    fireEvent.click(await screen.findByRole("button", { name: "Open a set of alternatives" }));
    expect(screen.getByRole("alert").textContent).toBe("Give it a name.");
    fireEvent.change(screen.getByLabelText("What is to be chosen between"), { target: { value: "Roof" } });
    fireEvent.click(screen.getByRole("button", { name: "Open a set of alternatives" }));
    await waitFor(() => expect(sent.map(({ body }) => body)).toMatchObject([{ name: "Roof" }]));
  });
});

describe("pictures of a set", () => {
  it("are at one scale, at which the longest fills the width between its margins", () => {
    const long = schemeOf([unitAt("g1", "G1", 0, 0, 0), unitAt("g2", "G2", 12_192, 0, 0)]);
    // Two 40 ft units end to end: 24.384 m (ISO 668) on 380 − 2 × 14 px.
    expect(scaleOf([scheme, long], "south")).toBeCloseTo(352 / 24.384, 3);
    const pxPerM = scaleOf([scheme, long], "south");
    expect(middleOf(long, "south", pxPerM).originXPx + 6.096 * pxPerM).toBeCloseTo(widthPx / 2, 3);
  });
});

describe("what is said of an answer", () => {
  it("has words for each state", () => {
    expect(answerWords({ state: "failed", why: "no answer within 60 s" })).toBe(
      "It could not be checked: no answer within 60 s.",
    );
    expect(answerWords({ state: "unreadable" })).toMatch(/newer engine/);
  });
});
