import type { Assessment, Mark, Scheme } from "@cornerway/schema";
import { inThousands } from "../units/in-thousands.ts";
import { awaitingStrength, staleMarks } from "./awaiting-strength.ts";
import type { LiveStrength } from "./use-strength.ts";

/** What a sheet shows of a scheme that is being drawn. */
export interface JudgedSoFar {
  assessment: Assessment | null;
  marks: readonly Mark[];
  /** Marks of an earlier answer, told as waiting. */
  waitingIds: ReadonlySet<string>;
  /** What was asked and what is still waited for. */
  remark: string | undefined;
}

const none: ReadonlySet<string> = new Set();

/** The load path at once; strength as soon as its answer is of this very scheme, and until then never as an answer. */
export function judgedSoFar(path: Assessment | null, strength: LiveStrength, scheme: Scheme): JudgedSoFar {
  const { judged, stands, progress, glance } = strength;
  if (stands && judged?.assessment != null) {
    const { assessment } = judged;
    return { assessment, marks: assessment.marks, waitingIds: none, remark: judgedRemark(assessment) };
  }
  if (path === null) return { assessment: null, marks: [], waitingIds: none, remark: undefined };
  const stale = staleMarks(judged?.assessment ?? null, scheme);
  const broke = stands ? judged?.broke : null;
  return {
    assessment: awaitingStrength(path),
    marks: [...path.marks, ...stale],
    waitingIds: new Set(stale.map(({ id }) => id)),
    remark: `${path.questions} points of statics · ${broke == null ? waitsFor(progress, glance) : `strength not checked: ${broke}`}`,
  };
}

function waitsFor(progress: LiveStrength["progress"], glance: LiveStrength["glance"]): string {
  const waits = progress === null ? "strength waits" : `strength ${progress.done} of ${progress.of}`;
  const worst = glance?.parts.find(({ utilisation }) => utilisation !== null);
  if (worst === undefined || glance === null) return waits;
  return `${waits}; so far ${worst.utilisation?.toFixed(2) ?? ""} at most, on ${glance.vectors} load vectors`;
}

/** "86 points of statics · 8,032 checks on 144 load vectors"; undefined without an answer. */
export function judgedRemark(assessment: Assessment | null): string | undefined {
  if (assessment === null) return undefined;
  const { questions, strength } = assessment;
  if (strength === undefined) return `${questions} points of statics, load path only`;
  return `${inThousands(questions)} points of statics · ${inThousands(strength.checks)} checks on ${inThousands(strength.vectors)} load vectors`;
}
