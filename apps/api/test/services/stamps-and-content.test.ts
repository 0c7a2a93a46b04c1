import { randomUUID } from "node:crypto";
import { dispositions, type Disposition, type Revision } from "@cornerway/schema";
import fc from "fast-check";
import { afterAll, beforeAll, expect, it } from "vitest";
import { pressStamp } from "../../src/services/press-stamp.ts";
import { readStamps } from "../../src/services/read-stamps.ts";
import { boundTo, openReviewRoom, signInAll, startReviewService, type ReviewRoom } from "../support/review-room.ts";
import { move, place } from "../support/sample.ts";
import type { TestService } from "../support/service.ts";

let service: TestService;
let everyone: ReviewRoom["by"];

beforeAll(async () => {
  service = await startReviewService();
  everyone = await signInAll(service);
});
afterAll(() => service.close());

/** What someone tries: to send a revision, or to stamp one with the digests of another. */
type Try =
  | { kind: "send"; assess: boolean }
  | { kind: "stamp"; on: number; digestsOf: number; disposition: Disposition; item: boolean };

const sending: fc.Arbitrary<Try> = fc.boolean().map((assess) => ({ kind: "send", assess }));
const stamping: fc.Arbitrary<Try> = fc
  .tuple(fc.nat(3), fc.nat(3), fc.constantFrom(...dispositions), fc.boolean())
  .map(([on, digestsOf, disposition, item]) => ({ kind: "stamp", on, digestsOf, disposition, item }));
const tries = fc.array(fc.oneof(sending, stamping), { minLength: 4, maxLength: 10 });

it("a stamp never outlives its content: whatever is tried, each is on the newest revision of its moment with both its digests", async () => {
  let pressed = 0;
  await fc.assert(
    fc.asyncProperty(tries, async (tried) => {
      const room = await openReviewRoom(service, everyone);
      const revisions = [await room.send([place(1)])];
      for (const one of tried) {
        if (one.kind === "send") revisions.push(await send(room, revisions.length, one.assess));
        else if (await stamp(room, revisions, one)) pressed += 1;
        await allStampsHold(room);
      }
    }),
    { numRuns: 12, seed: 20_261_127 },
  );
  expect(pressed).toBeGreaterThan(5);
}, 240_000);

async function send(room: ReviewRoom, count: number, assessed: boolean): Promise<Revision> {
  if (assessed) return room.send([move(1, count * 1_000_000)]);
  await room.draw([move(1, count * 1_000_000)]);
  return room.read(await room.sendDraft());
}

/** True when it was pressed; then it was on the newest, which was assessed, with that one's own digests. */
async function stamp(
  room: ReviewRoom,
  revisions: readonly Revision[],
  { on, digestsOf, disposition, item }: Extract<Try, { kind: "stamp" }>,
): Promise<boolean> {
  const [target, other] = [revisions.at(on % revisions.length), revisions.at(digestsOf % revisions.length)];
  const newest = revisions.at(-1);
  if (target === undefined || other === undefined || newest === undefined) throw new Error("nothing was sent");
  const part = { projectId: room.projectId, person: everyone.engineer.person, roles: ["engineer"] as const };
  const body = { ...boundTo(other), id: randomUUID(), revision: target.letter, disposition, text: "Read." };
  const outcome = await pressStamp(service.owner, part, item ? { ...body, elementId: "g1" } : body);
  if (!outcome.ok) return false;
  expect(target).toBe(newest);
  expect(newest.resultDigest).not.toBeNull();
  expect([body.contentDigest, body.resultDigest]).toEqual([newest.contentDigest, newest.resultDigest]);
  return true;
}

/** Each stamp has the digests of its revision as it is, and stands only while nothing on it has changed. */
async function allStampsHold(room: ReviewRoom): Promise<void> {
  for (const { stamp: each, standing } of await readStamps(service.owner.connection, {
    projectId: room.projectId,
    roles: ["engineer"],
  })) {
    const revision = await room.read(each.revision);
    expect([each.contentDigest, each.resultDigest]).toEqual([revision.contentDigest, revision.resultDigest]);
    if (standing.revision !== standing.newest) expect(standing.state).toBe("stale"); // every revision here moves g1
  }
}
