import { acts, beforeConfirmation, may, roles } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { whyNot } from "../../src/room/room-context.ts";

describe("whyNot", () => {
  it.each(roles)("lets the %s do what the table of who may do what says, and gives a reason for the rest", (role) => {
    for (const act of acts) {
      const why = whyNot({ roles: [role], awaitsConfirmation: false }, act);
      if (may([role], act)) expect(why).toBeUndefined();
      else expect(why).toMatch(/\.$/);
    }
  });

  it("lets an engineer who waits for the owner's word read, and says what they wait for", () => {
    for (const act of acts.filter((one) => may(["engineer"], one))) {
      const why = whyNot({ roles: ["engineer"], awaitsConfirmation: true }, act);
      expect(why).toBe(
        beforeConfirmation.includes(act) ? undefined : "The owner has not confirmed you as the engineer yet.",
      );
    }
  });

  it("leaves what an owner may do to an owner who waits to be confirmed as the engineer", () => {
    expect(whyNot({ roles: ["engineer", "owner"], awaitsConfirmation: true }, "write-note")).toBeUndefined();
    expect(whyNot({ roles: ["engineer", "owner"], awaitsConfirmation: true }, "press-stamp")).toBeDefined();
  });
});
