import { expect, it } from "vitest";
import { KeptTexts } from "../../src/store/kept-texts.ts";

it("what was not asked for longest makes room once there are too many characters", () => {
  const texts = new KeptTexts(10);
  texts.keep("a", "12345");
  texts.keep("b", "12345");
  texts.get("a");
  texts.keep("c", "1");
  expect([texts.get("a"), texts.get("b"), texts.get("c")]).toEqual(["12345", undefined, "1"]);
});

it("a text kept twice takes its room once", () => {
  const texts = new KeptTexts(10);
  texts.keep("a", "12345");
  texts.keep("a", "12345");
  texts.keep("b", "12345");
  expect([texts.get("a"), texts.get("b")]).toEqual(["12345", "12345"]);
});

it("a text longer than all the room is sent and not kept", () => {
  const texts = new KeptTexts(3);
  expect(texts.keep("a", "12345")).toBe("12345");
  expect(texts.get("a")).toBeUndefined();
});
