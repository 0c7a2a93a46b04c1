import { checkedElements, limitStates, type CheckedElement, type LimitState } from "./limit-state.ts";
import { notRun } from "./not-run.ts";

/** How far a limit state of an element is judged. */
export type Coverage = "checked" | "bounded" | "not covered" | "does not arise";

/** What a coverage does to the verdict of a mark. */
export const effectOnVerdict = {
  checked: "utilisation decides",
  bounded: "inside the safe bound it works; outside it needs the engineer",
  "not covered": "needs the engineer where it acts",
  "does not arise": "none",
} as const satisfies Record<Coverage, string>;

/** One line of the table. `run`: a strength run makes this check; `why` says what a bound or a gap rests on. */
export type CoverageLine = {
  readonly limitState: LimitState;
  readonly element: CheckedElement;
  readonly coverage: Coverage;
  readonly run: boolean;
  readonly why?: string;
};

/** Elements of one limit state by coverage; all others do not meet it. */
type Row = {
  readonly checked?: readonly CheckedElement[];
  readonly bounded?: readonly CheckedElement[];
  readonly notCovered?: readonly CheckedElement[];
  readonly why?: string;
};

const channels = ["bottom side rail", "cross member", "sill"] as const;
const thinTubes = ["top side rail", "front header"] as const;
const added = ["added post", "added beam", "jamb"] as const;
const members = [...channels, ...thinTubes, ...added] as const;
const posts = ["front corner post", "door corner post"] as const;
const sheets = ["side sheet", "end sheet", "roof sheet"] as const;

/** The table, one row for each limit state. */
export const coverageRows: Readonly<Record<LimitState, Row>> = {
  tension: {
    checked: members,
    bounded: ["door header", "corner fitting", "tie", ...posts],
    notCovered: ["made connection"],
    why: "a fitting by its proof load; sections of header and posts are assumed; ties by a stated plate, not the one drawn; other joints by weld, bolt and plate",
  },
  compression: {
    checked: members,
    bounded: [...posts, "door header", "corner fitting", "tie"],
    why: "posts stand between alone and held by their sheet; a fitting by its proof load; ties by a stated plate, not the one drawn",
  },
  "bending, strong axis": {
    checked: [...thinTubes, ...added, "cross member", "sill"],
    bounded: ["bottom side rail", "door header", ...posts],
    why: "unequal flanges are bounded by the pressed one alone; posts stand between alone and held",
  },
  "bending, weak axis": {
    checked: [...thinTubes, ...added],
    bounded: [...channels, "door header", ...posts],
    why: "wider flange as if evenly pressed; posts stand between alone and held",
  },
  shear: {
    checked: members,
    bounded: ["door header", "corner fitting", "tie", "made connection", ...posts],
    why: "of a post the walls along each axis alone; a fitting by its proof load; ties and framed ends by a stated plate, not the one drawn",
  },
  torsion: {
    checked: ["added post", "added beam", "jamb"],
    bounded: [...channels, ...thinTubes, "door header", ...posts],
    why: "open shapes by St Venant shear alone, thin tubes and cells by the clause of structural tubes",
  },
  "torsion with other forces": {
    checked: ["added post", "added beam", "jamb"],
    bounded: [...channels, ...thinTubes, "door header"],
    why: "the clause of structural tubes, where torsion takes more than a fifth of its strength; open shapes as if by it; a bottom rail between the cross members beside a seat by its stresses, warping alone",
  },
  "axial force with bending": {
    checked: members,
    bounded: ["door header", ...posts],
    why: "posts stand between alone and held by their sheet; bending of channels as bounded as above, which is first yield of the whole section within 1 % where cross members hold them; rails as chords and collectors, which bring the force of roof and floor to walls shorter than the side, by their axial force in the model",
  },
  "bending with shear": {
    checked: [...channels, ...thinTubes],
    bounded: ["door header"],
    why: "structural steel needs none",
  },
  amplification: {
    bounded: [...members, ...posts, "door header", "building"],
    why: "first-order forces enlarged by factors answer up to 1.5; beyond it analysis of the second order has to",
  },
  "web yielding": { checked: ["added beam"] },
  "web buckling": { checked: ["added beam"] },
  "flange bending": { checked: ["added beam"] },
  "web crippling": {
    bounded: channels,
    checked: ["added beam"],
    why: "inside radius of the bends is taken as the thickness; a stiffener drawn at a seat by its own clause",
  },
  "bending with web crippling": { bounded: channels, why: "inside radius of the bends is taken as the thickness" },
  "local moment at a seat": {
    bounded: ["top side rail", "bottom side rail", "front header", "sill"],
    notCovered: ["door header"],
    why: "fitted to fold models within 7 %; less over the length of a drawn seat as on an elastic bed",
  },
  "wall plastification": {
    checked: ["added post"],
    bounded: ["top side rail", "added beam", "bottom side rail", "cross member"],
    notCovered: ["front header", "door header", "jamb"],
    why: "thin rail by the clause of structural tubes; half of the loaded face is taken as used; a bottom rail's web under a cross member by plastic hinges, where its end keeps the rail from turning",
  },
  "side wall yielding": {
    bounded: ["top side rail", "front header", "added beam"],
    notCovered: ["door header", "added post", "jamb"],
    why: "thin rail by the clause of structural tubes; half of the loaded face is taken as used",
  },
  "side wall crippling": {
    bounded: ["top side rail", "front header", "added beam"],
    notCovered: ["door header", "added post", "jamb"],
    why: "thin rail by the clause of structural tubes; half of the loaded face is taken as used",
  },
  "sheet shear buckling": {
    bounded: ["side sheet", "end sheet", "roof sheet"],
    why: "least of three published forms; φ and Ω are judgement; a roof as a diaphragm between its rails; beside an opening that is not framed nothing counts over 90 mm",
  },
  "sheet bending out of plane": {
    bounded: sheets,
    why: "simple span between the rails; beside a window two folds carry its half width: common practice",
  },
  "wind on a part": {
    bounded: ["jamb", "added beam"],
    notCovered: ["building"],
    why: "bending out of the wall added to the rest; glass, doors and boards under an overhang are their makers'",
  },
  "sheet crushing under a seat": {
    bounded: ["side sheet", "end sheet"],
    notCovered: ["roof sheet"],
    why: "half the fold off the middle, spread by judgement; a roof sheet bears no seat",
  },
  "boards under load": {
    bounded: ["floor boards"],
    why: "by the wheel of the ISO floor test on new boards; cut edges, rot and what is fixed to them are not judged",
  },
  "wall shear by the code": {
    bounded: ["side sheet", "end sheet"],
    why: "the table is a proof load over five: beyond it the engineer may raise the cap with a reason",
  },
  weld: {
    checked: ["added post"],
    bounded: ["made connection", "tie", "jamb", "added beam", "cross member"],
    notCovered: ["corner fitting"],
    why: "the end of a cross member by a fillet of 3 mm; made connections, seats that hold down, ties and frames by a stated detail, not the one drawn; cast fittings need a qualified procedure",
  },
  bolt: {
    bounded: ["made connection"],
    why: "added beams on steel and pads by stated bolts, not the ones drawn, up to the pull that pries none of them; nothing else is bolted",
  },
  "plate bending": {
    checked: ["added beam", "jamb", "pad"],
    bounded: ["added post", "tie", "seat"],
    why: "plates in concentric compression only; base plates of posts, and ties, by a stated detail, not the one drawn; a seat along the member it lies on, its plate and packing as one plate",
  },
  "bearing on steel": { checked: ["seat"] },
  "bearing on concrete": {
    checked: ["jamb", "pad"],
    bounded: ["added post"],
    why: "under base plates of a stated detail, not the one drawn",
  },
  "pad bending": {
    bounded: ["pad"],
    why: "as plain concrete: bars are not counted; earthquakes without overstrength, below walls that stop as well",
  },
  "pad punching": {
    bounded: ["pad"],
    why: "as plain concrete: bars are not counted; earthquakes without overstrength, below walls that stop as well",
  },
  "bearing on soil": {
    checked: ["pad"],
    why: "presumptive until a report is attached; earthquakes without overstrength, below walls that stop as well",
  },
  "pad lifts": { checked: ["pad"] },
  anchor: {
    bounded: ["pad"],
    why: "anchors under hold-downs, posts, in walls as well, and beams of a stated detail, not the ones drawn; feet of posts lift where they would be pulled; cracked concrete, load through the middle of the group; pull-out of post-installed anchors is their maker's",
  },
  "lock tension": { bounded: ["lock"], why: "breaking over five; no code-listed connector" },
  "lock shear": { bounded: ["lock"], why: "breaking over five; no code-listed connector" },
  deflection: {
    bounded: ["bottom side rail", "top side rail", "added beam", "cross member", "sill", "front header", "door header"],
    notCovered: ["added post", "jamb"],
    why: "at service level on one set of assumptions; a limit of finishes, which the engineer may set otherwise",
  },
  drift: {
    bounded: ["building"],
    why: "each unit as a storey of its own, at its worst corner; wind by common practice",
  },
  "gap closure": {
    bounded: ["building", "bottom side rail"],
    notCovered: ["top side rail", "added beam"],
    why: "between neighbours by the sum of both; under a rail by its own sag, the sheet below taken as still",
  },
  "stability while set up": {
    bounded: ["building"],
    why: "each unit alone as it has just been set, in 0.75 of the design wind speed, and whether it holds together as it hangs: props, braces and cables of the erector would relieve it",
  },
  vibration: { notCovered: ["building"], why: "floors are not judged for bounce" },
  fatigue: { notCovered: ["building"], why: "loads of a building are taken as static" },
  fire: { notCovered: ["building"], why: "no fire resistance is judged" },
  corrosion: { notCovered: ["building"], why: "thickness is that of the specification until measured" },
};

/** Coverage of one limit state of one element. */
export function coverageOf(limitState: LimitState, element: CheckedElement): CoverageLine {
  const row = coverageRows[limitState];
  const coverage = coverageIn(row, element);
  const saysWhy = row.why !== undefined && coverage !== "does not arise";
  const judged = coverage === "checked" || coverage === "bounded";
  const run = judged && notRun[limitState]?.includes(element) !== true;
  return { limitState, element, coverage, run, ...(saysWhy ? { why: row.why } : {}) };
}

/** Every limit state of every element, in the order of the two lists: what is printed. */
export const coverageTable = (): readonly CoverageLine[] =>
  limitStates.flatMap((limitState) => checkedElements.map((element) => coverageOf(limitState, element)));

function coverageIn(row: Row, element: CheckedElement): Coverage {
  if (row.checked?.includes(element)) return "checked";
  if (row.bounded?.includes(element)) return "bounded";
  return row.notCovered?.includes(element) ? "not covered" : "does not arise";
}
