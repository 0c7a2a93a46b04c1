import { describe, expect, it } from "vitest";
import { waitsForMe, whoseTurn } from "../../src/wording/whose-turn.ts";

describe("whose turn it is", () => {
  const engineer = { waitsFor: "engineer", roles: ["engineer" as const], awaitsConfirmation: false } as const;

  it("is mine where the project waits for a role I hold", () => {
    const mine = { ...engineer, roles: [...engineer.roles] };
    expect([waitsForMe(mine), whoseTurn(mine)]).toEqual([true, "with you"]);
  });

  it("is the owner's while they have not confirmed me as the engineer", () => {
    const unconfirmed = { ...engineer, roles: [...engineer.roles], awaitsConfirmation: true };
    expect([waitsForMe(unconfirmed), whoseTurn(unconfirmed)]).toEqual([
      false,
      "with the owner, to confirm you as the engineer",
    ]);
  });

  it("is told to others by the role that acts next", () => {
    expect(whoseTurn({ ...engineer, roles: ["architect"] })).toBe("with the engineer");
  });
});
