import { afterAll, beforeAll, expect, it } from "vitest";
import { freshDatabase, type FreshDatabase } from "../../../../tests/support/fresh-database.ts";
import { openPlace, type Place } from "../../../../tests/soak/bad-requests/place.ts";
import { runBadRequests } from "../../../../tests/soak/bad-requests/run-bad-requests.ts";

let database: FreshDatabase;
let place: Place;

beforeAll(async () => {
  database = await freshDatabase();
  place = await openPlace(database);
});
afterAll(async () => {
  await place.close();
  await database.drop();
});

// `npm run bench -- bad-requests` sends a hundred thousand.
it("3,000 generated bad requests and messages: no answer of 500 or more, no word of the inside or of others, and nothing breaks", async () => {
  const { statuses, faults } = await runBadRequests(place, { count: 3_000, seed: 20261127 });
  expect(faults).toEqual([]);
  const refused = Object.entries(statuses).filter(([status]) => status.startsWith("4"));
  expect(refused.reduce((sum, [, count]) => sum + count, 0)).toBeGreaterThan(1_000);
});
