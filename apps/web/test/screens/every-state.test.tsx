import { cautionLine, type Project, type Role } from "@cornerway/schema";
import { QueryClient, QueryClientProvider } from "@tanstack/react-query";
import { createMemoryHistory, createRootRoute, createRouter, RouterProvider } from "@tanstack/react-router";
import { act } from "react";
import { createRoot, type Root } from "react-dom/client";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { HereBoard } from "../../src/room/here-board.ts";
import { RoomContext } from "../../src/room/room-context.ts";
import { CompareSheet } from "../../src/screens/compare/CompareSheet.tsx";
import { Desk } from "../../src/screens/desk/Desk.tsx";
import { HelpPage } from "../../src/screens/help/HelpPage.tsx";
import { NothingHere } from "../../src/screens/not-found/NothingHere.tsx";
import { RecordSheet } from "../../src/screens/record/RecordSheet.tsx";
import { ReviewSheet } from "../../src/screens/review/ReviewSheet.tsx";
import { SchemeSheet } from "../../src/screens/scheme/SchemeSheet.tsx";
import { SettingsPage } from "../../src/screens/settings/SettingsPage.tsx";
import { StatusSheet } from "../../src/screens/status/StatusSheet.tsx";

const person = { id: "00000000-0000-4000-8000-000000000001", name: "Nadia Wrensfield" };
const projectId = "00000000-0000-4000-8000-000000000009";

const project = (revision: string | null, role: Role): Project => ({
  ...{ id: projectId, name: "Chandler's Steps", place: "2 Quay Rise", client: "Pellmouth Ferry Society" },
  ...{
    roles: [role],
    awaitsConfirmation: false,
    engineerToConfirm: false,
    revision,
    verdict: "not checked",
    stamp: null,
    waitsFor: null,
  },
  ...{ since: null, containers: 0, last: 0, members: [] },
});

/** The screens, each with the words it has where there is nothing yet. */
const screens = [
  { name: "desk", screen: <Desk />, empty: /No sheets are yours yet/, ownRoom: false },
  { name: "sheet 1", screen: <SchemeSheet />, empty: /Nothing was sent yet/, ownRoom: true },
  { name: "sheet 3", screen: <ReviewSheet />, empty: /The architect has not sent a revision/, ownRoom: true },
  { name: "sheet 4", screen: <CompareSheet />, empty: /Nothing was sent yet/, ownRoom: true },
  { name: "sheet 5", screen: <StatusSheet />, empty: /Nothing was sent yet|Nothing yet/, ownRoom: true },
  { name: "sheet 7", screen: <RecordSheet />, empty: /Nothing has happened here yet/, ownRoom: true },
  { name: "settings", screen: <SettingsPage />, empty: /No revision was sent yet/, ownRoom: true },
];

const problem = (status: number, code: string, detail: string) => () =>
  Promise.resolve(
    new Response(JSON.stringify({ type: "about:blank", title: detail, status, code, detail }), {
      status,
      headers: { "content-type": "application/problem+json" },
    }),
  );
/** Turns of 25 ms a screen is given. */
const mostTurns = 120;
const never = () => new Promise<Response>(() => undefined);
const noLine = () => Promise.reject(new TypeError("fetch failed"));
const nothing = () =>
  Promise.resolve(new Response("[]", { status: 200, headers: { "content-type": "application/json" } }));

const states = [
  { state: "an error", answer: problem(500, "internal", "The office stumbled."), says: /stumbled|cannot be shown/ },
  { state: "no line", answer: noLine, says: /line to the office is down/ },
  { state: "not allowed", answer: problem(403, "role-refused", "Your role does not do that."), says: /not yours|role/ },
  {
    state: "not found",
    answer: problem(404, "not-found", "Nothing here."),
    says: /no sheet at this address|Nothing here/,
  },
] as const;

describe("every screen in every state", () => {
  let place: HTMLElement;
  let root: Root;

  beforeEach(() => {
    Reflect.set(globalThis, "IS_REACT_ACT_ENVIRONMENT", true);
    place = document.body.appendChild(document.createElement("div"));
    root = createRoot(place);
  });

  afterEach(async () => {
    await act(async () => root.unmount());
    place.remove();
    vi.unstubAllGlobals();
  });

  /** The text of a screen once it says what it should, or what it says after a while. */
  async function shown(
    screen: React.ReactNode,
    answer: () => Promise<Response>,
    revision: string | null,
    until: RegExp,
  ): Promise<string> {
    vi.stubGlobal("fetch", answer);
    const client = new QueryClient({ defaultOptions: { queries: { retry: false, networkMode: "always" } } });
    client.setQueryData(["session"], { person: { ...person, email: "n@wrensfield.example" }, csrfToken: "t" });
    const room = {
      ...{ project: project(revision, "reader"), me: { ...person, email: "n@wrensfield.example" }, draft: null },
      ...{ lineDownSince: null, here: new HereBoard("nobody"), tell: () => undefined, say: () => undefined },
    };
    const route = createRootRoute({
      component: () => <RoomContext value={room as never}>{screen}</RoomContext>,
    });
    const router = createRouter({ routeTree: route, history: createMemoryHistory({ initialEntries: ["/"] }) });
    await act(async () => {
      root.render(
        <QueryClientProvider client={client}>
          <RouterProvider router={router as never} />
        </QueryClientProvider>,
      );
    });
    for (let turn = 0; turn < mostTurns && !until.test(place.textContent ?? ""); turn += 1)
      await act(async () => new Promise((done) => setTimeout(done, 25)));
    return place.textContent ?? "";
  }

  it.each(screens)("$name says what to do where there is nothing yet", async ({ screen, empty }) => {
    const text = await shown(screen, nothing, null, empty);
    expect(text).toMatch(empty);
    expect(text).toContain(cautionLine);
    expect(text).not.toMatch(/undefined|NaN|\[object/);
  });

  it.each(screens)("$name waits as ruled lines and says for what", async ({ screen, name }) => {
    const text = await shown(screen, never, "A", name === "settings" ? /on its way/ : /Fetching/);
    if (name === "settings") expect(text).toMatch(/on its way/);
    else expect(place.querySelector(".ruled, .ruled-line")?.closest("[role=status]")?.textContent).toMatch(/^Fetching/);
  });

  it.each(screens.flatMap((each) => states.map((state) => ({ ...each, ...state }))))(
    "$name under $state says what happened and the way out",
    async ({ screen, answer, says, name }) => {
      const text = await shown(screen, answer, "A", says);
      expect(text).toMatch(says);
      expect(text).toContain(cautionLine);
      const ways = [...place.querySelectorAll("button, a[href]")].map((way) => way.textContent ?? "");
      expect(
        ways.some((way) => /desk|Try|again|sheets/i.test(way)),
        `${name}: ${ways.join("; ")}`,
      ).toBe(true);
    },
  );

  it("an address that leads nowhere needs no service", async () => {
    expect(await shown(<NothingHere />, noLine, null, /at this address/)).toMatch(/There is no sheet at this address/);
  });

  it("the page of words needs no service", async () => {
    const words = await shown(<HelpPage />, noLine, null, /Five verdicts/);
    expect(words).toMatch(/Five verdicts/);
    expect(words).toContain(cautionLine);
  });
});
