import { z } from "zod";
import { ElementId } from "./ids.ts";
import { LengthUm } from "./quantity.ts";
import { personText } from "./text.ts";

export const codeEditions = ["IBC 2021", "IBC 2024"] as const;
export const CodeEdition = z.enum(codeEditions).meta({ id: "CodeEdition" });
export type CodeEdition = z.infer<typeof CodeEdition>;

export const riskCategories = ["I", "II", "III", "IV"] as const;
export const windExposures = ["B", "C", "D"] as const;
/** `default` is the class a code prescribes when the ground has not been investigated. */
export const siteClasses = ["A", "B", "BC", "C", "CD", "D", "DE", "E", "default"] as const;
export const roofExposures = ["fully exposed", "partially exposed", "sheltered"] as const;
export const thermals = ["heated", "just above freezing", "unheated", "below freezing"] as const;

const shareOfGravity = z.number().min(0).max(10);

/**
 * What a site asks of a building. Each hazard says for which edition its values were read: maps change between editions,
 * and a value of one is wrong in the formulas of the other.
 */
export const SiteHazards = z
  .strictObject({
    riskCategory: z.enum(riskCategories),
    wind: z.strictObject({
      edition: CodeEdition,
      /** Basic wind speed of the risk category, 3-second gust at 10 m, m/s. */
      speedMs: z.number().min(1).max(150),
      exposure: z.enum(windExposures),
      /** Of the ground above sea level, m. */
      elevationM: z.number().min(-500).max(6000),
      /** 1 on flat ground. */
      topographicFactor: z.number().min(1).max(5),
    }),
    snow: z.strictObject({
      edition: CodeEdition,
      /** Pa: 50-year where the edition multiplies by an importance factor, strength level where it does not. */
      groundPa: z.number().min(0).max(50_000),
      roofExposure: z.enum(roofExposures),
      thermal: z.enum(thermals),
      /** Share of winter hours with wind above 10 mph; absent where the edition has no such parameter. */
      winterWind: z.number().min(0).max(1).exactOptional(),
    }),
    seismic: z.strictObject({
      edition: CodeEdition,
      /** Mapped accelerations, fractions of g. */
      ss: shareOfGravity,
      s1: shareOfGravity,
      siteClass: z.enum(siteClasses),
      /** Long-period transition, s. */
      longPeriodS: z.number().min(1).max(30),
      /** From a site study or the edition's own database, fractions of g; they replace the site coefficients. */
      siteValues: z.strictObject({ sms: shareOfGravity, sm1: shareOfGravity }).exactOptional(),
    }),
  })
  .meta({ id: "SiteHazards" });
export type SiteHazards = z.infer<typeof SiteHazards>;

export const soilClasses = [
  "crystalline bedrock",
  "sedimentary or foliated rock",
  "gravel",
  "sand",
  "clay or silt",
] as const;

/** Systems a building of containers may be given against earthquakes. */
export const seismicSystems = [
  "container sheet walls",
  "single unit by the simplified path",
  "special moment frames",
  "intermediate moment frames",
  "ordinary moment frames",
  "special concentric braces",
  "ordinary concentric braces",
  "special plate walls",
  "special cantilever columns",
  "ordinary cantilever columns",
] as const;

/** What a floor or roof is used for. */
export const occupancies = [
  "dwelling",
  "sleeping room",
  "hotel room",
  "public corridor",
  "office",
  "lobby",
  "corridor above ground floor",
  "retail, ground floor",
  "retail, upper floor",
  "retail, wholesale",
  "assembly, fixed seats",
  "assembly, movable seats",
  "dining",
  "classroom",
  "stair",
  "light storage",
  "heavy storage",
  "roof",
  "roof garden",
  "balcony or deck",
] as const;
export const Occupancy = z.enum(occupancies).meta({ id: "Occupancy" });

/** What one floor or roof is used for; the code's imposed load follows from it. */
export const FloorUse = z
  .strictObject({ id: ElementId, containerId: ElementId, surface: z.enum(["floor", "roof"]), occupancy: Occupancy })
  .meta({ id: "FloorUse" });
export type FloorUse = z.infer<typeof FloorUse>;

/**
 * How sheet walls take part against sideways loads. `counted` is the rational default; the engineer may leave them out
 * or raise the cap of the code's table, and says why.
 */
export const SheetWalls = z
  .discriminatedUnion("rule", [
    z.strictObject({ rule: z.literal("counted") }),
    z.strictObject({ rule: z.literal("left out"), reason: personText(500) }),
    z.strictObject({ rule: z.literal("cap raised"), capNPerM: z.int().min(1).max(1_000_000), reason: personText(500) }),
  ])
  .meta({ id: "SheetWalls" });

/** What the project takes as given beyond what is drawn. */
export const DesignBasis = z
  .strictObject({
    /** None yet: wind, snow and earthquake are not judged. */
    hazards: SiteHazards.nullable(),
    soil: z.strictObject({
      class: z.enum(soilClasses),
      /** Allowable bearing of a report, Pa, with its name; absent: presumptive, printed as assumed. */
      report: z.strictObject({ bearingPa: z.int().min(1).max(10_000_000), source: personText(200) }).exactOptional(),
    }),
    /** Concrete of pads, MPa. */
    concreteMpa: z.number().min(10).max(100),
    /** Level of pads, posts and seats as built, either way. */
    levelErrorUm: LengthUm.min(0).max(100_000),
    /** One support goes down against the others. */
    settlementUm: LengthUm.min(0).max(200_000),
    lifting: z.strictObject({
      /** Dynamic factor on the real weight at the pick. */
      factor: z.number().min(1).max(5),
      /** Slope of the legs from the horizontal, thousandths of a degree; 90 000 under a spreader. */
      legMdeg: z.int().min(30_000).max(90_000),
      /** True only for rigging that shares the load among four legs whatever their lengths. */
      equalised: z.boolean(),
    }),
    /** Steel on steel or on concrete. */
    friction: z.number().min(0).max(1),
    /** Along site x and site y. */
    systems: z.strictObject({ x: z.enum(seismicSystems), y: z.enum(seismicSystems) }),
    sheetWalls: SheetWalls,
  })
  .meta({ id: "DesignBasis" });
export type DesignBasis = z.infer<typeof DesignBasis>;

/** What holds until the project says otherwise; 2500 psi concrete and the weakest presumptive soil. */
export const defaultBasis: DesignBasis = {
  hazards: null,
  soil: { class: "clay or silt" },
  concreteMpa: 17.2,
  levelErrorUm: 5000,
  settlementUm: 10_000,
  lifting: { factor: 2, legMdeg: 90_000, equalised: false },
  friction: 0.3,
  systems: { x: "container sheet walls", y: "container sheet walls" },
  sheetWalls: { rule: "counted" },
};
