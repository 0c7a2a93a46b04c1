import { demoCostBook, type RemedyStep, type Scheme } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { remedySearchShared, type RemediesAsked } from "../../src/remedies.ts";
import type { RemedyAnswer } from "../../src/remedies/remedies-of.ts";
import { strength } from "../../src/strength.ts";
import { strengthHelper } from "../../src/strength-helper.ts";
import { knownRun } from "../../src/strength/known-run.ts";
import { runShared } from "../../src/strength/run-shared.ts";
import { ShareElsewhere, type AskPosted } from "../../src/strength/share-elsewhere.ts";
import { drawOn, listed } from "./listed.ts";
import { smallSchemes } from "./small-schemes.ts";

const markId = "opening-in-sheet:w+g";
const scheme = smallSchemes.find((one) => one.markId === markId)?.scheme;
if (scheme === undefined) throw new Error(`no small scheme has ${markId}`);

/** A helper on the other side of a post: what goes there and back is cloned, as between threads, and comes later. */
function helper(posts: AskPosted[]): ShareElsewhere {
  const answer = strengthHelper();
  const elsewhere: ShareElsewhere = new ShareElsewhere((posted) => {
    posts.push(structuredClone(posted));
    setImmediate(() => elsewhere.hear(structuredClone(answer(structuredClone(posted)))));
  });
  return elsewhere;
}

const shared = (asked: RemediesAsked, helpers: readonly ShareElsewhere[], tell: (step: RemedyStep) => void) =>
  new Promise<RemedyAnswer>((settle, fail) =>
    runShared(remedySearchShared(drawOn)(asked, tell), helpers, { settle, fail }),
  );

const asked = (of: Scheme, helping: number): RemediesAsked => ({
  ...{ scheme: of, markId, book: demoCostBook, helping, known: knownRun(of, strength(of)) },
});

const alone = listed(scheme, markId);

describe("a search that is shared", () => {
  it(
    "gives the list one thread gives, and tells the same steps; looks and full runs are done elsewhere",
    { timeout: 240_000 },
    async () => {
      const [posts, steps]: [AskPosted[], RemedyStep[]] = [[], []];
      const answer = await shared(asked(scheme, 1), [helper(posts)], (step) => void steps.push(step));
      expect(JSON.stringify(answer.accepted && answer.list)).toBe(JSON.stringify(alone.list));
      expect(steps).toEqual(alone.steps);
      const works = new Set(posts.map(({ ask }) => ask.work));
      expect([works.has("look"), works.has("screened")]).toEqual([true, true]);
    },
  );

  it("fails with what stopped its helper", async () => {
    const gone = new ShareElsewhere(() => gone.end(new Error("gone")));
    await expect(shared(asked(scheme, 1), [gone], () => undefined)).rejects.toThrow("gone");
  });
});
