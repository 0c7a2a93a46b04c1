import { readFileSync } from "node:fs";
import path from "node:path";
import { readScheme } from "@cornerway/schema";
import { afterAll, beforeAll, expect, it } from "vitest";
import { digestOfScheme } from "../../src/store/digest-of-scheme.ts";
import { readDraft } from "../../src/store/draft-rows.ts";
import { startService, type TestService } from "../support/service.ts";

const fixture = "../../../../packages/schema/test/fixtures/scheme-version-1.json";
const older: unknown = JSON.parse(readFileSync(path.resolve(import.meta.dirname, fixture), "utf8"));

let service: TestService;
beforeAll(async () => {
  service = await startService();
});
afterAll(() => service.close());

it("a draft stored in an older version is read in this one, under the digest that it has now", async () => {
  const projectId = await service.openProject();
  await service.owner.connection.draft.update({
    where: { projectId },
    data: { scheme: JSON.parse(JSON.stringify(older)), contentDigest: "0".repeat(64) },
  });
  const upgraded = readScheme(older);
  if (!upgraded.ok) throw new Error("the fixture is a scheme of version 1");
  const draft = await readDraft(service.owner.connection, projectId);
  expect(draft.scheme).toEqual(upgraded.scheme);
  expect(draft.contentDigest).toBe(digestOfScheme(upgraded.scheme));
});
