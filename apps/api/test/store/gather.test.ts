import { setImmediate } from "node:timers/promises";
import { expect, it } from "vitest";
import { gather } from "../../src/store/gather.ts";

/** Answers each key with its double, when told to. */
function asker() {
  const asked: (readonly number[])[] = [];
  const told: { answer(): void; fail(reason: Error): void }[] = [];
  const ask = gather<number, number>((keys) => {
    asked.push(keys);
    return new Promise((answer, fail) => told.push({ answer: () => answer(keys.map((key) => 2 * key)), fail }));
  });
  return { ask, asked, told };
}

it("what is asked in one moment is asked together, and each gets its own answer", async () => {
  const { ask, asked, told } = asker();
  const answers = Promise.all([ask(1), ask(2), ask(1)]);
  await setImmediate();
  told[0]?.answer();
  expect(await answers).toEqual([2, 4, 2]);
  expect(asked).toEqual([[1, 2, 1]]);
});

it("what is asked while an asking is under way is not answered by it, but by the next", async () => {
  const { ask, asked, told } = asker();
  const first = ask(1);
  await setImmediate();
  const later = Promise.all([ask(1), ask(3)]);
  expect(asked).toEqual([[1]]);
  told[0]?.answer();
  expect(await first).toBe(2);
  await setImmediate();
  expect(asked).toEqual([[1], [1, 3]]);
  told[1]?.answer();
  expect(await later).toEqual([2, 6]);
});

it("a fault is told to all who were asked together, and the next asking goes on", async () => {
  const { ask, told } = asker();
  const failed = Promise.allSettled([ask(1), ask(2)]);
  await setImmediate();
  told[0]?.fail(new Error("away"));
  expect((await failed).map(({ status }) => status)).toEqual(["rejected", "rejected"]);
  const next = ask(3);
  await setImmediate();
  told[1]?.answer();
  expect(await next).toBe(6);
});
