import type { Scheme } from "@cornerway/schema";
import { RecentlyMade } from "../numerics/recently-made.ts";

/**
 * The scheme with elements, lists and basis that are as they were in a scheme before it being those of that scheme: what hangs on
 * some of them alone is then known by them, also where every edit comes as a copy of the whole.
 */
export const withKnownElements = (scheme: Scheme): Scheme => ({
  ...scheme,
  basis: bases.take(JSON.stringify(scheme.basis), () => scheme.basis),
  containers: containers.of(scheme.containers),
  openings: openings.of(scheme.openings),
  posts: posts.of(scheme.posts),
  pads: pads.of(scheme.pads),
  loads: loads.of(scheme.loads),
  freeLoads: freeLoads.of(scheme.freeLoads),
  uses: uses.of(scheme.uses),
  beams: beams.of(scheme.beams),
  seats: seats.of(scheme.seats),
  ties: ties.of(scheme.ties),
  locks: locks.of(scheme.locks),
  overrides: overrides.of(scheme.overrides),
});

/** Plain data with the same text is the same. */
class KnownLists<T extends object> {
  private readonly elements = new RecentlyMade<T>(ELEMENTS_KEPT);
  private readonly lists = new RecentlyMade<T[]>(LISTS_KEPT);

  of(list: readonly T[]): T[] {
    const texts = list.map((one) => JSON.stringify(one));
    return this.lists.take(texts.join("\n"), () => list.map((one, n) => this.elements.take(texts[n] ?? "", () => one)));
  }
}

const ELEMENTS_KEPT = 4096;
/** Before and after an edit, of two schemes. */
const LISTS_KEPT = 4;

const bases = new RecentlyMade<Scheme["basis"]>(LISTS_KEPT);
const containers = new KnownLists<Scheme["containers"][number]>();
const openings = new KnownLists<Scheme["openings"][number]>();
const posts = new KnownLists<Scheme["posts"][number]>();
const pads = new KnownLists<Scheme["pads"][number]>();
const loads = new KnownLists<Scheme["loads"][number]>();
const freeLoads = new KnownLists<Scheme["freeLoads"][number]>();
const uses = new KnownLists<Scheme["uses"][number]>();
const beams = new KnownLists<Scheme["beams"][number]>();
const seats = new KnownLists<Scheme["seats"][number]>();
const ties = new KnownLists<Scheme["ties"][number]>();
const locks = new KnownLists<Scheme["locks"][number]>();
const overrides = new KnownLists<Scheme["overrides"][number]>();
