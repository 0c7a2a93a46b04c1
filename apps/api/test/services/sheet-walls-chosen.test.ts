import { randomUUID } from "node:crypto";
import { ChangeRequest, defaultBasis } from "@cornerway/schema";
import { afterAll, beforeAll, expect, it } from "vitest";
import { gatherSource } from "../../src/services/permit-sets/gather-source.ts";
import { openDatabase, type Database } from "../../src/store/database.ts";
import { place } from "../support/sample.ts";
import { openReviewRoom, signInAll, startReviewService, type ReviewRoom } from "../support/review-room.ts";
import type { TestService } from "../support/service.ts";

let service: TestService;
let room: ReviewRoom;
let database: Database;
beforeAll(async () => {
  service = await startReviewService();
  database = openDatabase(service.database.serviceUrl);
  room = await openReviewRoom(service, await signInAll(service));
});
afterAll(async () => {
  await database.close();
  await service.close();
});

const chosenIn = async (letter: string) => {
  const record = await room.by.reader.get(`${room.path}/record?after=0`).expect(200);
  const upTo = Math.max(...record.body.map(({ number }: { number: number }) => number));
  const source = await gatherSource(
    database.connection,
    { projectId: room.projectId, letter, units: "SI", upTo },
    undefined,
  );
  return source?.sheetWallsChosen;
};

it("the set knows who asked for the rule of the sheet walls and who drew it, though its readers see no drawing acts", async () => {
  const first = await room.send([place(1)]);
  expect(await chosenIn(first.letter)).toBeNull();

  const reason = "Walls are cut later.";
  const basis = { ...defaultBasis, sheetWalls: { rule: "left out" as const, reason } };
  const body = {
    ...{ id: randomUUID(), revision: first.letter, contentDigest: first.contentDigest },
    ...{ text: "Leave the sheet walls out.", operations: [{ kind: "basis.change" as const, basis }] },
  };
  const asked = ChangeRequest.parse((await room.by.engineer.post(`${room.path}/requests`, body).expect(201)).body);
  const { number: base } = (await room.by.architect.get(`${room.path}/draft`).expect(200)).body;
  const answer = { answer: "take in", actId: randomUUID(), base };
  await room.by.architect.post(`${room.path}/requests/${asked.id}/answer`, answer).expect(200);
  // another change of the basis is no choice of the walls
  const second = await room.send([{ kind: "basis.change", basis: { ...basis, concreteMpa: 25 } }]);

  const chosen = await chosenIn(second.letter);
  expect(chosen?.asked).toEqual({ by: asked.author.name, role: "engineer", at: asked.madeAt });
  expect(chosen?.drawn.role).toBe("architect");
  expect(await chosenIn(first.letter)).toBeNull();
});
