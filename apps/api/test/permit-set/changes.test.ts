import type { Scheme } from "@cornerway/schema";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { done } from "../../src/outcome.ts";
import { changesSince } from "../../src/permit-set/changes.ts";
import { makeSet } from "../../src/permit-set/make-set.ts";
import type { Block, TextInk } from "../../src/permit-set/paper/ink.ts";
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
  const source = sourceOf(demoScheme(), { before });

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
    expect(told(pages)).toContain("Against revision Z");
  });

  it("is nothing where the scheme is the same, or no set was printed before", () => {
    const same = sheets({ ...source, before: { letter: "Z", scheme: demoScheme() } });
    expect(views(same).flatMap(deltasOn)).toEqual([]);
    const first = sheets({ ...source, before: null });
    expect(views(first).flatMap(deltasOn)).toEqual([]);
    expect(told(first)).toContain("No set of an earlier revision was printed: nothing is clouded.");
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
      return (await gatherSource(db, { projectId: room.projectId, letter, units: "SI", upTo }, undefined))?.before;
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
