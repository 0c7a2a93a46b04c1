import { QueryClient, QueryObserver } from "@tanstack/react-query";
import { expect, it } from "vitest";
import { readAgain } from "../../src/data/read-again.ts";

/** An answer that comes when the test says so. */
function asked() {
  const answers: ((answer: string) => void)[] = [];
  return { answers, queryFn: () => new Promise<string>((resolve) => void answers.push(resolve)) };
}

it.each([
  ["the first answer is still on its way", false],
  ["an answer is already there", true],
])("what was asked before the change never stands as the newest when %s", async (_when, answeredBefore) => {
  const client = new QueryClient();
  const { answers, queryFn } = asked();
  const observer = new QueryObserver(client, { queryKey: ["revision", "B"], queryFn });
  const leave = observer.subscribe(() => undefined);
  if (answeredBefore) {
    answers[0]?.("not checked");
    await expect.poll(() => observer.getCurrentResult().data).toBe("not checked");
    void observer.refetch();
  }

  const again = readAgain(client, { queryKey: ["revision"] });
  await expect.poll(() => answers.length).toBe(answeredBefore ? 3 : 2);
  answers.at(-1)?.("checked");
  answers.at(-2)?.("not checked");
  await again;

  expect(observer.getCurrentResult().data).toBe("checked");
  leave();
});

it("leaves alone what the filters do not name", async () => {
  const client = new QueryClient();
  const { answers, queryFn } = asked();
  const observer = new QueryObserver(client, { queryKey: ["record"], queryFn });
  const leave = observer.subscribe(() => undefined);
  await readAgain(client, { predicate: ({ queryKey }) => !queryKey.includes("record") });
  answers[0]?.("kept");
  await expect.poll(() => observer.getCurrentResult().data).toBe("kept");
  expect(answers).toHaveLength(1);
  leave();
});
