import {
  cautionLine,
  cautions,
  elementNames,
  kilonewtonsExact,
  markSentences,
  verdictHeadings,
  type Assessment,
  type Digest,
  type PathStretch,
  type Scheme,
  type StrengthProof,
} from "@cornerway/schema";
import { proofLines } from "./proof-text.ts";

type Assessed = {
  readonly contentDigest: Digest;
  readonly resultDigest: Digest;
  readonly assessment: Assessment;
  readonly proof?: StrengthProof;
};

/** An assessment as text for people: verdict, sums, marks in the engineer's words, the way down, strength, cautions. */
export function assessmentText(scheme: Scheme, { contentDigest, resultDigest, assessment, proof }: Assessed): string {
  const names = elementNames(scheme);
  const tag = (id: string) => names.get(id) ?? id;
  const { verdict, scope, statics, questions, units, marks, path, strength } = assessment;
  return lines([
    cautionLine,
    "",
    `${verdictHeadings[verdict]} (${scope})`,
    `${questions} questions of geometry and statics. Load ${kilonewtonsExact(statics.loadKn)}, reactions ${kilonewtonsExact(statics.reactionKn)}, left over ${kilonewtonsExact(statics.residualKn)}; unfactored, by statics, ± not known.`,
    ...(strength === undefined ? [] : [`${strength.vectors} load vectors solved, ${strength.checks} checks made.`]),
    "",
    "UNITS",
    ...units.map(
      (unit) =>
        `  ${tag(unit.id)}  ${verdictHeadings[unit.verdict]}  weight ${kilonewtonsExact(unit.weightKn)}, imposed ${kilonewtonsExact(unit.imposedKn)}`,
    ),
    "",
    "MARKS",
    ...marks.flatMap((mark) => {
      const { heading, body, detail } = markSentences(mark, names, "engineer");
      return [`  ${heading}: ${body}`, ...(detail === undefined ? [] : [`    ${detail}`])];
    }),
    "",
    "LOAD PATH",
    ...path.map((stretch) => `  ${stretchText(stretch, tag)}`),
    "",
    ...(strength && proof ? proofLines(strength, proof, tag) : []),
    "CAUTIONS",
    ...cautions.map((caution) => `  ${caution}`),
    "",
    `content ${contentDigest}`,
    `result  ${resultDigest}`,
  ]);
}

const stretchText = (stretch: PathStretch, tag: (id: string) => string): string =>
  `${tag(stretch.elementId)} ${stretch.member ?? stretch.via} from ${place(stretch.from)} to ${place(stretch.to)}: ${kilonewtonsExact(stretch.forceTopKn)}${stretch.forceFootKn === stretch.forceTopKn ? "" : `, ${kilonewtonsExact(stretch.forceFootKn)} at its foot`}${stretch.leavesCorners ? ", leaves the corners" : ""}`;

const place = ({ xMm, yMm, zMm }: PathStretch["from"]): string =>
  `(${[xMm, yMm, zMm].map((mm) => (mm / 1000).toFixed(3)).join(", ")})`;

const lines = (text: readonly string[]): string => `${text.join("\n")}\n`;
