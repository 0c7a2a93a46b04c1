import { defaultProjectValues, type StrengthRequest } from "@cornerway/engine";
import { codeEditions } from "@cornerway/schema";
import { z } from "zod";

const edition = z.enum(codeEditions);

/** What `strength` reads beside the scheme: hazards of the place with their edition, and what the project may set. */
const SiteRequest = z.strictObject({
  hazards: z.strictObject({
    riskCategory: z.enum(["I", "II", "III", "IV"]),
    wind: z.strictObject({
      edition,
      speedMs: z.number(),
      exposure: z.enum(["B", "C", "D"]),
      elevationM: z.number(),
      topographicFactor: z.number(),
    }),
    snow: z.strictObject({
      edition,
      groundPa: z.number(),
      roofExposure: z.enum(["fully exposed", "partially exposed", "sheltered"]),
      thermal: z.enum(["heated", "just above freezing", "unheated", "below freezing"]),
      winterWind: z.number().exactOptional(),
    }),
    seismic: z.strictObject({
      edition,
      ss: z.number(),
      s1: z.number(),
      siteClass: z.enum(["A", "B", "BC", "C", "CD", "D", "DE", "E", "default"]),
      longPeriodS: z.number(),
      siteValues: z.strictObject({ sms: z.number(), sm1: z.number() }).exactOptional(),
    }),
  }),
  soil: z
    .enum(["crystalline bedrock", "sedimentary or foliated rock", "gravel", "sand", "clay or silt"])
    .default("clay or silt"),
  concreteMpa: z.number().positive().default(17.2),
});

type Reading =
  | { readonly ok: true; readonly request: StrengthRequest }
  | { readonly ok: false; readonly places: readonly { readonly pointer: string; readonly detail: string }[] };

/** Reads a site file; walls of sheet against earthquakes both ways, the weakest soil and 2500 psi concrete unless it says. */
export function readSiteRequest(value: unknown): Reading {
  const parsed = SiteRequest.safeParse(value);
  if (!parsed.success)
    return {
      ok: false,
      places: parsed.error.issues.map(({ path, message }) => ({
        pointer: path.map((step) => `/${String(step)}`).join(""),
        detail: message,
      })),
    };
  const inputs = {
    uses: [],
    plant: [],
    addedSteel: [],
    plates: [],
    systems: { x: "container sheet walls", y: "container sheet walls" },
    values: defaultProjectValues,
  } as const;
  return { ok: true, request: { ...parsed.data, inputs } };
}
