import type { Project, Stamp } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { nextStepWords, standing } from "../../src/screens/status/standing.ts";
import { nextLetter } from "../../src/wording/next-letter.ts";

const project: Project = {
  id: "00000000-0000-4000-8000-000000000001",
  name: "Chandler's Steps",
  place: "Pellmouth",
  client: "Pellmouth Ferry Society",
  roles: ["owner"],
  awaitsConfirmation: false,
  engineerToConfirm: false,
  revision: "B",
  verdict: "not checked",
  stamp: null,
  waitsFor: "engineer",
  since: "2026-01-01T00:00:00.000Z",
  containers: 3,
  last: 20,
  members: [],
};

const stamp: Stamp = {
  id: "00000000-0000-4000-8000-000000000002",
  revision: "B",
  disposition: "Revise and resubmit",
  text: "Show what holds T1.",
  contentDigest: "0".repeat(64),
  resultDigest: "0".repeat(64),
  author: { id: "00000000-0000-4000-8000-000000000003", name: "Emmet Quillon", role: "engineer" },
  pressedAt: "2026-01-02T00:00:00.000Z",
};

describe("the owner reads where the project stands in plain words", () => {
  it("before the first revision it is being drawn", () => {
    const drawing = { ...project, revision: null, waitsFor: "architect" as const };
    expect(standing(drawing, 0).heading).toBe("is being drawn.");
    expect(nextStepWords(drawing).heading).toBe("The architect sends revision A.");
  });

  it("with a revision sent it is with the engineer, and never approved", () => {
    const { heading, lead } = standing(project, 2);
    expect(heading).toBe("is with the engineer.");
    expect(lead).toMatch(/^It cannot be approved yet\. Two things stand in the way/);
  });

  it("one thing in the way is told as one", () => {
    expect(standing(project, 1).lead).toMatch(/One thing stands in the way; it is listed below with who acts on it\.$/);
  });

  it("says whom the owner is waited for to confirm", () => {
    const unconfirmed = { ...project, waitsFor: "owner" as const, engineerToConfirm: true };
    expect(standing(unconfirmed, 1).heading).toBe("is with the owner.");
    expect(nextStepWords(unconfirmed).heading).toBe("The owner says who the engineer is.");
  });

  it("stamped, it says what the engineer wrote and who comes next", () => {
    const stamped = { ...project, stamp, waitsFor: "architect" as const };
    expect(standing(stamped, 2).heading).toBe("goes back to the architect.");
    expect(standing(stamped, 2).lead).toBe("Emmet Quillon stamped revision B: Revise and resubmit.");
    expect(standing(stamped, 2).said).toBe("Show what holds T1.");
    expect(nextStepWords(stamped).heading).toBe("Revision C comes from the architect.");
    const rejected = { ...stamped, stamp: { ...stamp, disposition: "Rejected" as const } };
    expect(standing(rejected, 2).heading).toBe("was rejected.");
  });
});

describe("nextLetter(last)", () => {
  it("goes A, B … Z, AA, AB … AZ, BA", () => {
    expect([null, "A", "H", "Z", "AA", "AZ"].map(nextLetter)).toEqual(["A", "B", "I", "AA", "AB", "BA"]);
  });
});
