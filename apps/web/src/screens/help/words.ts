/** Words of the trade as the sheets use them: one word for one thing. */
export const words: readonly (readonly [word: string, meaning: string])[] = [
  [
    "scheme",
    "the arrangement under design: containers, openings, posts, beams, seats, ties, pads, locks, loads, site, stages",
  ],
  ["container, unit", "one ISO unit: its type, place, level and turn, and which end its doors are at"],
  [
    "corner fitting, corner post, rail",
    "the parts of a container that carry it: fittings at its eight corners, posts between them, rails along its edges",
  ],
  ["front end, door end", "the blind end, and the end with the doors"],
  ["opening", "a cut in a sheet: face, offset, sill, width, height, framing, stage"],
  ["post, beam", "an added column, an added beam"],
  ["seat", "a made bearing between units away from a corner, with its packing"],
  ["tie", "a made connection between units side by side"],
  ["lock", "a stock locking device between matching fittings; a turned unit needs a made connection even on fittings"],
  ["pad", "what stands in the ground: pad, strip or slab"],
  ["overhang", "the part of an upper unit beyond its bearings"],
  ["load path", "the way a load takes from where it acts to the ground"],
  ["mark", "what the engine notes on a scheme: where, what, why, with its verdict"],
  ["remedy", "a change that would settle a mark, with its steel, its premium and the verdict after it"],
  ["premium", "what a scheme costs in structure above the same containers stacked plainly"],
  ["draft, revision", "the working copy, and a lettered copy of it that never changes again"],
  ["note, question, answer", "what people write, pinned to an element; only the engineer answers"],
  ["request", "a change the engineer asks for, drawn as proposed steel; the architect takes it in or declines it"],
  ["stamp", "the engineer’s word on a revision: a step between the parties, never a seal"],
  ["record", "the account of a project: every act, who, when, on what; nothing in it is altered"],
];
