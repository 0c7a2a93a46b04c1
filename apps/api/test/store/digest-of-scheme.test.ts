import { catalogRows } from "@cornerway/engine";
import { contentDigest, digestOf, emptyScheme } from "@cornerway/schema";
import { expect, it } from "vitest";
import { digestOfScheme } from "../../src/store/digest-of-scheme.ts";
import { unit } from "../support/sample.ts";

it("digestOfScheme is the schema's contentDigest under the engine's catalogue, as browsers compute it", () => {
  for (const scheme of [emptyScheme, { ...emptyScheme, containers: [unit(1), unit(2)] }]) {
    expect(digestOfScheme(scheme)).toBe(contentDigest(scheme, digestOf(catalogRows)));
  }
});
