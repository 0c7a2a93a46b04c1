import type { Face, MarkKind, Scheme } from "@cornerway/schema";
import { containerDimensions } from "../catalog/container-dimensions.ts";

/**
 * How many questions of geometry and statics are asked of a scheme: every element is held against each kind of mark that
 * can be noted of it, as often as it is asked; and whether all loads arrive.
 */
export function questionsOf(scheme: Scheme): number {
  const loadsArrive = 1;
  return Object.values(asked).reduce(
    (sum, times) => sum + subjects.reduce((all, of) => all + (times[of] ?? 0) * howMany[of](scheme), 0),
    loadsArrive,
  );
}

/** What a question is asked of. A corner is a bottom fitting; a wall opening lies in a side or the front end. */
const subjects = [
  "container",
  "corner",
  "opening",
  "wall",
  "door",
  "roof",
  "floor",
  "framing",
  "post",
  "pad",
  "beam",
  "seat",
  "tie",
  "lock",
  "override",
  "free load",
] as const;
type Subject = (typeof subjects)[number];

const inFaces =
  (...faces: readonly Face[]) =>
  ({ openings }: Scheme) =>
    openings.filter(({ face }) => faces.includes(face)).length;

const howMany: Record<Subject, (scheme: Scheme) => number> = {
  container: ({ containers }) => containers.length,
  corner: ({ containers }) => containers.reduce((sum, { type }) => sum + fittingsOf(type), 0),
  opening: ({ openings }) => openings.length,
  wall: inFaces("left", "right", "front"),
  door: inFaces("door"),
  roof: inFaces("roof"),
  floor: inFaces("floor"),
  post: ({ posts }) => posts.length,
  pad: ({ pads }) => pads.length,
  framing: ({ openings }) => openings.filter(({ framing }) => framing !== undefined).length,
  beam: ({ beams }) => beams.length,
  seat: ({ seats }) => seats.length,
  tie: ({ ties }) => ties.length,
  lock: ({ locks }) => locks.length,
  override: ({ overrides }) => overrides.length,
  "free load": ({ freeLoads }) => freeLoads.length,
};

/** Four at the corners, and four more where a type has intermediate ones. */
const fittingsOf = (type: Scheme["containers"][number]["type"]): number =>
  containerDimensions(type).intermediateHoleSpacingMm > 0 ? 8 : 4;

/** By kind of mark, how often it is asked for of each subject. A kind without an entry does not compile. */
const asked: Record<MarkKind, Partial<Record<Subject, number>>> = {
  // A container with another; a post with a pad; a pad with a container and with another pad; a beam with posts, pads, beams.
  collision: { container: 1, post: 1, pad: 2, beam: 3 },
  // With its imposed loads and without.
  "tips-over": { container: 2 },
  "near-tipping": { container: 2 },
  // Falls, turns, slides.
  mechanism: { container: 3 },
  // At either end.
  overhang: { container: 2 },
  // At each corner and along each bottom side rail.
  "borne-on-rail": { corner: 1, container: 2 },
  "corner-on-air": { corner: 1 },
  "made-connection": { corner: 1 },
  rocks: { container: 1 },
  "stands-clear": { corner: 1 },
  "off-its-pad": { corner: 1 },
  "below-ground": { container: 1 },
  "pad-missing": { corner: 1 },
  "borne-on-fittings": { container: 1 },
  "below-not-settled": { container: 1 },
  "opening-off-face": { opening: 1 },
  // The four members round a face.
  "member-cut": { opening: 4 },
  "openings-overlap": { opening: 1 },
  // Half of a wall and its piers; a door end or a roof only for what it cuts.
  "opening-in-sheet": { wall: 2, door: 1, roof: 1 },
  "wall-out": { wall: 1 },
  "load-over-opening": { wall: 1, door: 1, roof: 1 },
  "hatch-blocked": { roof: 1, floor: 1 },
  "cross-members-cut": { floor: 1 },
  "post-without-ground": { post: 1 },
  "post-holds-nothing": { post: 1 },
  "post-carries": { post: 1 },
  // Head and foot.
  "post-off-centre": { post: 2 },
  "post-through-opening": { post: 1 },
  "post-through-unit": { post: 1 },
  "pad-holds-nothing": { pad: 1 },
  "pad-off-ground": { pad: 1 },
  "borne-on-beam": { beam: 1 },
  "beam-carries": { beam: 1 },
  "beam-holds-nothing": { beam: 1 },
  // Either end.
  "beam-end-without-support": { beam: 2 },
  "beam-lifts": { beam: 1 },
  "beam-through-unit": { beam: 1 },
  // Under it and over it.
  "seat-without-bearing": { seat: 2 },
  "seat-packing": { seat: 1 },
  "seat-off-rail": { seat: 1 },
  "tie-joins": { tie: 1 },
  "tie-cannot-serve": { tie: 1 },
  "lock-cannot-serve": { lock: 1 },
  // Jamb, header and sill of a framing.
  "section-unknown": { post: 1, beam: 1, framing: 3, override: 1 },
  "override-misfits": { override: 1 },
  "load-off-unit": { "free load": 1 },
  // What strength notes is no question of geometry and statics: its checks are counted apart.
  uplift: {},
  slides: {},
  "no-lateral-wall": {},
  overstressed: {},
  "strength-open": {},
  "strength-adequate": {},
};
