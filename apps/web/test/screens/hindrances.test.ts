import { assess } from "@cornerway/engine";
import { expect, it } from "vitest";
import { hindrances } from "../../src/screens/status/hindrances.ts";
import { demoScheme } from "../support/demo-scheme.ts";

it("what does not work is told to the owner by its tag, the one its sentence speaks of", () => {
  const { marks } = assess(demoScheme);
  const told = hindrances({ marks, scope: null, requests: [], scheme: demoScheme, revision: "A", units: "SI" });
  const broken = told.filter(({ mark }) => mark !== null);
  expect(broken).not.toEqual([]);
  for (const { heading, sentence } of broken) {
    const [, tag = "no tag"] = /^([A-Z]+\d+) does not work yet$/.exec(heading) ?? [];
    expect(sentence).toContain(tag);
  }
});
