import { expect, it } from "vitest";
import { Turnstile, TooBusy } from "../../src/services/turnstile.ts";

it("a turnstile lets through so many at once, the waiting in their order, and turns the rest away", async () => {
  const turnstile = new Turnstile({ atOnce: 2, mostWaiting: 3 });
  const done: number[] = [];
  const ends: (() => void)[] = [];
  let inside = 0;
  let most = 0;
  const work = (n: number) => async () => {
    inside += 1;
    most = Math.max(most, inside);
    await new Promise<void>((end) => ends.push(end));
    inside -= 1;
    done.push(n);
  };
  const passing = [0, 1, 2, 3, 4].map((n) => turnstile.pass(work(n)));
  await expect(turnstile.pass(work(5))).rejects.toThrow(TooBusy);
  while (done.length < 5) {
    await new Promise((later) => setTimeout(later, 0));
    ends.shift()?.();
  }
  await Promise.all(passing);
  expect(done).toEqual([0, 1, 2, 3, 4]);
  expect(most).toBe(2);
});

it("work that fails leaves its place to the next", async () => {
  const turnstile = new Turnstile({ atOnce: 1, mostWaiting: 1 });
  const failing = turnstile.pass(() => Promise.reject(new Error("no")));
  const next = turnstile.pass(async () => "through");
  await expect(failing).rejects.toThrow("no");
  expect(await next).toBe("through");
});
