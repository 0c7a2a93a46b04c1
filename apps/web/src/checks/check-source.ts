import { elementNames, inTags } from "@cornerway/schema";
import type { CheckWorking, Project, Revision, Role, Scheme, StrengthReport } from "@cornerway/schema";
import { engineVersion } from "@cornerway/engine";
import { useMemo } from "react";
import { fetchWorking, reportKey, useStrengthReport } from "../data/strength-report.ts";
import type { LiveStrength } from "../worker/use-strength.ts";

/** Rows with tags in the stead of ids, as everyone calls things. */
export function taggedReport(report: StrengthReport, scheme: Scheme): StrengthReport {
  const names = elementNames(scheme);
  const tagged = (text: string) => inTags(text, names);
  return {
    ...report,
    results: report.results.map((result) => ({ ...result, place: tagged(result.place), run: tagged(result.run) })),
    loads: report.loads.map((load) => ({ ...load, title: tagged(load.title) })),
    cases: report.cases.map((each) => ({ ...each, id: tagged(each.id) })),
    withoutEquilibrium: report.withoutEquilibrium.map((each) => ({
      ...each,
      words: tagged(each.words),
      first: tagged(each.first),
    })),
  };
}

/** Governing checks of one scheme, and where their workings come from. */
export interface CheckSource {
  report: StrengthReport | null;
  scheme: Scheme;
  /** Names the answer, so that a working is fetched once for each. */
  key: readonly unknown[];
  fetchWorking: (id: string) => Promise<CheckWorking | null>;
}

/** The checks of a revision, as the service recorded them. */
export function useRevisionChecks(
  { id: projectId, roles }: Pick<Project, "id" | "roles">,
  revision: Revision | undefined,
): CheckSource | null {
  const judged = revision?.result?.strength === undefined || !readsChecks(roles) ? null : revision.resultDigest;
  const letter = revision?.letter ?? "";
  const report = useStrengthReport(projectId, letter, judged).data ?? null;
  return useMemo(
    () =>
      revision === undefined || judged === null
        ? null
        : {
            report: report === null ? null : taggedReport(report, revision.scheme),
            scheme: revision.scheme,
            key: reportKey(projectId, letter, judged),
            fetchWorking: (id) => fetchWorking(projectId, letter, id),
          },
    [projectId, letter, revision, judged, report],
  );
}

/**
 * The same as it was recorded, where this page's engine is the one that judged; its runs are solved again for their forces.
 * `anyone`: for a picture that says no number, such as the owner's.
 */
export function useRevisionReport(
  { id, roles }: Pick<Project, "id" | "roles">,
  revision: Revision | undefined,
  { anyone = false }: { anyone?: boolean } = {},
): StrengthReport | null {
  const { result } = revision ?? {};
  const own = result?.strength !== undefined && result.engineVersion === engineVersion;
  const judged = own && (anyone || readsChecks(roles)) ? (revision?.resultDigest ?? null) : null;
  return useStrengthReport(id, revision?.letter ?? "", judged).data ?? null;
}

/** An owner by itself is told in plain words what stands in the way; calculations are for those who read them. */
export const readsChecks = (roles: readonly Role[]): boolean => roles.some((role) => role !== "owner");

/** The checks of the draft, from the thread that made them; none while the scheme has moved on. */
export function useDraftChecks({ judged, stands, workingOf }: LiveStrength): CheckSource | null {
  return useMemo(
    () =>
      judged === null || judged.report === null || !stands
        ? null
        : {
            report: taggedReport(judged.report, judged.scheme),
            scheme: judged.scheme,
            key: ["draft checks", judged.answer],
            fetchWorking: workingOf,
          },
    [judged, stands, workingOf],
  );
}

/** Draws what is deflected under a run; undefined where there is no such drawing. */
export type DeflectedIn = (run: string) => (() => void) | undefined;
