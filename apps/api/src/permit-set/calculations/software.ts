import { engineVersion } from "@cornerway/engine";
import { cautions } from "@cornerway/schema";
import type { CalculationFlow } from "../paper/calculation-flow.ts";
import { templateVersion } from "../permit-set.ts";
import type { SetSource } from "../set-source.ts";
import { written } from "../written.ts";

/** What computed this, by which theory, how it was verified, and the engineer's own statement, left for a person to make. */
export function laySoftware(flow: CalculationFlow, source: SetSource): void {
  const { revision, resultDigest, assessment, verification, scheme } = source;
  const say = written[source.units];
  flow.subject("Software statement and verification");
  flow.table({
    name: "Software statement",
    columns: [
      { heading: "Item", share: 28 },
      { heading: "Statement", share: 72 },
    ],
    size: 8.4,
    rows: [
      ["Program", `Cornerway, engine ${engineVersion}, set template ${templateVersion}`],
      ["Digest of what was judged", revision.contentDigest],
      ["Digest of the answer", resultDigest],
      ["Units", "N, mm and MPa inside; the set is written in " + (source.units === "US" ? "US customary units" : "SI")],
      [
        "Theory",
        "Load path: statics of rigid containers on their bearings. Strength: linear elastic members and shear strips, bearings that press only, first-order with amplification by factors; corrugated sheet as an orthotropic strip",
      ],
      [
        "Codes",
        `${scheme.site.edition} with its loads, steel and cold-formed documents; clauses stand at each working`,
      ],
      ["Judged", assessment.scope],
      [
        "Equilibrium of the load path",
        `residual ${say.force(assessment.statics.residualKn)} ${say.forceUnit} of ${say.force(assessment.statics.loadKn)}`,
      ],
      [
        "Marks raised",
        `${assessment.marks.length}; each is listed with its basis. How each was dealt with is the engineer's to say`,
      ],
      [
        "Libraries",
        "the engine is its own, without any; shapes of data by zod, canonical JSON (RFC 8785) by canonicalize, SHA-256 by noble-hashes, pages written by pdfkit",
      ],
      [
        "Verified",
        "the cases below, run at every change of the program; by whom they were looked at is for the engineer",
      ],
      ["Arithmetic", "double precision; the same input gives the same bits on every machine"],
    ],
  });
  flow.heading("Verification of this engine");
  flow.paragraph(
    `The manual of engine ${verification.engineVersion}, each case held against a published or independently derived value. ${verification.engineVersion === engineVersion ? "" : "It is of another version than the engine that answered. "}Cases within their stated tolerance are counted; the widest difference of each family is given as it came.`,
  );
  flow.table({
    name: "Verification by family",
    size: 8,
    columns: [
      { heading: "Family", share: 24 },
      { heading: "What it holds", share: 48 },
      { heading: "Within", share: 12, right: true },
      { heading: "Widest difference", share: 16, right: true },
    ],
    rows: verification.families.map(({ title, about, cases, within, widest }) => [
      title,
      about,
      `${within} of ${cases}`,
      widest,
    ]),
  });
  flow.table({
    name: "Verification by certainty of the reference",
    size: 8,
    columns: [
      { heading: "Reference value", share: 50 },
      { heading: "Cases", share: 20, right: true },
      { heading: "Within", share: 20, right: true },
    ],
    rows: verification.counts.map(({ certainty, cases, within }) => [
      certainty === "memory" || certainty === "common practice" ? `${certainty}: not counted as verified` : certainty,
      String(cases),
      String(within),
    ]),
  });
  flow.need(190);
  flow.heading("Reliance, by the engineer of record");
  flow.paragraph(
    "I have looked at what this program does and does not check, have made the following independent checks, and take responsibility for what is relied on:",
  );
  for (let line = 0; line < 4; line += 1)
    flow.block(20, ({ x, y, width }) => ({
      role: "Artifact",
      inks: [{ kind: "path", d: `M${x} ${y + 16}H${x + width}`, pen: "hair", tone: "ruling" }],
    }));
  flow.heading("Cautions");
  for (const words of cautions) flow.paragraph(words);
}
