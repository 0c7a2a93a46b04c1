import { expect, it } from "vitest";
import { greeting } from "../../src/wording/greeting.ts";

it.each([
  [0, 0, "Nothing waits for you, Ines."],
  [1, 3, "One thing waits for you, Ines."],
  [2, 0, "Two things wait for you, Ines."],
  [7, 0, "7 things wait for you, Ines."],
  [0, 1, "One thing is owed by you, Ines."],
  [0, 5, "5 things are owed by you, Ines."],
])("the desk never says that nothing waits beside what is owed: %i waiting, %i owed", (waiting, owed, words) => {
  expect(greeting(waiting, owed, "Ines")).toBe(words);
});
