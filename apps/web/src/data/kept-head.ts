import { ConsistencyProof, isContinued, SignedHead } from "@cornerway/schema";
import { queryOptions, useMutation, useQuery } from "@tanstack/react-query";
import { api, read } from "./api/client.ts";
import { keepDb } from "./keep-db.ts";
import { recordKey } from "./record.ts";

/** What came of holding the record against the head this browser kept; broken when it does not continue it. */
export type HeadFinding =
  { is: "first seen" | "continued"; head: SignedHead } | { is: "broken"; kept: SignedHead; present: SignedHead };

/**
 * True when a record continues the head that was kept of it: RFC 9162 section 2.1.4.2. Its signature is not looked at here,
 * but by `npx cornerway verify`, which is not the service's own page.
 */
export const continuesKept = (kept: SignedHead, { head, proof }: Pick<ConsistencyProof, "head" | "proof">): boolean =>
  head.project === kept.project &&
  isContinued({ size: kept.number, head: kept.head }, { size: head.number, head: head.head }, proof);

/** Where heads are kept. */
type Shelf = Pick<typeof keepDb, "get" | "put">;

const keptKey = (projectId: string): string => `head ${projectId}`;

export const fetchHead = (projectId: string): Promise<SignedHead> =>
  read(SignedHead, api.GET("/api/projects/{projectId}/record/head", { params: { path: { projectId } } }));

const fetchContinuation = (projectId: string, from: number, to: number): Promise<ConsistencyProof> => {
  const params = { path: { projectId }, query: { from, to } };
  return read(ConsistencyProof, api.GET("/api/projects/{projectId}/record/continuation", { params }));
};

/** Holds the record against the head kept of it, and keeps the present one in its place only when it continues it. */
export async function checkKeptHead(projectId: string, shelf: Shelf = keepDb): Promise<HeadFinding> {
  const kept = SignedHead.safeParse(await shelf.get(keptKey(projectId)));
  const present = await fetchHead(projectId);
  if (!kept.success) {
    await keepHead(present, shelf);
    return { is: "first seen", head: present };
  }
  if (!(await isWhole(kept.data, present))) return { is: "broken", kept: kept.data, present };
  await keepHead(present, shelf);
  return { is: "continued", head: present };
}

async function isWhole(kept: SignedHead, present: SignedHead): Promise<boolean> {
  if (present.number <= kept.number) return continuesKept(kept, { head: present, proof: [] });
  const { proof } = await fetchContinuation(kept.project, kept.number, present.number);
  return continuesKept(kept, { head: present, proof });
}

const keepHead = (head: SignedHead, shelf: Shelf): Promise<void> => shelf.put(keptKey(head.project), head);

const headQuery = (projectId: string) =>
  queryOptions({
    queryKey: [...recordKey(projectId), "kept head"],
    queryFn: () => checkKeptHead(projectId),
    staleTime: 0,
  });

/** Checked whenever a project is opened and each time the line comes back. */
export const useHeadFinding = (projectId: string, lineHolds: boolean) =>
  useQuery({ ...headQuery(projectId), enabled: lineHolds });

/** Takes the present record for the one to hold against from now on, although it does not continue the one kept. */
export const useGoOnFrom = () =>
  useMutation({
    mutationFn: (head: SignedHead) => keepHead(head, keepDb),
    onSuccess: (_kept, head, _none, { client }) => client.resetQueries({ queryKey: headQuery(head.project).queryKey }),
  });

export const bundleAddress = (projectId: string): string => `/api/projects/${projectId}/record/bundle`;
export const headAddress = (projectId: string): string => `/api/projects/${projectId}/record/head`;
