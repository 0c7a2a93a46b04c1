import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  applyOperations,
  emptyScheme,
  judgements,
  mayDo,
  PlateFacts,
  positionOf,
  refuseSurveyStep,
  roles,
  Scheme,
  surveyActs,
  surveyDepartures,
  type SurveyedContainer,
  surveyOperations,
  surveyState,
  withdrawOperations,
  type Author,
  type Container,
  type Inspection,
  type Role,
  type SurveyStep,
} from "../src/index.ts";

const person = (role: Role): Author => ({
  ...{ id: `00000000-0000-4000-8000-00000000000${roles.indexOf(role)}`, name: `Person ${role}`, role },
});
const done = (role: Role) => ({
  ...{ id: "00000000-0000-4000-8000-0000000000aa", by: person(role), at: "2026-01-01T00:00:00.000Z" },
});
const plate = {
  approvalNumber: null,
  madeIn: "2019-04",
  tareKg: 3900,
  maxGrossKg: 32_500,
  stackingKg: 216_000,
  rackingN: null,
};

const inspection = (role: Role, more: Partial<Inspection> = {}): Inspection => ({
  ...{ step: "inspected", ...done(role), day: "2026-11-12", plate, damages: [], thicknesses: [] },
  ...{ measuredWith: null, floor: null, text: null, photos: [] },
  ...more,
});
const offered: SurveyedContainer = {
  ...{ id: "00000000-0000-4000-8000-0000000000cc", containerNumber: "CSQU3054383", type: "1AAA", number: 1 },
  ...{ author: person("owner"), offeredAt: "2026-01-01T00:00:00.000Z", steps: [] },
};

type Move = { role: Role; step: SurveyStep["step"]; outcome: (typeof judgements)[number] };
const moves = fc.array(
  fc.record<Move>({
    role: fc.constantFrom(...roles),
    step: fc.constantFrom("inspected", "judged", "assigned", "released"),
    outcome: fc.constantFrom(...judgements),
  }),
  { minLength: 10, maxLength: 80 },
);

function stepOf({ role, step, outcome }: Move): SurveyStep {
  switch (step) {
    case "inspected":
      return inspection(role);
    case "judged":
      return { step, ...done(role), outcome, text: "Words." };
    case "assigned":
      return { step, ...done(role), elementId: "g1", tag: "G1" };
    case "released":
      return { step, ...done(role), text: "Words." };
  }
}

describe("a surveyed container", () => {
  it("is judged by the engineer alone and only once it was inspected, assigned once, and released before it is assigned again", () => {
    const seen = { judged: 0, assigned: 0, released: 0 };
    fc.assert(
      fc.property(moves, (tried) => {
        let box = offered;
        for (const move of tried) {
          const { role, step, outcome } = move;
          const asked = step === "judged" ? { step, outcome } : { step };
          if (refuseSurveyStep(box, asked, person(role)) !== undefined) continue;
          expect(mayDo[surveyActs[step]]).toContain(role);
          if (step !== "inspected") seen[step] += 1;
          if (step === "judged") {
            expect(role).toBe("engineer");
            expect(["offered", outcome]).not.toContain(surveyState(box));
          }
          if (step === "assigned") expect(positionOf(box)).toBeUndefined();
          if (step === "released") expect(positionOf(box)).toBeDefined();
          box = { ...box, steps: [...box.steps, stepOf(move)] };
        }
      }),
      { numRuns: 300 },
    );
    for (const count of Object.values(seen)) expect(count).toBeGreaterThan(50);
  });

  it("is judged anew once it is inspected again", () => {
    const steps = [
      inspection("owner"),
      { step: "judged", ...done("engineer"), outcome: "accepted", text: null },
    ] as const;
    expect(surveyState({ steps: [...steps] })).toBe("accepted");
    expect(surveyState({ steps: [...steps, inspection("owner")] })).toBe("inspected");
  });

  it("cannot weigh more empty than full", () => {
    expect(PlateFacts.safeParse({ ...plate, tareKg: 4000, maxGrossKg: 3900 }).success).toBe(false);
    expect(PlateFacts.safeParse({ ...plate, madeIn: "2019-13" }).success).toBe(false);
    expect(PlateFacts.safeParse(plate).success).toBe(true);
  });
});

const unit: Container = { id: "g1", tag: "G1", type: "1AAA", xUm: 0, yUm: 0, zUm: 0, turnMdeg: 0 };
const drawn = (more: Partial<Scheme> = {}): Scheme => Scheme.parse({ ...emptyScheme, containers: [unit], ...more });
const measured = inspection("owner", { thicknesses: [{ member: "top side rail", thicknessUm: 2600 }] });
const placed: SurveyedContainer = {
  ...offered,
  steps: [
    measured,
    { step: "judged", ...done("engineer"), outcome: "accepted", text: null },
    { step: "assigned", ...done("architect"), elementId: "g1", tag: "G1" },
  ],
};

describe("what was measured of a container", () => {
  it("departs from a scheme that assumes it, and is on the drawing once its operations are applied", () => {
    expect(surveyDepartures(drawn(), placed)).toEqual([
      { what: "thickness", elementId: "g1", member: "top side rail", drawnUm: null, measuredUm: 2600 },
      { what: "tare", elementId: "g1", drawnKg: null, plateKg: 3900 },
    ]);
    const applied = applyOperations(drawn(), surveyOperations(drawn(), unit, placed, measured));
    if (!applied.ok) throw new Error(applied.refusal.reason);
    expect(surveyDepartures(applied.scheme, placed)).toEqual([]);
    expect(applied.scheme.containers[0]?.plateTareKg).toBe(3900);
    expect(applied.scheme.overrides).toMatchObject([
      {
        elementId: "g1",
        member: "top side rail",
        thicknessUm: 2600,
        source: "Survey of CSQU3054383 of 2026-11-12, by Person owner",
      },
    ]);
  });

  it("keeps what was proved of the same member by other means", () => {
    const proved = {
      id: "o1",
      elementId: "g1",
      member: "top side rail",
      yieldMpa: 343,
      source: "Certificate 7",
    } as const;
    const scheme = drawn({ overrides: [proved] });
    const applied = applyOperations(scheme, surveyOperations(scheme, unit, placed, measured));
    expect(applied.ok && applied.scheme.overrides).toMatchObject([{ id: "o1", yieldMpa: 343, thicknessUm: 2600 }]);
  });

  it("goes from the drawing with the container, and nothing else does", () => {
    const applied = applyOperations(drawn(), surveyOperations(drawn(), unit, placed, measured));
    if (!applied.ok) throw new Error(applied.refusal.reason);
    const other = { id: "z", elementId: "g1", member: "door sill", yieldMpa: 343, source: "Certificate 7" } as const;
    const scheme = { ...applied.scheme, overrides: [...applied.scheme.overrides, other] };
    const back = applyOperations(scheme, withdrawOperations(scheme, "g1", placed));
    expect(back.ok && back.scheme).toEqual(drawn({ overrides: [other] }));
  });

  it("tells of a unit of another type, of one that is gone, and of a container that is no longer accepted", () => {
    expect(surveyDepartures(emptyScheme, placed)).toEqual([{ what: "no such unit", elementId: "g1" }]);
    const other = drawn({ containers: [{ ...unit, type: "1CC" }] });
    expect(surveyDepartures(other, placed)).toContainEqual({
      what: "other type",
      elementId: "g1",
      drawn: "1CC",
      surveyed: "1AAA",
    });
    const rejected: SurveyStep = { step: "judged", ...done("engineer"), outcome: "rejected", text: "Cracked." };
    const again = { ...placed, steps: [...placed.steps, rejected] };
    expect(surveyDepartures(drawn(), again)).toContainEqual({
      what: "not accepted",
      elementId: "g1",
      state: "rejected",
    });
  });
});
