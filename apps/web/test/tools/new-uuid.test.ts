import { z } from "zod";
import { ElementId } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { newElementId } from "../../src/tools/new-element-id.ts";
import { newUuid } from "../../src/tools/new-uuid.ts";

describe("newUuid()", () => {
  it("is a version 4 UUID by RFC 9562, another each time", () => {
    const made = Array.from({ length: 200 }, newUuid);
    for (const uuid of made) expect(z.uuidv4().safeParse(uuid).success, uuid).toBe(true);
    expect(new Set(made).size).toBe(200);
  });
});

describe("newElementId(letter)", () => {
  it("is an id the scheme takes, beginning with the letter of its kind", () => {
    const id = newElementId("u");
    expect(ElementId.safeParse(id).success).toBe(true);
    expect(id).toMatch(/^u-/);
  });
});
