import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { canonicalJson } from "@cornerway/schema";
import { steels, type Steel } from "../../src/catalog/materials.ts";
import { boxTube, containerMembers } from "../../src/catalog/sections/container-members.ts";
import { findSection, namedSections } from "../../src/catalog/sections/find-section.ts";
import { checkOf, demandAgainst, governing, type Check } from "../../src/checks/check.ts";
import { coverageOf } from "../../src/checks/coverage.ts";
import { deflection, drift, gapClosure } from "../../src/checks/deflection.ts";
import { basePlate } from "../../src/checks/end-plate.ts";
import type { MemberDemand } from "../../src/checks/member-demand.ts";
import { memberChecks } from "../../src/checks/member-checks.ts";
import type { CheckedMember } from "../../src/checks/checked-member.ts";
import { memberStrengths } from "../../src/checks/member-strengths.ts";
import { capacitiesOf, memberUtilisation } from "../../src/checks/member-utilisation.ts";
import { filletStrength } from "../../src/checks/weld.ts";
import { codeBasis } from "../../src/checks/code-basis.ts";
import { compression } from "../../src/codes/steel/compression.ts";
import type { SteelBasis } from "../../src/codes/steel/steel-basis.ts";

const steelBasis: SteelBasis = { edition: "2016", method: "LRFD" };
const thinBasis = { edition: "2016", method: "LRFD" } as const;
const none: MemberDemand = {
  axialN: 0,
  shearStrongN: 0,
  shearWeakN: 0,
  momentStrongNmm: 0,
  momentWeakNmm: 0,
  torsionNmm: 0,
};
const all: MemberDemand = {
  axialN: 2e4,
  shearStrongN: 1e4,
  shearWeakN: 1e3,
  momentStrongNmm: 2e6,
  momentWeakNmm: 1e5,
  torsionNmm: 1e4,
};
const size = (most: number) => fc.double({ min: -most, max: most, noNaN: true });
const forces: fc.Arbitrary<MemberDemand> = fc.record({
  axialN: size(2e5),
  shearStrongN: size(1e5),
  shearWeakN: size(2e4),
  momentStrongNmm: size(2e7),
  momentWeakNmm: size(2e6),
  torsionNmm: size(1e6),
});

const basis = codeBasis("IBC 2021", "LRFD");
const post = (): CheckedMember => {
  const section = findSection("HSS4x4x1/4");
  if (section === undefined) throw new Error("no section");
  return {
    element: "added post",
    section,
    steel: steels.tube,
    lengths: { strongMm: 2500, weakMm: 2500, twistMm: 2500 },
    unbracedMm: 2500,
    cb: 1,
  };
};
const beam = (): CheckedMember => {
  const section = findSection("W8x18");
  if (section === undefined) throw new Error("no section");
  return { ...post(), element: "added beam", section, steel: steels.wideFlange };
};
const rail: CheckedMember = {
  element: "bottom side rail",
  section: containerMembers["bottom side rail"],
  steel: steels.unproved,
  lengths: { strongMm: 2500, weakMm: 300, twistMm: 300 },
  unbracedMm: 300,
  cb: 1,
};
const topRail: CheckedMember = {
  element: "top side rail",
  section: containerMembers["top side rail"],
  steel: steels.unproved,
  lengths: { strongMm: 1000, weakMm: 1000, twistMm: 1000 },
  unbracedMm: 1000,
  cb: 1,
};
const families: readonly (readonly [name: string, member: CheckedMember])[] = [
  ["steel post", post()],
  ["steel beam", beam()],
  ["bottom rail", rail],
  ["top rail", topRail],
];
const columnPost = { ...post(), lengths: { xMm: 2500, yMm: 2500, twistMm: 2500 } };
const run = (member: CheckedMember, demand: MemberDemand) => memberChecks(memberStrengths(member, basis), demand);

const utilisation = (check: Check | undefined): number => (check?.ok === true ? check.utilisation : Number.NaN);

describe("memberChecks", () => {
  it.each(families)("%s: every check made is one the coverage table claims, and has a canonical form", (_, member) => {
    const checks = run(member, all);
    expect(checks.length).toBeGreaterThanOrEqual(7);
    for (const check of checks) {
      expect(["checked", "bounded"]).toContain(coverageOf(check.limitState, check.element).coverage);
      if (!check.ok) throw new Error(`${check.limitState}: ${check.why}`);
      expect(JSON.parse(canonicalJson(check))).toEqual(check);
      expect(["published", "derived"]).not.toContain(check.working.certainty);
    }
  });

  it.each(families)(
    "%s: twice the forces never use less, and the sign of shear and torsion does not matter",
    (_, member) => {
      const twice: MemberDemand = {
        axialN: 2 * all.axialN,
        shearStrongN: 2 * all.shearStrongN,
        shearWeakN: 2 * all.shearWeakN,
        momentStrongNmm: 2 * all.momentStrongNmm,
        momentWeakNmm: 2 * all.momentWeakNmm,
        torsionNmm: 2 * all.torsionNmm,
      };
      const once = run(member, all);
      for (const check of once) {
        const heavier = run(member, twice).filter(({ limitState }) => limitState === check.limitState);
        expect(Math.max(...heavier.map(utilisation))).toBeGreaterThanOrEqual(utilisation(check));
      }
      const turned = run(member, { ...all, shearStrongN: -all.shearStrongN, torsionNmm: -all.torsionNmm });
      expect(turned.map(utilisation)).toEqual(once.map(utilisation));
    },
  );

  it.each(families)("%s without forces uses nothing", (_, member) => {
    for (const check of run(member, none)) expect(utilisation(check)).toBe(0);
  });

  it.each(families)(
    "%s: the short way gives the utilisation and the limit state of the long one, for 200 sets of forces",
    (_, member) => {
      const strengths = memberStrengths(member, basis);
      fc.assert(
        fc.property(forces, (demand) => {
          const long = governing(memberChecks(strengths, demand));
          const short = memberUtilisation(capacitiesOf(strengths), demand);
          expect(Math.abs(short.utilisation - utilisation(long))).toBeLessThanOrEqual(1e-12 * (1 + short.utilisation));
          const longs = memberChecks(strengths, demand).filter(({ limitState }) => limitState === short.limitState);
          expect(Math.max(...longs.map(utilisation))).toBeCloseTo(short.utilisation, 9);
        }),
        { seed: 11, numRuns: 200 },
      );
    },
  );

  it("an angle post is refused where it is pressed or bent, and the short way says infinite", () => {
    const section = findSection("L4x4x3/8");
    if (section === undefined) throw new Error("no section");
    const member = { ...post(), section };
    expect(governing(run(member, all))?.ok).toBe(false);
    expect(memberUtilisation(capacitiesOf(memberStrengths(member, basis)), all).utilisation).toBe(Infinity);
  });

  it("a member with refused strengths: the short way is infinite exactly where the long way has a refusal that acts", () => {
    const section = boxTube("slender", { depthMm: 600, widthMm: 100, wallMm: 2 });
    const strengths = memberStrengths({ ...topRail, section }, basis);
    expect([strengths.headPressed.ok, strengths.weak.ok]).toEqual([false, true]);
    const sparse = fc.record({
      axialN: fc.constantFrom(0, 1e4, -1e4),
      shearStrongN: fc.constantFrom(0, 1e3),
      shearWeakN: fc.constantFrom(0, 1e2),
      momentStrongNmm: fc.constantFrom(0, 1e6),
      momentWeakNmm: fc.constantFrom(0, 1e5),
      torsionNmm: fc.constantFrom(0, 1e4),
    });
    fc.assert(
      fc.property(sparse, (demand) => {
        const long = governing(memberChecks(strengths, demand));
        const short = memberUtilisation(capacitiesOf(strengths), demand);
        expect(short.utilisation === Infinity).toBe(long?.ok === false);
        if (long?.ok === true) expect(short.utilisation).toBeCloseTo(long.utilisation, 9);
      }),
      { seed: 5, numRuns: 300 },
    );
  });

  it("torsion over a fifth of its strength is combined with the rest (H3-6)", () => {
    const strengths = memberStrengths(topRail, basis);
    if (!strengths.torsion.ok) throw new Error(strengths.torsion.why);
    const torsion = (part: number) =>
      memberChecks(strengths, {
        ...all,
        torsionNmm: part * (strengths.torsion.ok ? strengths.torsion.available : 0),
      }).filter(({ limitState }) => limitState.startsWith("torsion")).length;
    expect(torsion(0.19)).toBe(1);
    expect(torsion(0.21)).toBe(2);
  });

  it("a proved yield of 343 never raises the governing utilisation, and is stated beside it", () => {
    const at = (steel: Steel) => run({ ...rail, steel }, all);
    const taken = governing(at(steels.unproved));
    const proved = utilisation(at(steels.weathering).find(({ limitState }) => limitState === taken?.limitState));
    expect(proved).toBeLessThan(utilisation(taken));
    expect(proved).toBeGreaterThan((utilisation(taken) * 235) / 343 - 1e-9);
  });
});

describe("strengths", () => {
  it("φ R_n over R_n/Ω is φ Ω, 1.503 for a column by AISC 360", () => {
    const column = columnPost;
    const [lrfd, asd] = (["LRFD", "ASD"] as const).map((method) => compression(column, { edition: "2016", method }));
    if (lrfd?.ok !== true || asd?.ok !== true) throw new Error("refused");
    expect(lrfd.available / asd.available).toBeCloseTo(0.9 * 1.67, 9);
    expect(lrfd.nominal).toBe(asd.nominal);
  });

  it("a longer column is never stronger, whatever the section", () => {
    for (const section of namedSections.filter(({ kind }) => kind !== "angle")) {
      let last = Infinity;
      for (const mm of [200, 800, 1600, 3200, 6400, 12_800]) {
        const result = compression(
          { section, steel: steels.plate, lengths: { xMm: mm, yMm: mm, twistMm: mm } },
          steelBasis,
        );
        if (!result.ok) throw new Error(`${section.name}: ${result.why}`);
        expect(result.available, `${section.name} at ${mm}`).toBeLessThanOrEqual(last);
        last = result.available;
      }
    }
  });

  it("the edition changes the clause printed", () => {
    const by = (edition: "2016" | "2022") => compression(columnPost, { edition, method: "LRFD" });
    const [old, recent] = [by("2016"), by("2022")];
    expect(old.ok && old.working.clause.edition).toBe("2016");
    expect(recent.ok && recent.working.clause.edition).toBe("2022");
  });
});

describe("demandAgainst, governing, checkOf", () => {
  it("a refused strength refuses the check, and a refusal governs over any utilisation", () => {
    const subject = { element: "added post", limitState: "compression" } as const;
    const refused = demandAgainst(subject, 1, { ok: false, why: "shape not covered by this check" });
    const huge = demandAgainst(subject, 1e12, compression(columnPost, steelBasis));
    expect(refused.ok).toBe(false);
    expect(governing([huge, refused])).toBe(refused);
    expect(governing([refused, huge])).toBe(refused);
    expect(governing([])).toBeUndefined();
  });

  it("a working that compares nothing is no check", () => {
    const strength = compression(columnPost, steelBasis);
    if (!strength.ok) throw new Error(strength.why);
    expect(() => checkOf({ element: "added post", limitState: "compression" }, strength.working)).toThrow(RangeError);
  });
});

describe("movements", () => {
  it("10 mm over 3600 mm at 1/360 uses all of it; the load and the span are stated", () => {
    const check = deflection(
      {
        element: "added beam",
        load: "imposed",
        deflectionMm: -10,
        spanMm: 3600,
        spanOver: 360,
      },
      "IBC 2021",
    );
    expect(utilisation(check)).toBeCloseTo(1, 12);
    expect(check.ok && check.working.symbols.map(({ meaning }) => meaning)).toEqual([
      "deflection under imposed",
      "span 3600 mm over 360",
    ]);
  });

  it("drift is against its part of the height, a gap against itself", () => {
    const clause = { document: "ASCE 7", edition: "2016", place: "Table 12.12-1", certainty: "memory" } as const;
    expect(utilisation(drift(29, { heightMm: 2900, part: 0.02, clause }))).toBeCloseTo(0.5, 12);
    expect(utilisation(gapClosure("added beam", 12, 10))).toBeCloseTo(1.2, 12);
  });
});

describe("joints", () => {
  const weld = {
    legMm: 5,
    lengthMm: 100,
    angleDegree: 0,
    electrodeMpa: 482.6,
    endLoaded: false,
    tubeEnd: false,
    thinner: { thicknessMm: 4.5, steel: steels.unproved },
  };

  it("a weld on 4.5 mm is judged as thin steel, on 5 mm as structural steel", () => {
    const document = (thicknessMm: number) => {
      const strength = filletStrength({ ...weld, thinner: { ...weld.thinner, thicknessMm } }, steelBasis, thinBasis);
      return strength.ok ? strength.working.clause.document : strength.why;
    };
    expect(document(4.5)).toBe("AISI S100");
    expect(document(5)).toBe("AISC 360");
  });

  it("a base plate is checked in bending and on its concrete", () => {
    const { section } = post();
    if (section.kind !== "tube") throw new Error("no tube");
    const plate = { column: section, steel: steels.plate, lengthMm: 200, widthMm: 200, thicknessMm: 20 };
    const checks = basePlate("added post", 1e5, plate, { supportMm2: 90_000, concreteMpa: 20 }, steelBasis);
    expect(checks.map(({ limitState }) => limitState)).toEqual(["plate bending", "bearing on concrete"]);
    // 0.65 × 0.85 × 20 × 40 000 × √(90/40) = 663 kN
    expect(utilisation(checks[1])).toBeCloseTo(1e5 / 663_000, 4);
  });
});
