import { CostBook, demoCostBook, digestOf, type CostBook as Book, type Project } from "@cornerway/schema";
import { QueryClient, QueryClientProvider } from "@tanstack/react-query";
import { createMemoryHistory, createRootRoute, createRouter, RouterProvider } from "@tanstack/react-router";
import { act } from "react";
import { createRoot, type Root } from "react-dom/client";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { HereBoard } from "../../src/room/here-board.ts";
import { RoomContext } from "../../src/room/room-context.ts";
import { CostBookPage } from "../../src/screens/cost-book/CostBookPage.tsx";
import { labourFigures, printAmount, rateFigures, readAmount } from "../../src/screens/cost-book/cost-figures.ts";
import { noEdits, writtenBook } from "../../src/screens/cost-book/written-book.ts";

const figureOf = (name: string) => {
  const figure = [...rateFigures, ...labourFigures].find((each) => each.name === name);
  if (figure === undefined) throw new Error(name);
  return figure;
};

describe("figures of the cost book", () => {
  // 3.20 a kg · 0.45359237 kg/lb = 1.4515 a lb; 0.06 h/m · 0.3048 m/ft = 0.0183 h/ft (international yard and pound)
  it("are shown a pound and a foot for those who read US units", () => {
    expect(printAmount(figureOf("steel, kg in place"), 3.2, "US")).toBe("1.4515");
    expect(printAmount(figureOf("cut, per m"), 0.06, "US")).toBe("0.0183");
    expect(printAmount(figureOf("shop hour"), 95, "US")).toBe("95");
    expect(printAmount(figureOf("steel, kg in place"), 3.2, "SI")).toBe("3.2");
  });

  it("are read in the unit they are shown in, with either decimal mark, and refused below nought", () => {
    expect(readAmount(figureOf("steel, kg in place"), "1.60", "US")).toBeCloseTo(1.6 / 0.45359237, 6);
    expect(readAmount(figureOf("shop hour"), "97,5", "SI")).toBe(97.5);
    expect(readAmount(figureOf("shop hour"), "-1", "SI")).toBeNull();
    expect(readAmount(figureOf("shop hour"), "a lot", "SI")).toBeNull();
  });
});

describe("writtenBook", () => {
  it("keeps every figure that was left alone to the bit, whatever units it is read in", () => {
    const edits = { figures: { "/rates/shop hour": { amount: "99", source: " Offer 4 " } } };
    const { book, faults } = writtenBook(demoCostBook, edits, "US");
    expect(faults.size).toBe(0);
    expect(CostBook.parse(book)).toEqual({
      ...demoCostBook,
      rates: { ...demoCostBook.rates, "shop hour": { amount: 99, source: "Offer 4" } },
    });
    expect(writtenBook(demoCostBook, noEdits, "US").book).toEqual(demoCostBook);
  });

  it("names what is no amount", () => {
    const { faults } = writtenBook(demoCostBook, { figures: { "/labour/set a lock": { amount: "x" } } }, "SI");
    expect([...faults]).toEqual(["/labour/set a lock"]);
  });
});

describe("the cost book's sheet", () => {
  let place: HTMLElement;
  let root: Root;
  const sent: { book: Book; tag: string | null }[] = [];

  beforeEach(() => {
    Reflect.set(globalThis, "IS_REACT_ACT_ENVIRONMENT", true);
    place = document.body.appendChild(document.createElement("div"));
    root = createRoot(place);
    sent.length = 0;
  });
  afterEach(async () => {
    await act(async () => root.unmount());
    place.remove();
    vi.unstubAllGlobals();
  });

  const digest = digestOf(demoCostBook);
  const answered = (status: number, body: unknown) =>
    new Response(JSON.stringify(body), { status, headers: { "content-type": "application/json" } });

  async function open(role: Project["roles"][number], refuse = false): Promise<void> {
    vi.stubGlobal("fetch", async (request: Request) => {
      if (request.method === "GET") return answered(200, { number: 0, book: demoCostBook, digest, changed: null });
      const book = CostBook.parse(await request.json());
      sent.push({ book, tag: request.headers.get("if-match") });
      if (refuse)
        return answered(412, { type: "x", title: "t", status: 412, code: "book-moved-on", detail: "number 1 now" });
      const by = { id: person.id, name: person.name, role };
      return answered(200, {
        number: 1,
        book,
        digest: digestOf(book),
        changed: { by, at: "2026-03-01T08:00:00.000Z" },
      });
    });
    const client = new QueryClient({ defaultOptions: { queries: { retry: false, networkMode: "always" } } });
    const project = { id: "00000000-0000-4000-8000-000000000009", name: "N", place: "P", client: "C", roles: [role] };
    const room = {
      ...{ project: { ...project, awaitsConfirmation: false }, me: person, draft: null, lineDownSince: null },
      ...{ here: new HereBoard("nobody"), tell: () => undefined, say: () => undefined },
    };
    const route = createRootRoute({
      component: () => (
        <RoomContext value={room as never}>
          <CostBookPage />
        </RoomContext>
      ),
    });
    const router = createRouter({ routeTree: route, history: createMemoryHistory({ initialEntries: ["/"] }) });
    await act(async () => {
      root.render(
        <QueryClientProvider client={client}>
          <RouterProvider router={router as never} />
        </QueryClientProvider>,
      );
    });
    for (let turn = 0; turn < 80 && field("Steel in place, amount") === null && role !== "reader"; turn += 1)
      await act(async () => new Promise((done) => setTimeout(done, 25)));
  }
  const person = { id: "00000000-0000-4000-8000-000000000001", name: "Nadia Wrensfield", email: "n@w.example" };
  const field = (label: string) => place.querySelector<HTMLInputElement>(`input[aria-label="${label}"]`);
  async function type(label: string, text: string): Promise<void> {
    const input = field(label);
    if (input === null) throw new Error(label);
    await act(async () => {
      Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, "value")?.set?.call(input, text);
      input.dispatchEvent(new Event("input", { bubbles: true }));
    });
  }
  async function write(): Promise<void> {
    await act(async () => place.querySelector("form")?.requestSubmit());
    await act(async () => new Promise((done) => setTimeout(done, 30)));
  }

  it("flags every figure without a source, and writes what was typed under the tag it was read with", async () => {
    await open("owner");
    expect(place.querySelectorAll(".cost-table .price-for-show")).toHaveLength(20);
    await type("Steel in place, amount", "3.9");
    await type("Steel in place, source", "Offer 17");
    expect(place.querySelectorAll(".cost-table .price-for-show")).toHaveLength(19);
    await write();
    expect(sent).toHaveLength(1);
    expect(sent[0]?.tag).toBe(`"${digest}"`);
    expect(sent[0]?.book.rates["steel, kg in place"]).toEqual({ amount: 3.9, source: "Offer 17" });
  });

  it("keeps what was typed when another wrote the book first, and says so", async () => {
    await open("engineer", true);
    await type("Crane, amount", "310");
    await write();
    expect(place.textContent).toContain("number 1 now");
    expect(field("Crane, amount")?.value).toBe("310");
  });

  it("is read by the architect, who cannot write it, and not by a reader", async () => {
    await open("architect");
    expect(field("Crane, amount")?.readOnly).toBe(true);
    await write();
    expect(sent).toEqual([]);
    await act(async () => root.unmount());
    root = createRoot(place);
    await open("reader");
    expect(place.textContent).toContain("A reader sees no prices.");
  });
});
