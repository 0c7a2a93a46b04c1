import type { ModelLink, ModelSupport } from "./analytical-model.ts";

/** A bearing that could hold its container in plan; `bearing` is the id of its link, or the node of its support. */
export interface HoldCandidate {
  readonly bearing: string;
  /** The container held; null for a post by itself, which always holds both ways. */
  readonly of: string | null;
  readonly onCorner: boolean;
  readonly xMm: number;
  readonly yMm: number;
  /** Held with play though the plan ties: it holds no more than its container needs to keep its place. */
  readonly atPlay?: true;
  /** A weld to what stands below has no play: it holds across together with another weld of its container on the same line. */
  readonly welded?: true;
  /** No lock or weld is drawn here: it holds by friction alone. */
  readonly plain?: true;
}

/** How a building is held in plan: which bearings do it depends on which have lifted. */
export interface HoldPlan {
  readonly kind: "locks at play" | "tied";
  /** Of a hold between containers, N/mm; holds on the ground are rigid. */
  readonly stiffness: number;
  readonly candidates: readonly HoldCandidate[];
  /** Where plain bearings hold no more than friction: how much of what presses on them. */
  readonly friction?: number;
}

/** The plan where friction counts for nothing: plain bearings hold as the locks would that have to be drawn there. */
export const asIfLocked = ({ kind, stiffness, candidates }: HoldPlan): HoldPlan => ({ kind, stiffness, candidates });

/** Which of the two level directions, global x and y, a bearing holds. */
export interface PlanHold {
  readonly x: boolean;
  readonly y: boolean;
}

/**
 * The holds in force once these bearings have lifted, and the containers with fewer than two bearings left to hold them.
 *
 * Locks at play: every container is held by one bearing both ways and by its farthest bearing across the line between the
 * two, which is determinate in plan: upright loads cause no level reactions. Where one of the two is welded, welds on its line
 * across hold with it across. Tied: every bearing holds both ways, but those that play.
 */
export function planHolds(
  plan: HoldPlan,
  lifted: ReadonlySet<string>,
): { holds: Map<string, PlanHold>; unheld: string[] } {
  const holds = new Map<string, PlanHold>();
  const standing = plan.candidates.filter(({ bearing }) => !lifted.has(bearing));
  const unheld: string[] = [];
  const isTied = ({ of, atPlay }: HoldCandidate): boolean => of === null || (plan.kind === "tied" && atPlay !== true);
  for (const candidate of standing) if (isTied(candidate)) holds.set(candidate.bearing, { x: true, y: true });
  for (const [of, own] of byContainer(plan.candidates.filter((candidate) => !isTied(candidate)))) {
    const first =
      own.find(({ onCorner, bearing }) => onCorner && !lifted.has(bearing)) ??
      own.find(({ bearing }) => !lifted.has(bearing));
    if (first !== undefined) holds.set(first.bearing, { x: true, y: true });
    const far =
      first &&
      farthest(
        own.filter(({ bearing }) => !lifted.has(bearing)),
        first,
      );
    if (first === undefined || far === undefined) {
      unheld.push(of);
      continue;
    }
    const across = acrossFrom(first, far);
    holds.set(far.bearing, across);
    for (const other of own)
      if (!lifted.has(other.bearing) && !holds.has(other.bearing) && sharesWith(other, [first, far], across))
        holds.set(other.bearing, across);
  }
  return { holds, unheld };
}

/** Half the length of a fitting, ISO 1161 (178 mm, from memory): nearer than this along the container is on one line across. */
const ON_LINE_MM = 89;

function sharesWith(other: HoldCandidate, held: readonly HoldCandidate[], across: PlanHold): boolean {
  const along = ({ xMm, yMm }: HoldCandidate): number => (across.y ? xMm : yMm);
  return (
    other.welded === true && held.some((one) => one.welded === true && Math.abs(along(one) - along(other)) < ON_LINE_MM)
  );
}

/** Links and supports with the holds of this plan written into them, as the exchange format needs them. */
export function withHolds(
  links: readonly ModelLink[],
  supports: readonly ModelSupport[],
  plan: HoldPlan | undefined,
  lifted: ReadonlySet<string> = new Set(),
): { links: readonly ModelLink[]; supports: readonly ModelSupport[] } {
  if (plan === undefined) return { links, supports };
  const { holds } = planHolds(plan, lifted);
  return {
    links: links.map((link) => heldLink(link, holds.get(link.id), plan.stiffness)),
    supports: supports.map((support) => heldSupport(support, holds.get(support.node))),
  };
}

function heldLink(link: ModelLink, hold: PlanHold | undefined, stiffness: number): ModelLink {
  if (hold === undefined) return link;
  const [x, y, z, a, b, c] = link.k;
  return { ...link, k: [hold.x ? stiffness : x, hold.y ? stiffness : y, z, a, b, c] };
}

function heldSupport(support: ModelSupport, hold: PlanHold | undefined): ModelSupport {
  if (hold === undefined) return support;
  const added = [...(hold.x ? (["ux"] as const) : []), ...(hold.y ? (["uy"] as const) : [])];
  return { ...support, fix: [...new Set([...added, ...support.fix])] };
}

function byContainer(candidates: readonly HoldCandidate[]): Map<string, HoldCandidate[]> {
  const groups = new Map<string, HoldCandidate[]>();
  for (const candidate of candidates) {
    if (candidate.of === null) continue;
    const group = groups.get(candidate.of);
    if (group === undefined) groups.set(candidate.of, [candidate]);
    else group.push(candidate);
  }
  return groups;
}

/** Along the container rather than over its diagonal: equal in arm, and the hold then acts squarely across. */
function farthest(own: readonly HoldCandidate[], first: HoldCandidate): HoldCandidate | undefined {
  const lever = ({ xMm, yMm }: HoldCandidate): number => Math.max(Math.abs(xMm - first.xMm), Math.abs(yMm - first.yMm));
  const square = ({ xMm, yMm }: HoldCandidate): number =>
    (xMm - first.xMm) * (xMm - first.xMm) + (yMm - first.yMm) * (yMm - first.yMm);
  const others = own.filter((candidate) => candidate !== first && square(candidate) > 0);
  return others.toSorted((a, b) => Math.round(lever(b) - lever(a)) || square(a) - square(b))[0];
}

function acrossFrom(first: HoldCandidate, far: HoldCandidate): PlanHold {
  const alongX = Math.abs(far.xMm - first.xMm) >= Math.abs(far.yMm - first.yMm);
  return { x: !alongX, y: alongX };
}
