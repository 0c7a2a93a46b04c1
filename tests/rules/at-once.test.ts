import { expect, it } from "vitest";
import { atOnce } from "../runner/at-once.mjs";

/** A job that ends when it is told to. */
function held() {
  let end = (_value: string): void => undefined;
  let fail = (_error: Error): void => undefined;
  let begun = false;
  const ended = new Promise<string>((resolve, reject) => {
    end = resolve;
    fail = reject;
  });
  const job = () => {
    begun = true;
    return ended;
  };
  return { job, end: (value: string) => end(value), fail: (error: Error) => fail(error), hasBegun: () => begun };
}

const turn = () => new Promise((resume) => setImmediate(resume));

it("atOnce begins no more jobs than it may, and answers in their order whichever ends first", async () => {
  const jobs = [held(), held(), held()];
  const [first, second, third] = jobs;
  const all = atOnce(
    2,
    jobs.map(({ job }) => job),
  );
  await turn();
  expect(jobs.map(({ hasBegun }) => hasBegun())).toEqual([true, true, false]);
  second?.end("b");
  await turn();
  expect(third?.hasBegun()).toBe(true);
  third?.end("c");
  first?.end("a");
  expect(await all).toEqual(["a", "b", "c"]);
});

it("atOnce throws on what a job throws once the others at work have ended, and begins no other", async () => {
  const jobs = [held(), held(), held()];
  const [first, second, third] = jobs;
  let settled = false;
  const all = atOnce(
    2,
    jobs.map(({ job }) => job),
  ).finally(() => (settled = true));
  const told = all.catch((error: unknown) => error);
  first?.fail(new Error("stopped"));
  await turn();
  expect(settled).toBe(false);
  second?.end("b");
  expect(await told).toEqual(new Error("stopped"));
  expect(third?.hasBegun()).toBe(false);
});
