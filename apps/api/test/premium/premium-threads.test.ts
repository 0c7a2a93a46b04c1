import { premium } from "@cornerway/engine";
import { demoCostBook, digestOf, emptyScheme, type Scheme } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { priced } from "../../src/premium/premium-threads.ts";
import { premiumOf } from "../../src/services/premium-of.ts";
import { unit } from "../support/sample.ts";

const scheme: Scheme = { ...emptyScheme, containers: [unit(1)] };
const costBook = { number: 0, book: demoCostBook, digest: digestOf(demoCostBook), changed: null };
/** No scheme at all: what the thread is given it reads by its schema, and ends. */
const broken = { ...scheme, containers: [{ ...unit(1), xUm: Number.NaN }] };

describe("a premium", () => {
  it("worked out in a thread is the engine's own", async () => {
    expect(await priced({ scheme, book: demoCostBook, marks: null })).toEqual(premium(scheme, demoCostBook));
  });

  it("that cannot be worked out says so, and is tried again when it is asked for again", async () => {
    const asked = { scheme: broken, contentDigest: digestOf("broken") };
    await expect(premiumOf(asked, costBook, null)).rejects.toThrow("the premium could not be worked out");
    const mended = await premiumOf({ ...asked, scheme }, costBook, null);
    expect(mended).toEqual(premium(scheme, demoCostBook));
  });
});
