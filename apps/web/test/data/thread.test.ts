import { mostOfThread, type Note } from "@cornerway/schema";
import { afterEach, expect, it, vi } from "vitest";
import { fetchThread } from "../../src/data/thread.ts";

const projectId = "00000000-0000-4000-8000-000000000001";
const author = { id: "00000000-0000-4000-8000-000000000002", name: "Wren Hallow", role: "engineer" } as const;

const noteOf = (number: number): Note => ({
  id: `00000000-0000-4000-8000-${String(number).padStart(12, "0")}`,
  elementId: "g1",
  markId: null,
  revision: "A",
  answers: null,
  text: `note ${number}`,
  author,
  writtenAt: "2026-03-02T09:00:00.000Z",
  settledAt: null,
});
const notes = Array.from({ length: mostOfThread + 1 }, (_, at) => noteOf(at + 1));

/** A service that holds these notes, and gives its lists in pages of 600. */
function serviceWith(held: Note[]) {
  const asked: string[] = [];
  const fetched = async ({ url }: Request) => {
    const { pathname, searchParams } = new URL(url);
    asked.push(pathname.split("/").at(-1) ?? "");
    if (pathname.endsWith("/thread"))
      return Response.json({ notes: held.slice(-mostOfThread), requests: [], stamps: [] });
    const from = held.findIndex(({ id }) => id === searchParams.get("after")) + 1;
    const page = held.slice(from, from + 600);
    const next = from + 600 < held.length ? { link: `<${pathname}?after=${page.at(-1)?.id}>; rel="next"` } : {};
    return Response.json(page, { headers: next });
  };
  vi.stubGlobal("fetch", vi.fn(fetched));
  return asked;
}

afterEach(() => vi.unstubAllGlobals());

it("a thread that is not full is read at once", async () => {
  const asked = serviceWith(notes.slice(0, 3));
  expect((await fetchThread(projectId)).notes.map(({ text }) => text)).toEqual(["note 1", "note 2", "note 3"]);
  expect(asked).toEqual(["thread"]);
});

it("of a full thread the first note is there as well as the last", async () => {
  const asked = serviceWith(notes);
  const thread = await fetchThread(projectId);
  expect(thread.notes).toEqual(notes);
  expect(asked).toEqual(["thread", "notes", "notes"]);
});
