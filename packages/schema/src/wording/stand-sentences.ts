import type { FactOf } from "../mark.ts";
import { inRow, type Figures } from "./figures.ts";
import type { Named, Telling } from "./reader.ts";

/** How containers stand as bodies: on their corners, overhanging, tipping, free to move, in one place. */
export const standSentences = {
  "borne-on-fittings": ({ heaviestPostKn }: FactOf<"borne-on-fittings">, { at, say }: Named): Telling => ({
    architect: {
      body: `${at(0)} stands corner on corner; its heaviest corner takes ${say.force(heaviestPostKn)}. This is said of the load path; strength has a mark of its own.`,
    },
    engineer: {
      body: `${at(0)} is uncut and borne fitting on fitting or on pads to the ground; heaviest corner ${say.forceExact(heaviestPostKn)}, unfactored, by statics, ± not known. This is said of the load path; strength has a mark of its own.`,
    },
    owner: {
      body: `${at(0)} stands corner on corner, as a container is made to stand. This is said of the way its load takes.`,
    },
  }),

  "below-not-settled": (_fact: FactOf<"below-not-settled">, { at, rest }: Named): Telling => ({
    architect: { body: `${at(0)} stands corner on corner on ${inRow(rest(1))}. What is under it is not settled yet.` },
    engineer: {
      body: `${at(0)} is uncut and corner on corner on ${inRow(rest(1))}. The load path below it does not run down whole corner posts to the ground.`,
    },
    owner: { body: `${at(0)} waits for what stands under it, ${inRow(rest(1))}.` },
  }),

  overhang: (fact: FactOf<"overhang">, { at, rest, say }: Named): Telling => {
    const { below, pulls } = heldApart(rest(1), fact.heldBy);
    const heldDown =
      fact.heldDownKn === undefined ? "" : `, held down with ${say.forceExact(fact.heldDownKn)} at ${pulls}`;
    return {
      architect: {
        body: `${at(0)} runs ${say.length(fact.lengthMm)} past its last support to the ${fact.towards}; ${say.force(fact.bearingKn)} comes down there on ${inRow(below)}${heldDown}. Off the corners each bearing needs a made connection; its strength has a mark of its own.`,
      },
      engineer: {
        body: `${at(0)} overhangs ${say.length(fact.lengthMm)} to the ${fact.towards}: ${say.forceExact(fact.bearingKn)} on the bearing line, ${heldDown === "" ? `${say.forceExact(fact.tailReactionKn)} left at the tail` : heldDown.slice(2)}, by statics, ± not known. Patterns of load, hold-down of the tail and strength have marks of their own.`,
      },
      owner: {
        body: `${at(0)} reaches ${say.inWords(fact.lengthMm)} out to the ${fact.towards}, past the last thing it stands on. The engineer has to say what holds it.`,
      },
    };
  },

  "tips-over": (fact: FactOf<"tips-over">, { at, rest, say }: Named): Telling => {
    const { whenEmpty, towards } = fact;
    if (fact.heldDownKn !== undefined) return heldDown(fact, fact.heldDownKn, at(0), inRow(rest(1)), say);
    const onEdge = fact.outsideMm < leastShownMm;
    return {
      architect: {
        body: `${at(0)} tips over to the ${towards}${whenEmpty ? " when it is empty" : ""}: its load comes down ${onEdge ? "on the very edge of its bearings" : `${say.length(fact.outsideMm)} outside its last bearing`}. Nothing drawn there holds it up.`,
        detail: onEdge
          ? "A support further out on that side would settle it."
          : "A post with a pad under the free end, or less overhang, would settle it.",
      },
      engineer: {
        body: `The resultant of ${at(0)}${whenEmpty ? " without imposed loads" : ""}, ${say.forceExact(fact.weightKn)} unfactored, lies ${onEdge ? "on the edge of" : `${say.length(fact.outsideMm)} outside`} its bearings to the ${towards}${onEdge ? "" : `: ${say.moment(fact.momentKnm)} with nothing drawn to hold it`}. ${afterTip(onEdge, whenEmpty === true)}`,
      },
      owner: {
        body: `${at(0)} would turn over to the ${towards} as it is drawn${whenEmpty ? ", whenever it is empty" : ""}. It needs support further out, or has to move back.`,
      },
    };
  },

  "near-tipping": (
    { whenEmpty, insideMm, weightKn, towards }: FactOf<"near-tipping">,
    { at, say }: Named,
  ): Telling => ({
    architect: {
      body: `${at(0)} stands${whenEmpty ? ", when it is empty," : ""} only ${say.length(insideMm)} from tipping over to the ${towards}. Its true weight may lie that much nearer to one end.`,
      detail: "A support further out on that side would settle it.",
    },
    engineer: {
      body: `The resultant of ${at(0)}${whenEmpty ? " without imposed loads" : ""}, ${say.forceExact(weightKn)} unfactored, lies ${say.length(insideMm)} inside the edge of its bearings to the ${towards}. Weight is taken at the middle of the unit, though its doors draw it to that end: balance is not settled within ${say.length(300)}.`,
    },
    owner: {
      body: `${at(0)} stands close to turning over to the ${towards}${whenEmpty ? " when it is empty" : ""}. The engineer has to say what holds it.`,
    },
  }),

  rocks: ({ gapMm }: FactOf<"rocks">, { at, say }: Named): Telling => ({
    architect: { body: `${at(0)} bears at two heights, ${say.small(gapMm)} apart. It rocks until it is packed.` },
    engineer: {
      body: `Gaps at the bearings of ${at(0)} differ by ${say.small(gapMm)}. It rocks until packed, and packing decides which bearings take load.`,
    },
    owner: { body: `${at(0)} does not sit level on what is under it. It has to be packed when it is set down.` },
  }),

  mechanism: ({ direction, heldDownKn }: FactOf<"mechanism">, { at, rest, say }: Named): Telling =>
    heldDownKn === undefined ? mechanism[direction](at(0)) : keptDown(at(0), heldDownKn, inRow(rest(1)), say),

  collision: ({ depthMm }: FactOf<"collision">, { at, say }: Named): Telling => ({
    architect: {
      body: `${at(0)} and ${at(1)} are drawn in one place, ${say.small(depthMm)} into each other. One of them has to move.`,
    },
    engineer: { body: `${at(0)} and ${at(1)} reach ${say.small(depthMm)} into each other. One of them has to move.` },
    owner: { body: `${at(0)} and ${at(1)} are drawn in the same place. The architect has to move one of them.` },
  }),
};

/** One that would tip, but for what is drawn to hold it down. */
const heldDown = (
  { whenEmpty, towards, outsideMm, weightKn }: FactOf<"tips-over">,
  heldDownKn: number,
  unit: string,
  by: string,
  say: Figures,
): Telling => {
  const empty = whenEmpty ? " when it is empty" : "";
  return {
    architect: {
      body: `${unit} would tip over to the ${towards}${empty}, and is held down with ${say.force(heldDownKn)} at ${by}. What that takes is not judged yet.`,
    },
    engineer: {
      body: `The resultant of ${unit}${whenEmpty ? " without imposed loads" : ""}, ${say.forceExact(weightKn)} unfactored, lies ${say.length(outsideMm)} outside what presses to the ${towards}; held down with ${say.forceExact(heldDownKn)} at ${by} by statics, ± not known. Strength of the hold-down and of what it pulls on is not judged.`,
    },
    owner: {
      body: `${unit} would turn over to the ${towards}${empty}, and is held down by what is drawn there. The engineer has to say how strong that must be.`,
    },
  };
};

/** The last elements of a mark are those that pull, the others what is below. */
function heldApart(names: string[], heldBy = 0): { below: string[]; pulls: string } {
  const below = names.slice(0, names.length - heldBy);
  return { below, pulls: inRow(names.slice(names.length - heldBy)) };
}

/** Less than this prints as nothing, mm. */
const leastShownMm = 5;

const afterTip = (onEdge: boolean, whenEmpty: boolean): string => {
  const tips = onEdge ? "Nothing but balance keeps it from turning over" : "It tips over";
  return `${tips}; forces below are those ${whenEmpty ? "with the imposed loads that hold it down" : "as it begins to turn"}.`;
};

/** One that would be lifted off, but for what is drawn to hold it to what is below. */
const keptDown = (unit: string, heldDownKn: number, by: string, say: Figures): Telling => ({
  architect: {
    body: `${unit} would be lifted off by what it is to hold down, and is held with ${say.force(heldDownKn)} at ${by}. What that takes is not judged yet.`,
  },
  engineer: {
    body: `What ${unit} is to hold down pulls up more than it weighs with all it carries; held with ${say.forceExact(heldDownKn)} at ${by} by statics, ± not known. Strength of the hold-down and of what it pulls on is not judged.`,
  },
  owner: {
    body: `${unit} would be lifted off by what it is to hold down, and is held by what is drawn there. The engineer has to say how strong that must be.`,
  },
});

const mechanism: Record<FactOf<"mechanism">["direction"], (unit: string) => Telling> = {
  falls: (unit) => ({
    architect: { body: `${unit} has nothing under it. Its load has no way to the ground.` },
    engineer: {
      body: `${unit} has no bearing: it falls. Its load does not reach the ground and is left in the residual.`,
    },
    owner: { body: `${unit} has nothing to stand on as it is drawn. The architect has to put something under it.` },
  }),
  turns: (unit) => ({
    architect: { body: `${unit} stands on one line only. It is free to turn about it.` },
    engineer: { body: `The bearings of ${unit} lie on one point or one line. It turns about it: a mechanism.` },
    owner: { body: `${unit} stands on one line only and would turn over. It needs a second line of support.` },
  }),
  lifts: (unit) => ({
    architect: { body: `${unit} is lifted off what it stands on by what it is to hold down. Nothing drawn holds it.` },
    engineer: {
      body: `What ${unit} is to hold down pulls up more than ${unit} weighs with all it carries. It lifts off its bearings, and nothing drawn holds it to what is below.`,
    },
    owner: { body: `${unit} is too light for what it is to hold down. The architect has to hold it to what is below.` },
  }),
  slides: (unit) => ({
    architect: { body: `${unit} stands on posts alone. Nothing drawn holds it sideways.` },
    engineer: {
      body: `${unit} stands on posts alone and nothing drawn holds it sideways. Whether the posts are fixed at their feet is not judged.`,
    },
    owner: { body: `${unit} stands on posts alone. The engineer has to say what keeps it from moving sideways.` },
  }),
};
