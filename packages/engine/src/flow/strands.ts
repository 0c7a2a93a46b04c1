import { flowPaths, type FlowPath } from "./flow-paths.ts";
import { smoothed } from "./smooth-way.ts";
import { Unrolled, type WallPoint } from "./unrolled.ts";
import type { FlowNode, VerticalFlow } from "./vertical-flow.ts";
import type { WallSide } from "./wall-plane.ts";

/** A share of the force that leaves the posts of a container, and its way through the sheets. */
export type Strand = {
  readonly forceN: number;
  /** Where it comes in and leaves: a bearing point, or null for what is spread over a floor or roof. */
  readonly from: FlowNode | null;
  readonly to: FlowNode | null;
  /** Its way, wall by wall; what runs down a post is left to the post's stroke. */
  readonly ways: readonly { readonly wall: WallSide; readonly points: readonly FlowNode[] }[];
};

/** What the walls of a container touch and which of their uprights carry strokes of their own. */
export type WallEnds = { readonly bearings: readonly FlowNode[]; readonly posts: readonly { x: number; y: number }[] };

/** Tubes of the flow that go from one bearing, or from the loads at one height, to one bearing. */
export type Bundle = {
  readonly from: number | null;
  readonly to: number | null;
  readonly forceN: number;
  readonly paths: readonly FlowPath[];
};

/** The whole flow, bundled by where it comes from and goes. */
export function bundles(flow: VerticalFlow, { bearings }: WallEnds): Bundle[] {
  const ends = bearings.flatMap((at) => flow.nodeAt(at) ?? []);
  const isBearing = new Set(ends);
  const found = new Map<string, FlowPath[]>();
  for (const path of flowPaths(flow)) {
    const [from, to] = [path.nodes[0] ?? 0, path.nodes.at(-1) ?? 0];
    const name = (node: number): string => (isBearing.has(node) ? `${node}` : `at ${flow.nodes[node]?.z ?? 0}`);
    const key = `${name(from)} to ${name(to)}`;
    const list = found.get(key);
    if (list === undefined) found.set(key, [path]);
    else list.push(path);
  }
  return [...found.values()].map((paths) => {
    const [from = 0, to = 0] = [paths[0]?.nodes[0], paths[0]?.nodes.at(-1)];
    return {
      from: isBearing.has(from) ? from : null,
      to: isBearing.has(to) ? to : null,
      forceN: paths.reduce((sum, { forceN }) => sum + forceN, 0),
      paths,
    };
  });
}

/** A share thinner than this part of the building's own is not drawn. */
const LEAST_SHARE = 0.25;

/**
 * Bundles that leave the posts, in equal shares of about `shareN`: each goes the way of the tube in its middle, a streamline
 * of the solved flow. A load that only joins the post of its own corner, and a post's force that stays in it, are no strands.
 */
export function strandsOf(flow: VerticalFlow, ends: WallEnds, all: readonly Bundle[], shareN: number): Strand[] {
  const unrolled = new Unrolled(flow);
  return all
    .filter((bundle) => leavesPosts(flow, ends, bundle) && bundle.forceN > LEAST_SHARE * shareN)
    .flatMap((bundle) => sharesOf(unrolled, ends, bundle, Math.max(1, Math.round(bundle.forceN / shareN))));
}

/** Whether what a bundle carries leaves the upright it came in by, or gathers away from the corners. */
export function leavesPosts({ nodes, lines }: VerticalFlow, _: WallEnds, { from, to }: Bundle): boolean {
  const [start, end] = [from === null ? undefined : nodes[from], to === null ? undefined : nodes[to]];
  if (start !== undefined && end !== undefined) return !sameUpright(start, end);
  const only = start ?? end;
  return (
    only !== undefined && !(same(Math.abs(only.x), lines.halfLengthMm) && same(Math.abs(only.y), lines.halfWidthMm))
  );
}

function sharesOf(unrolled: Unrolled, { posts }: WallEnds, bundle: Bundle, shares: number): Strand[] {
  const { nodes } = unrolled.flow;
  const paths =
    bundle.from === null ? bundle.paths.toSorted((a, b) => unrolled.startOf(a) - unrolled.startOf(b)) : bundle.paths;
  return Array.from({ length: shares }, (_, n): Strand => {
    const path = middleOf(paths, ((n + 0.5) / shares) * bundle.forceN);
    const way = smoothed(offPosts(unrolled.wayOf(path), nodes, path, posts), unrolled);
    return {
      forceN: bundle.forceN / shares,
      from: bundle.from === null ? null : (nodes[bundle.from] ?? null),
      to: bundle.to === null ? null : (nodes[bundle.to] ?? null),
      ways: unrolled.byWall(way),
    };
  });
}

function middleOf(paths: readonly FlowPath[], forceN: number): FlowPath {
  let passed = 0;
  for (const path of paths) {
    passed += path.forceN;
    if (passed >= forceN) return path;
  }
  const last = paths.at(-1);
  if (last === undefined) throw new RangeError("a bundle has tubes");
  return last;
}

/** From where it last leaves the post it came by, to where it reaches the one it goes down by. */
function offPosts(
  way: readonly WallPoint[],
  nodes: readonly FlowNode[],
  { nodes: path }: FlowPath,
  posts: WallEnds["posts"],
): readonly WallPoint[] {
  const hasPost = (at: FlowNode | undefined): boolean =>
    at !== undefined && posts.some((post) => sameUpright(post, at));
  const [start, end] = [nodes[path[0] ?? 0], nodes[path.at(-1) ?? 0]];
  const beside = (n: number, upright: WallPoint | undefined): boolean =>
    upright !== undefined && Math.abs((way[n]?.sMm ?? 0) - upright.sMm) < BESIDE_POST_MM;
  let [from, to] = [0, way.length - 1];
  if (hasPost(end)) while (to > 1 && beside(to - 1, way.at(-1))) to--;
  if (hasPost(start)) while (from < to - 1 && beside(from + 1, way[0])) from++;
  if (hasPost(end)) while (to < way.length - 1 && !onLine(way[to], way.at(-1))) to++;
  if (hasPost(start)) while (from > 0 && !onLine(way[from], way[0])) from--;
  return way.slice(from, to + 1);
}

/** Two bays of cross members: what stays this near a post runs along it. Judged, no source: it only says where a stroke takes over. */
const BESIDE_POST_MM = 620;

const onLine = (a: WallPoint | undefined, b: WallPoint | undefined): boolean => same(a?.sMm ?? NaN, b?.sMm ?? NaN);

const sameUpright = (a: { x: number; y: number }, b: { x: number; y: number }): boolean =>
  same(a.x, b.x) && same(a.y, b.y);

/** Points are told apart to a tenth of a millimetre, as the model names them. */
const SAME_MM = 0.06;
const same = (a: number, b: number): boolean => Math.abs(a - b) < SAME_MM;
