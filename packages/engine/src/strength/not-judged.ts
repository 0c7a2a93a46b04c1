/** What strength leaves out whatever the scheme, and what that does to the verdict; printed with every answer. */
export const notJudged: readonly string[] = [
  "hatches, ties that meet no fitting, post or rail, findings on members beyond a measured thickness of rails, headers, sills and cross members, a system of frames instead of sheet walls: not in the model; the unit needs the engineer",
  "overstrength below walls that do not run down: on members and joints of the units and posts below, not on their pads",
  "added beams that slope, lie askew, hold up a rail from below or stand on fewer than two supports: not in the model; the unit needs the engineer",
  "made connections, ties and joints of added beams: by a stated detail, not by one drawn; bounded, never checked",
  ...[
    "an engineer's own verdict on a mark",
    "thickness of seat packing; level error of seats under fittings on beams, and of posts on fittings and beams",
    "flow in floor boards as a diaphragm",
    "wind on a part: glass, doors, boards under an overhang",
    "gaps over openings and glass",
    "posts welded at their ends; plates on the heads of posts in walls",
    "lifting of less than a whole unit, with posts or steel that hang outside it; erection beyond each unit as it is set, bare",
    "deflection of added beams by themselves, plates but those of ties, framed ends, bases and heads of posts",
    "vibration, fatigue, fire, corrosion",
  ].map((what) => `${what}: no verdict answers for it`),
];
