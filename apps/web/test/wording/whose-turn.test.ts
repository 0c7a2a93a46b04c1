import { describe, expect, it } from "vitest";
import { stepForMe, whoseTurn } from "../../src/wording/whose-turn.ts";

const turn = (more: Partial<Parameters<typeof whoseTurn>[0]>) => ({
  ...{ waitsFor: "engineer" as const, roles: [], awaitsConfirmation: false, engineerToConfirm: false },
  ...more,
});
const told = (more: Parameters<typeof turn>[0]) => [stepForMe(turn(more)), whoseTurn(turn(more))];

describe("whose turn it is", () => {
  it("is mine where the project waits for a role I hold", () => {
    expect(told({ roles: ["engineer"] })).toEqual(["engineer", "with you"]);
  });

  it("is told to others by the role that acts next", () => {
    expect(told({ roles: ["architect"] })).toEqual([null, "with the engineer"]);
    expect(told({ roles: ["architect"], waitsFor: null })).toEqual([null, "waits for nobody"]);
  });

  it("is not mine as the engineer before I am confirmed, though another one is", () => {
    const unconfirmed = { roles: ["engineer" as const], awaitsConfirmation: true, engineerToConfirm: true };
    expect(told(unconfirmed)).toEqual([null, "with the engineer"]);
  });
});

describe("an engineer whom the owner has not confirmed", () => {
  const waits = { waitsFor: "owner" as const, engineerToConfirm: true };

  it("reads that the owner confirms them", () => {
    expect(told({ ...waits, roles: ["engineer"], awaitsConfirmation: true })).toEqual([
      null,
      "with the owner, to confirm you as the engineer",
    ]);
  });

  it("waits for the owner, whose desk says so", () => {
    expect(told({ ...waits, roles: ["owner"] })).toEqual(["confirm the engineer", "with you, to confirm the engineer"]);
    expect(told({ ...waits, roles: ["architect"] })).toEqual([null, "with the owner, to confirm the engineer"]);
  });

  it("waits for the owner already while the architect draws", () => {
    expect(told({ ...waits, waitsFor: "architect", roles: ["owner"] })).toEqual([
      "confirm the engineer",
      "with the architect",
    ]);
  });

  it("is never confirmed by themselves, though they are an owner too", () => {
    const both = { roles: ["engineer" as const, "owner" as const], awaitsConfirmation: true };
    expect(told({ ...waits, ...both })).toEqual([null, "with the owner, to confirm you as the engineer"]);
  });
});
