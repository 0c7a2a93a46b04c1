import { usualAuthority, type AuthorityProfile, type Scheme } from "@cornerway/schema";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { done } from "../../src/outcome.ts";
import { changesSince } from "../../src/permit-set/changes.ts";
import { makeSet } from "../../src/permit-set/make-set.ts";
import type { Block, Ink, TextInk } from "../../src/permit-set/paper/ink.ts";
import type { Page } from "../../src/permit-set/paper/page.ts";
import type { SetSource } from "../../src/permit-set/set-source.ts";
import { append } from "../../src/record/append.ts";
import { gatherSource } from "../../src/services/permit-sets/gather-source.ts";
import { lastNumber } from "../../src/store/record-rows.ts";
import { openReviewRoom, signInAll, startReviewService, type ReviewRoom } from "../support/review-room.ts";
import { place } from "../support/sample.ts";
import { demoScheme, sourceOf } from "../support/sample-set.ts";
import type { TestService } from "../support/service.ts";

/** As it was before: a window elsewhere, a pad smaller, a door that is gone now, and one post less. */
function earlier(): Scheme {
  const scheme = demoScheme();
  const [, second] = scheme.posts;
  const [first] = scheme.pads;
  const door = scheme.openings.find(({ tag }) => tag === "D9");
  if (second === undefined || first === undefined || door === undefined) throw new Error("the demo is another");
  return {
    ...scheme,
    posts: scheme.posts.filter(({ id }) => id !== second.id),
    pads: scheme.pads.map((pad) => (pad === first ? { ...pad, lengthUm: 500_000 } : pad)),
    openings: [
      ...scheme.openings.map((each) => (each.tag === "W1" ? { ...each, offsetUm: each.offsetUm - 400_000 } : each)),
      { ...door, id: "d90", tag: "D90", offsetUm: 4_500_000 },
    ],
  };
}

const textsOf = ({ inks, children = [] }: Block): TextInk[] => [
  ...inks.filter((ink) => ink.kind === "text"),
  ...children.flatMap(textsOf),
];
const inksOf = ({ inks, children = [] }: Block): Ink[] => [...inks, ...children.flatMap(inksOf)];
/** As a delta bears it. */
const isSign =
  (sign: string) =>
  ({ text, size, face, anchor }: TextInk): boolean =>
    text === sign && size === 7 && face === "lettering strong" && anchor === "middle";
const sheets = (source: SetSource): Page[] => {
  const made = makeSet(source);
  if (!made.ok) throw new Error(made.why.join("\n"));
  return made.set.pages;
};
/** Numbers beside the deltas of one sheet: the letter, then the number 9 pt to its left. */
const deltasOn = ({ blocks }: Page): number[] => {
  const texts = blocks.flatMap(textsOf);
  return texts.flatMap((ink, at) => {
    const next = texts[at + 1];
    const beside = next !== undefined && Math.abs(ink.x - next.x - 9) < 0.1 && Math.abs(next.y - ink.y + 2.6) < 0.1;
    return ink.text === "A" && beside ? [Number.parseInt(next.text, 10)] : [];
  });
};
const views = (pages: readonly Page[]): Page[] => pages.filter(({ number }) => /^S[12]\./.test(number));
const told = (pages: readonly Page[]): string =>
  pages.flatMap(({ blocks }) => blocks.flatMap(textsOf).map(({ text }) => text)).join(" ");

describe("what changed since the set before", () => {
  const before = { letter: "Z", scheme: earlier() };
  const source = sourceOf(demoScheme(), { earlier: [before] });

  it("is each change once, and on the plans and elevations each has its cloud and delta, and nothing else has one", () => {
    const changes = changesSince(source);
    expect(changes.map(({ tag, what }) => `${tag} ${what}`)).toEqual([
      "P2 post: new",
      "B1 pad: changed",
      "W1 opening: changed",
      "D90 opening: taken away",
    ]);
    const pages = sheets(source);
    const numbers = new Set(views(pages).flatMap(deltasOn));
    expect([...numbers].toSorted()).toEqual(changes.map(({ number }) => number));
    // W1 is in the south side of the ground level: its plan and that elevation, no other view.
    const withWindow = views(pages).filter((page) => deltasOn(page).includes(3));
    expect(withWindow.map(({ number }) => number)).toEqual(["S1.1", "S2.1"]);
    expect(told(pages)).toContain(
      "since revision Z, of which the last set before this one was printed, is in a cloud with the delta A",
    );
  });

  it("is nothing where the scheme is the same, or no set was printed before", () => {
    const same = sheets({ ...source, earlier: [{ letter: "Z", scheme: demoScheme() }] });
    expect(views(same).flatMap(deltasOn)).toEqual([]);
    const first = sheets({ ...source, earlier: [] });
    expect(views(first).flatMap(deltasOn)).toEqual([]);
    expect(told(first)).toContain("No set of an earlier revision was printed: nothing is marked as changed.");
  });
});

describe("the profile of the authority", () => {
  const source = sourceOf(demoScheme(), { earlier: [{ letter: "Z", scheme: earlier() }] });
  const by = (profile: Partial<AuthorityProfile>, more: Partial<SetSource> = {}) =>
    sheets({ ...source, ...more, authority: { ...usualAuthority, ...profile } });
  const arcs = (pages: readonly Page[]): number =>
    views(pages)
      .flatMap(({ blocks }) => blocks.flatMap(inksOf))
      .filter((ink) => ink.kind === "path" && /^M[\d. ]+A[\d. ]+0 0 1/.test(ink.d) && ink.pen === "edge").length;

  it("takes clouds off and leaves deltas, or leaves the drawings clean while the list stays", () => {
    expect(arcs(by({}))).toBeGreaterThan(0);
    const deltas = by({ marks: "deltas" });
    expect(arcs(deltas)).toBe(0);
    expect(new Set(views(deltas).flatMap(deltasOn))).toEqual(new Set([1, 2, 3, 4]));
    const clean = by({ marks: "none", name: "Quarry County" });
    expect([arcs(clean), views(clean).flatMap(deltasOn)]).toEqual([0, []]);
    expect(told(clean)).toContain("D90");
    expect(told(clean)).toContain("Quarry County asks for sets marked so.");
  });

  it("puts how often the set came again into deltas, without numbers where it wants none", () => {
    const pages = by({ delta: "issue number", numbered: false });
    expect(views(pages).flatMap(deltasOn)).toEqual([]);
    expect(
      views(pages)
        .flatMap(({ blocks }) => blocks.flatMap(textsOf))
        .filter(isSign("1")).length,
    ).toBeGreaterThan(3);
  });

  it("keeps deltas of sets before on what is still as they had it, and on nothing that changed again", () => {
    const door = (offsetUm: number): Scheme => {
      const scheme = earlier();
      const openings = scheme.openings.map((each) => (each.tag === "D9" ? { ...each, offsetUm } : each));
      return { ...scheme, openings };
    };
    const drawn = demoScheme().openings.find(({ tag }) => tag === "D9")?.offsetUm ?? 0;
    const first = { letter: "Y", scheme: door(drawn - 300_000) };
    const kept = { earlier: [first, { letter: "Z", scheme: earlier() }] };
    const signs = (pages: readonly Page[], sign: string) =>
      views(pages)
        .flatMap(({ blocks }) => blocks.flatMap(textsOf))
        .filter(isSign(sign)).length;
    expect(signs(by({ earlierDeltas: "stay" }, kept), "Z")).toBeGreaterThan(0);
    expect(signs(by({ earlierDeltas: "taken off" }, kept), "Z")).toBe(0);
    const again = { ...kept, earlier: [first, { letter: "Z", scheme: door(drawn - 100_000) }] };
    expect(signs(by({ earlierDeltas: "stay" }, again), "Z")).toBe(0);
  });

  it("marks pads on the foundation plan, and on cut plans what is cut otherwise and what is no longer cut", () => {
    const pages = by({});
    const on = (pattern: RegExp) => pages.filter(({ number }) => pattern.test(number)).flatMap(deltasOn);
    expect(on(/^S7$/)).toEqual([2]);
    expect(on(/^S5/).toSorted()).toEqual([3, 4]);
  });
});

describe("the set before", () => {
  let service: TestService;
  let room: ReviewRoom;
  beforeAll(async () => {
    service = await startReviewService();
    room = await openReviewRoom(service, await signInAll(service));
  });
  afterAll(() => service.close());

  it("is the one printed last of an earlier revision, by the record up to the head, not the revision before", async () => {
    const { owner, people } = service;
    const db = owner.connection;
    const beforeOf = async (letter: string) => {
      const upTo = (await lastNumber(db, room.projectId)) ?? 0;
      return (
        (await gatherSource(db, { projectId: room.projectId, letter, units: "SI", upTo }, undefined))?.earlier.at(-1) ??
        null
      );
    };
    const by = { id: people.engineer.id, name: people.engineer.name, role: "engineer" } as const;
    const printed = (letter: string) =>
      owner.act(room.projectId, async (tx) => {
        const pages = { units: "SI", upTo: 1, setDigest: "a".repeat(64), pages: 3 } as const;
        await append(tx, room.projectId, by, () => ({ kind: "set printed", letter, ...pages }));
        return done(undefined);
      });
    const a = await room.send([place(1)]);
    await printed("A");
    await room.send([place(2)]);
    await room.send([place(3)]);
    expect(await beforeOf("C")).toEqual({ letter: "A", scheme: a.scheme });
    await printed("C");
    expect(await beforeOf("C")).toMatchObject({ letter: "A" });
    expect(await beforeOf("A")).toBeNull();
  });
});
