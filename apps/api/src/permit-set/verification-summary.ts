import { readFileSync } from "node:fs";
import { Certainty } from "@cornerway/schema";
import { z } from "zod";
import type { VerificationSummary } from "./set-source.ts";

/** What the set takes of the manual that `npm run verify` writes; its other fields are not read. */
const Manual = z.object({
  engineVersion: z.string(),
  families: z.array(
    z.object({
      title: z.string(),
      about: z.string(),
      rows: z.array(z.object({ within: z.boolean(), relative: z.number().nullish() })),
    }),
  ),
  counts: z.array(z.object({ certainty: Certainty, cases: z.int(), within: z.int() })),
});

/** The verification manual kept with this build, family by family. */
export function verificationSummary(): VerificationSummary {
  const file = new URL("../../../../shared/verification/manual.json", import.meta.url);
  const { engineVersion, families, counts } = Manual.parse(JSON.parse(readFileSync(file, "utf8")));
  return {
    engineVersion,
    families: families.map(({ title, about, rows }) => ({
      ...{ title, about, cases: rows.length },
      within: rows.filter(({ within }) => within).length,
      widest: widestOf(rows.flatMap(({ relative }) => (relative == null ? [] : [Math.abs(relative)]))),
    })),
    counts,
  };
}

const widestOf = (relatives: readonly number[]): string =>
  relatives.length === 0 ? "" : `${(Math.max(...relatives) * 100).toFixed(2)} %`;
