import { emptyScheme } from "@cornerway/schema";
import type { Container, Operation, Scheme } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { DraftStore } from "../../../src/data/draft/draft-store.ts";
import { Office, settled } from "../../support/office.ts";
import { schemeOf, unitAt } from "../../support/schemes.ts";

const g1 = unitAt("g1", "G1", 0, 0, 0);
const g2 = unitAt("g2", "G2", 0, 2438, 0);
const g3 = unitAt("g3", "G3", 0, 4876, 0);
const place = (container: Container): Operation => ({ kind: "container.place", container });
const move = (id: string, xMm: number): Operation => ({ kind: "container.move", id, xUm: xMm * 1000, yUm: 0, zUm: 0 });
const eastOf = (scheme: Scheme, id: string) => scheme.containers.find((unit) => unit.id === id)?.xUm;

async function opened(scheme: Scheme) {
  const office = new Office(scheme);
  return { office, store: new DraftStore(await office.fetchDraft(), office) };
}

describe("a DraftStore shows the server's draft with this page's acts on top", () => {
  it("draws at once, sends one act per drop in order, and ends on the server's scheme and digest", async () => {
    const { office, store } = await opened(emptyScheme);
    expect(store.draw([place(g1)])).toEqual({ ok: true });
    expect(store.draw([move("g1", 500)])).toEqual({ ok: true });
    expect(eastOf(store.getSnapshot().scheme, "g1")).toBe(500_000);
    expect(store.getSnapshot().pending).toHaveLength(2);
    await settled();
    expect(office.received.map(({ base, operations }) => [base, operations.length])).toEqual([
      [0, 1],
      [1, 1],
    ]);
    const { scheme, server, pending, number, contentDigest } = store.getSnapshot();
    expect([scheme, server, pending, number]).toEqual([office.scheme, office.scheme, [], 2]);
    expect(contentDigest).toBe((await office.fetchDraft()).contentDigest);
  });

  it("refuses at once what the scheme cannot take, and sends nothing", async () => {
    const { office, store } = await opened(schemeOf([g1]));
    expect(store.draw([place({ ...g2, tag: "G1" })])).toMatchObject({
      ok: false,
      refusal: { reason: "tag-taken", by: ["g1"] },
    });
    await settled();
    expect(office.received).toEqual([]);
  });

  it("an entry of its own act that arrives before the answer is taken once", async () => {
    const { office, store } = await opened(schemeOf([g1]));
    store.draw([move("g1", 500)]);
    await settled();
    store.receive(office.entries);
    store.receive(office.entries);
    expect(store.getSnapshot()).toMatchObject({ number: 1, pending: [] });
    expect(store.getSnapshot().scheme).toEqual(office.scheme);
  });

  it("re-bases an unsent act on what someone else drew elsewhere", async () => {
    const { office, store } = await opened(schemeOf([g1, g2, g3]));
    office.reachable = false;
    store.draw([move("g3", 100)]);
    store.draw([move("g1", 500)]);
    await settled();
    office.take("theirs", [move("g2", 900)], "Bo Linne");
    store.receive(office.entries);
    expect([eastOf(store.getSnapshot().scheme, "g1"), eastOf(store.getSnapshot().scheme, "g2")]).toEqual([
      500_000, 900_000,
    ]);
    office.reachable = true;
    office.passTime();
    await settled();
    // The first went out before on draft 0, and may have arrived: it goes out again to the letter. The second never did.
    expect(office.received).toMatchObject([{ base: 0 }, { base: 2 }]);
    expect(store.getSnapshot().scheme).toEqual(office.scheme);
  });

  it("sets an unsent act aside, with both versions, when someone else moved the same thing first", async () => {
    const { office, store } = await opened(schemeOf([g1, g2]));
    office.reachable = false;
    store.draw([move("g2", 100)]);
    store.draw([move("g1", 500)]);
    await settled();
    office.take("theirs", [move("g1", 900)], "Bo Linne");
    store.receive(office.entries);
    expect(eastOf(store.getSnapshot().scheme, "g1")).toBe(900_000);
    expect(store.getSnapshot().conflicts).toMatchObject([
      {
        elements: ["g1"],
        act: { operations: [move("g1", 500)] },
        theirs: [{ by: "Bo Linne", operations: [move("g1", 900)] }],
      },
    ]);
  });

  it("mine sends the act again on top of theirs; theirs drops it", async () => {
    for (const [answer, east] of [
      ["mine", 500_000],
      ["theirs", 0],
    ] as const) {
      const { office, store } = await opened(schemeOf([g1]));
      office.conflictWith = ["g1"];
      store.draw([move("g1", 500)]);
      await settled();
      const [conflict] = store.getSnapshot().conflicts;
      expect(conflict?.elements).toEqual(["g1"]);
      office.conflictWith = null;
      store.answerConflict(conflict?.act.id ?? "", answer);
      await settled();
      expect(eastOf(office.scheme, "g1")).toBe(east);
      expect(store.getSnapshot()).toMatchObject({ conflicts: [], pending: [] });
    }
  });

  it("keeps acts while the line is down, says since when, and sends them when it is back", async () => {
    const { office, store } = await opened(schemeOf([g1]));
    office.reachable = false;
    store.draw([move("g1", 500)]);
    store.draw([move("g1", 700)]);
    await settled();
    expect(store.getSnapshot()).toMatchObject({ cutOffSince: 1000, number: 0 });
    expect(store.getSnapshot().pending).toHaveLength(2);
    office.reachable = true;
    store.retry();
    await settled();
    expect(store.getSnapshot()).toMatchObject({ cutOffSince: null, pending: [], number: 2 });
    expect(eastOf(office.scheme, "g1")).toBe(700_000);
  });

  it.each([
    { status: 503, code: "unready" },
    { status: 429, code: "too-many-tries" },
  ])("keeps an act the service answers with $code, and sends it again under the same id", async (busy) => {
    const { office, store } = await opened(schemeOf([g1]));
    office.busy = busy;
    store.draw([move("g1", 500)]);
    await settled();
    const [kept] = store.getSnapshot().pending;
    expect(store.getSnapshot()).toMatchObject({ refused: null, canUndo: true, cutOffSince: 1000 });
    office.busy = null;
    office.passTime();
    await settled();
    expect(office.received.map(({ id }) => id)).toEqual([kept?.id]);
    expect(store.getSnapshot()).toMatchObject({ cutOffSince: null, pending: [], number: 1 });
  });

  it("reads the draft anew when an entry between is missing", async () => {
    const { office, store } = await opened(schemeOf([g1, g2]));
    office.take("one", [move("g1", 100)]);
    office.take("two", [move("g2", 200)]);
    store.receive(office.entries.slice(1));
    await settled();
    expect(store.getSnapshot()).toMatchObject({ number: 2, scheme: office.scheme });
  });

  it("sets aside what the service would not take, with why, until it is drawn again or left out", async () => {
    const { office, store } = await opened(schemeOf([g1]));
    office.refuse = "The scheme cannot take this change.";
    store.draw([move("g1", 500)]);
    await settled();
    const [aside] = store.getSnapshot().conflicts;
    expect(aside).toMatchObject({ why: "The scheme cannot take this change.", act: { operations: [move("g1", 500)] } });
    expect(store.getSnapshot()).toMatchObject({ pending: [], canUndo: false });
    expect(eastOf(store.getSnapshot().scheme, "g1")).toBe(0);
    office.refuse = null;
    store.answerConflict(aside?.act.id ?? "", "mine");
    await settled();
    expect(eastOf(office.scheme, "g1")).toBe(500_000);
  });

  it.each([
    { status: 401, code: "not-signed-in" },
    { status: 403, code: "csrf-refused" },
  ])("keeps an act that $code keeps out, for the same person to send", async (busy) => {
    const { office, store } = await opened(schemeOf([g1]));
    office.busy = busy;
    store.draw([move("g1", 500)]);
    await settled();
    expect(store.getSnapshot()).toMatchObject({ conflicts: [], refused: null });
    expect(office.kept.pending).toHaveLength(1);
  });

  it("sets aside with an act the later ones on the same thing, so that theirs is not drawn over unasked", async () => {
    const { office, store } = await opened(schemeOf([g1]));
    office.conflictWith = ["g1"];
    store.draw([move("g1", 500)]);
    store.draw([move("g1", 700)]);
    await settled();
    office.conflictWith = null;
    await settled();
    expect(store.getSnapshot().conflicts.map(({ act }) => act.operations)).toEqual([
      [move("g1", 500)],
      [move("g1", 700)],
    ]);
    expect(eastOf(office.scheme, "g1")).toBe(0);
  });

  it("an act and its undo come to nothing when the act is set aside", async () => {
    const { office, store } = await opened(schemeOf([g1]));
    office.conflictWith = ["g1"];
    store.draw([move("g1", 500)]);
    store.undo();
    await settled();
    expect(store.getSnapshot()).toMatchObject({ conflicts: [], pending: [] });
  });

  it("finds by comparison what others changed while it read the draft anew", async () => {
    const { office, store } = await opened(schemeOf([g1, g2]));
    office.reachable = false;
    store.draw([move("g2", 100)]);
    store.draw([move("g1", 500)]);
    await settled();
    office.take("theirs", [move("g1", 900)], "Bo Linne");
    office.reachable = true;
    await store.reload();
    store.retry();
    await settled();
    expect(store.getSnapshot().conflicts).toMatchObject([{ elements: ["g1"], act: { operations: [move("g1", 500)] } }]);
    expect([eastOf(office.scheme, "g1"), eastOf(office.scheme, "g2")]).toEqual([900_000, 100_000]);
  });
});

describe("what a DraftStore keeps", () => {
  it("is every act not taken in, before it is sent, and is nothing once all are", async () => {
    const { office, store } = await opened(schemeOf([g1]));
    office.reachable = false;
    store.draw([move("g1", 500)]);
    store.draw([move("g1", 700)]);
    await settled();
    expect(office.kept.pending.map(({ base }) => base)).toEqual([0, null]);
    office.reachable = true;
    store.retry();
    await settled();
    expect(office.kept).toEqual({ pending: [], conflicts: [] });
  });

  it("is taken up by the next page and sent once, even where the first sending had arrived", async () => {
    const { office, store } = await opened(emptyScheme);
    office.loseAnswers = true;
    store.draw([place(g1)]);
    store.draw([move("g1", 500)]);
    await settled();
    store.stop();
    office.loseAnswers = false;
    const next = new DraftStore(await office.fetchDraft(), office);
    next.adopt(office.kept);
    expect(eastOf(next.getSnapshot().scheme, "g1")).toBe(500_000);
    await settled();
    expect(office.scheme.containers).toHaveLength(1);
    expect(eastOf(office.scheme, "g1")).toBe(500_000);
    expect(next.getSnapshot()).toMatchObject({ pending: [], conflicts: [], number: 2 });
  });

  it("says when this browser keeps nothing", async () => {
    const { office, store } = await opened(schemeOf([g1]));
    office.keep = () => Promise.reject(new Error("no room"));
    store.draw([move("g1", 500)]);
    await settled();
    expect(store.getSnapshot()).toMatchObject({ keepsNothing: true, pending: [] });
    expect(eastOf(office.scheme, "g1")).toBe(500_000);
  });
});

describe("undo and redo", () => {
  it("take the last own act back and draw it again, naming the act they undo", async () => {
    const { office, store } = await opened(schemeOf([g1]));
    store.draw([move("g1", 500)]);
    await settled();
    expect(store.undo()).toEqual({ ok: true });
    await settled();
    expect(eastOf(office.scheme, "g1")).toBe(0);
    expect(store.redo()).toEqual({ ok: true });
    await settled();
    expect(eastOf(office.scheme, "g1")).toBe(500_000);
    const [first, second, third] = office.received;
    expect([second?.undoes, third?.undoes]).toEqual([first?.id, second?.id]);
  });

  it("leave a thing alone that someone else has changed since, and name it", async () => {
    const { office, store } = await opened(schemeOf([g1]));
    store.draw([move("g1", 500)]);
    await settled();
    office.take("theirs", [move("g1", 900)], "Bo Linne");
    store.receive(office.entries);
    expect(store.undo()).toEqual({ ok: false, changed: ["g1"] });
    expect(eastOf(store.getSnapshot().scheme, "g1")).toBe(900_000);
  });

  it("go on with the move before one that others drew over", async () => {
    const { office, store } = await opened(schemeOf([g1, g2]));
    store.draw([move("g2", 300)]);
    store.draw([move("g1", 500)]);
    await settled();
    office.take("theirs", [move("g1", 900)], "Bo Linne");
    store.receive(office.entries);
    expect(store.undo()).toEqual({ ok: false, changed: ["g1"] });
    expect(store.undo()).toEqual({ ok: true });
    await settled();
    expect([eastOf(office.scheme, "g1"), eastOf(office.scheme, "g2")]).toEqual([900_000, 0]);
  });

  it("say that there is nothing when there is nothing", async () => {
    const { store } = await opened(emptyScheme);
    expect([store.undo(), store.redo()]).toEqual([
      { ok: false, nothing: true },
      { ok: false, nothing: true },
    ]);
  });

  it("a whole run of acts taken back leaves the scheme it began with", async () => {
    const { office, store } = await opened(schemeOf([g1]));
    const begun = office.scheme;
    store.draw([place(g2)]);
    store.draw([move("g2", 700)]);
    store.draw([{ kind: "container.turn", id: "g1", turnMdeg: 90_000 }]);
    for (let times = 0; times < 3; times += 1) store.undo();
    await settled();
    expect(office.scheme).toEqual(begun);
  });
});
