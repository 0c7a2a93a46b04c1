import { emptyScheme, Scheme, SiteItem, type Scheme as SchemeType } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { siteItems } from "../../src/site/site-items.ts";
import { drawnUnit } from "../strength/drawn-unit.ts";

const keysOf = (scheme: SchemeType): string[] => siteItems(scheme).map(({ key }) => key);

describe("the items of a site", () => {
  const scheme = drawnUnit({
    type: "1CC",
    openings: [{ face: "right", framed: true, fromMm: 2000, widthMm: 1500 }],
    posts: [3000],
  });
  const [opening] = scheme.openings;

  it("are every post, pad and frame that is drawn, its welds, and what is looked at first", () => {
    const keys = keysOf(scheme);
    const postId = scheme.posts[0]?.id;
    expect(keys).toEqual(
      expect.arrayContaining([
        ...[`post:${postId}`, `weld:${postId}`, `framing:${opening?.id}`, `weld:${opening?.id}`],
        ...["container surveyed:u1", "steel as assumed before cutting:u1"],
        ...scheme.pads.flatMap(({ id }) => [`pad:${id}`, `ground and level of the pad:${id}`]),
      ]),
    );
    expect(new Set(keys).size).toBe(keys.length);
    for (const item of siteItems(scheme)) expect(SiteItem.safeParse(item).success, item.key).toBe(true);
  });

  it("have the stage of a cut as a point to hold at", () => {
    const staged = (cut: "after placing" | "after shoring") =>
      keysOf({ ...scheme, openings: scheme.openings.map((one) => ({ ...one, cut })) });
    expect(staged("after placing")).toContain(`in its place before cutting:${opening?.id}`);
    expect(staged("after shoring")).toContain(`shored before cutting:${opening?.id}`);
    expect(keysOf(scheme).some((key) => key.includes("before cutting:o"))).toBe(false);
  });

  it("of nothing are none", () => expect(siteItems(Scheme.parse(emptyScheme))).toEqual([]));
});
