import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  builtState,
  drawnDigestOf,
  emptyScheme,
  refuseSiteWord,
  roles,
  Scheme,
  siteActs,
  siteClosers,
  siteItemKinds,
  siteItemsNow,
  standsOtherwise,
  mayDo,
  type Author,
  type Post,
  type Role,
  type SiteItem,
  type SiteWord,
} from "../src/index.ts";

const person = (at: number, role: Role): Author => ({
  ...{ id: `00000000-0000-4000-8000-00000000000${at}`, name: `Person ${at}`, role },
});
/** The last one is owner and engineer, which one person may be. */
const people: readonly Author[] = [
  ...roles.map((role, at) => person(at, role)),
  ...(["owner", "engineer"] as const).map((role) => person(9, role)),
];
const said = ["built", "differs", "missing", "accepted", "to mend", "reopened"] as const;
const post: Post = {
  ...{ id: "p1", tag: "P1", xUm: 0, yUm: 0, baseZUm: 0, topZUm: 2_600_000, turnMdeg: 0, section: "tube 100x100x4" },
};
const drawn = (one: Post = post): Scheme => Scheme.parse({ ...emptyScheme, posts: [one] });
const item = (kind: SiteItem["kind"] = "post"): SiteItem => ({
  ...{ key: `${kind}:p1`, kind, point: null, elementId: "p1", weldM: null },
});
const digest = drawnDigestOf(drawn(), "p1") ?? "";

type Move = { by: Author; says: SiteWord["says"] };
const wordOf = ({ by, says }: Move, kind: SiteItem["kind"] = "post", drawnDigest = digest): SiteWord => {
  const word = {
    ...{ id: "00000000-0000-4000-8000-0000000000aa", revision: "A", key: `${kind}:p1`, number: 1, elementId: "p1" },
    ...{ drawnDigest, author: by, saidAt: "2026-01-01T00:00:00.000Z", text: "Words." },
  };
  return says === "built" || says === "differs" || says === "missing"
    ? { says, ...word, photos: [] }
    : { says, ...word };
};
const moves = fc.array(fc.record<Move>({ by: fc.constantFrom(...people), says: fc.constantFrom(...said) }), {
  minLength: 10,
  maxLength: 80,
});

describe("an item on site", () => {
  it("is closed by a role that may, never twice, and a difference is accepted by the engineer and not by whoever stated it", () => {
    const seen = { built: 0, accepted: 0 };
    fc.assert(
      fc.property(fc.constantFrom(...siteItemKinds), moves, (kind, tried) => {
        const words: SiteWord[] = [];
        for (const { by, says } of tried) {
          const last = words.at(-1);
          if (refuseSiteWord(kind, last, says, by) !== undefined) continue;
          const may = siteActs[says] === "close-site-item" ? siteClosers(kind) : mayDo["judge-site-item"];
          expect(may).toContain(by.role);
          if (says === "built") {
            seen.built += 1;
            expect(["built", "accepted"]).not.toContain(last?.says);
          }
          if (says === "accepted") {
            seen.accepted += 1;
            expect(last?.says).toBe("differs");
            expect(last?.author.id).not.toBe(by.id);
          }
          words.push(wordOf({ by, says }, kind));
        }
      }),
      { numRuns: 500 },
    );
    expect(seen.built).toBeGreaterThan(100);
    expect(seen.accepted).toBeGreaterThan(20);
  });

  it("waits for a role that can take its next step, and for nobody once it is closed", () => {
    fc.assert(
      fc.property(fc.constantFrom(...siteItemKinds), moves, (kind, tried) => {
        const words: SiteWord[] = [];
        for (const move of tried)
          if (refuseSiteWord(kind, words.at(-1), move.says, move.by) === undefined) words.push(wordOf(move, kind));
        const [now] = siteItemsNow(drawn(), [item(kind)], words);
        const next = ["built", "differs", "missing", "accepted", "to mend"] as const;
        const someone = (role: Role) => person(7, role);
        const can = roles.filter((role) =>
          next.some((says) => refuseSiteWord(kind, words.at(-1), says, someone(role)) === undefined),
        );
        if (now?.waitsFor === null) expect(can).toEqual([]);
        for (const role of now?.waitsFor ?? []) expect(can).toContain(role);
      }),
    );
  });

  it("of welds and hold points is the engineer's to close", () => {
    const refusal = refuseSiteWord("weld", undefined, "built", person(3, "owner"));
    expect(refusal).toEqual({ code: "closer-refused", detail: "the engineer says that of a weld" });
    expect(refuseSiteWord("post", undefined, "built", person(3, "owner"))).toBeUndefined();
  });

  it("is open again once it is drawn otherwise, and stays closed while it is not", () => {
    const words = [wordOf({ by: person(1, "owner"), says: "built" })];
    expect(siteItemsNow(drawn(), [item()], words)).toMatchObject([
      { state: "built", drawnOtherwise: false, waitsFor: null },
    ]);
    const moved = drawn({ ...post, section: "tube 100x100x6" });
    expect(siteItemsNow(moved, [item()], words)).toMatchObject([{ state: "open", drawnOtherwise: true }]);
  });
});

describe("a revision", () => {
  const now = (...says: SiteWord["says"][]) =>
    siteItemsNow(
      drawn(),
      [item()],
      says.map((one) => wordOf({ by: person(1, "owner"), says: one })),
    );

  it("is built as drawn once every item is, and not built as drawn from the first that is missing or differs", () => {
    expect(builtState(now())).toBe("being built");
    expect(builtState(now("built"))).toBe("as drawn");
    expect(builtState([...now("built"), ...now()])).toBe("being built");
    for (const says of ["missing", "differs"] as const) {
      expect(builtState([...now("built"), ...now(says)])).toBe("not built as drawn");
      expect(standsOtherwise(now(says))).toEqual(["p1"]);
    }
  });

  it("with a difference that the engineer accepts is still not built as drawn, but its results stand", () => {
    const accepted = now("differs", "accepted");
    expect([builtState(accepted), standsOtherwise(accepted)]).toEqual(["not built as drawn", []]);
  });
});
