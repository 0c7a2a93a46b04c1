import { defaultBasis, pointerTo, SiteHazards, soilClasses, type DesignBasis } from "@cornerway/schema";
import { z } from "zod";

/** A place to try a scheme in: hazards with their edition, soil and concrete. */
const SiteRequest = z.strictObject({
  hazards: SiteHazards,
  soil: z.enum(soilClasses).default(defaultBasis.soil.class),
  concreteMpa: z.number().min(10).max(100).default(defaultBasis.concreteMpa),
});

type Reading =
  | { readonly ok: true; readonly basis: Pick<DesignBasis, "hazards" | "soil" | "concreteMpa"> }
  | { readonly ok: false; readonly places: readonly { readonly pointer: string; readonly detail: string }[] };

/** Reads a site file; it takes the place of what the scheme says of the site. */
export function readSiteRequest(value: unknown): Reading {
  const parsed = SiteRequest.safeParse(value);
  if (!parsed.success)
    return {
      ok: false,
      places: parsed.error.issues.map(({ path, message }) => ({ pointer: pointerTo(path), detail: message })),
    };
  const { hazards, soil, concreteMpa } = parsed.data;
  return { ok: true, basis: { hazards, soil: { class: soil }, concreteMpa } };
}
