import type { FactOf, WallFacts } from "../mark.ts";
import { percent, type Figures } from "./figures.ts";
import { faceWords } from "./part-words.ts";
import type { Named, Telling } from "./reader.ts";

/** What openings take out of a container. */
export const fabricSentences = {
  "member-cut": ({ member, face, cut }: FactOf<"member-cut">, { at }: Named): Telling => ({
    architect: {
      body: `${at(0)} cuts the ${member} of ${at(1)}. A container cut there is no structure any more, only cladding on a new frame.`,
      detail: "Moved clear of it, or made smaller, the opening stays in the sheet.",
    },
    engineer: {
      body: `${at(0)} cuts the ${member} of ${at(1)} on ${faceWords[face]}${cutWhen(cut)}. The unit is lost as structure: what is left is cladding on a new frame.`,
    },
    owner: {
      body: `${at(0)} cuts a part of ${at(1)} that holds it up. The architect has to move it or make it smaller.`,
    },
  }),

  "load-over-opening": ({ forceKn, railCut }: FactOf<"load-over-opening">, { at, say }: Named): Telling =>
    railCut
      ? {
          architect: { body: `${at(0)} is cut where ${at(2)} comes down on ${at(1)}. Nothing is left beneath it.` },
          engineer: {
            body: `${at(0)} takes the top rail of ${at(1)} where ${at(2)} comes down. No way to the ground is left at this place.`,
          },
          owner: {
            body: `${at(0)} takes away what ${at(2)} would stand on. The opening or ${at(2)} has to move.`,
          },
        }
      : {
          architect: {
            body: `${at(0)} is cut where ${at(2)} comes down on ${at(1)} with ${say.force(forceKn)}. The sheet is cut away beneath it, and what is left above the opening has to carry it; its strength has a mark of its own.`,
          },
          engineer: {
            body: `${at(2)} puts ${say.forceExact(forceKn)} on the top rail of ${at(1)} over ${at(0)}, by statics, ± not known. Only the rail and the sheet above the opening carry it to either side; their strength has a mark of its own.`,
          },
          owner: {
            body: `${at(0)} is cut right under the place where ${at(2)} stands. The engineer has to say what carries it there.`,
          },
        },

  "opening-in-sheet": (fact: FactOf<"opening-in-sheet">, { at, say }: Named): Telling => ({
    architect: {
      body: `${at(0)} takes ${say.length(fact.widthMm)} out of ${faceWords[fact.face]} of ${at(1)}. ${architectRule(fact, say)}`,
      detail: "What the rest of the sheet takes is not judged yet.",
    },
    engineer: {
      body: `${at(0)}: ${say.length(fact.widthMm)} of ${faceWords[fact.face]} of ${at(1)}, ${engineerDistances(fact, say)}${cutWhen(fact.cut)}. ${engineerRule(fact, say)}${bareEdges(fact, say)}`,
    },
    owner: {
      body: `${at(0)} is an opening in ${faceWords[fact.face]} of ${at(1)}. The engineer has to say what frame it needs.`,
    },
  }),

  "wall-out": ({ face, widthMm, joins, cut, wall }: FactOf<"wall-out">, { at, say }: Named): Telling => ({
    architect: {
      body: `${at(0)} takes ${say.length(widthMm)} of ${faceWords[face]} of ${at(1)} out${joins ? ", onto the open side of the unit beside it" : ""}. The rails have to span there by themselves; what they take is not judged yet.`,
      ...(wall === undefined ? {} : { detail: architectRule(wall, say) }),
    },
    engineer: {
      body: `${at(0)} takes out ${say.length(widthMm)} of ${faceWords[face]} of ${at(1)}${joins ? ", open onto the unit beside it" : ""}${cutWhen(cut)}. The web between the rails is gone there${wall === undefined ? "" : `, ${engineerWall(wall, say)}`}; rails, posts and header are not judged.`,
    },
    owner: {
      body: `${at(0)} takes ${say.inWords(widthMm)} of wall out of ${at(1)}. The engineer has to say what posts or beams that needs.`,
    },
  }),

  "openings-overlap": (_fact: FactOf<"openings-overlap">, { at }: Named): Telling => ({
    architect: { body: `${at(0)} and ${at(1)} are drawn over each other in ${at(2)}. One of them has to move.` },
    engineer: { body: `${at(0)} and ${at(1)} take the same piece of ${at(2)}. One of them has to move.` },
    owner: { body: `${at(0)} and ${at(1)} are drawn over each other. The architect has to move one of them.` },
  }),

  "opening-off-face": ({ face }: FactOf<"opening-off-face">, { at }: Named): Telling => ({
    architect: { body: `${at(0)} reaches beyond ${faceWords[face]} of ${at(1)}. It has to move or get smaller.` },
    engineer: {
      body: `${at(0)} reaches beyond the outline of ${faceWords[face]} of ${at(1)}. It cannot be cut as drawn.`,
    },
    owner: { body: `${at(0)} does not fit on ${at(1)}. The architect has to move it or make it smaller.` },
  }),

  "hatch-blocked": ({ by, clearMm }: FactOf<"hatch-blocked">, { at, say }: Named): Telling =>
    clearMm === 0
      ? {
          architect: { body: `${at(0)} gives onto the ${by} of ${at(2)}, which is not cut there. It leads nowhere.` },
          engineer: {
            body: `${at(0)} in ${at(1)} meets the uncut ${by} of ${at(2)}. A second opening is missing there.`,
          },
          owner: {
            body: `${at(0)} leads nowhere as it is drawn. The architect has to cut ${at(2)} there or leave it out.`,
          },
        }
      : {
          architect: {
            body: `${at(0)} and the opening in the ${by} of ${at(2)} are not in line. Only ${say.length(clearMm)} of clear width is left between them.`,
          },
          engineer: {
            body: `${at(0)} in ${at(1)} and the opening in the ${by} of ${at(2)} lap by ${say.length(clearMm)} at the narrowest. What is left of either sheet is not judged.`,
          },
          owner: {
            body: `${at(0)} and the opening it meets in ${at(2)} are not in line. The architect has to move one of them.`,
          },
        },

  "cross-members-cut": ({ count, cut }: FactOf<"cross-members-cut">, { at, say }: Named): Telling => ({
    architect: {
      body: `${at(0)} cuts ${members(count)} in the floor of ${at(1)}. ${trimming(count)}`,
    },
    engineer: {
      body: `${at(0)} cuts ${members(count)} of ${at(1)}, taken at ${say.small(300)} centres${cutWhen(cut)}. Trimmers and the hold of the bottom rail are not judged.`,
    },
    owner: { body: `${at(0)} is a hole in the floor of ${at(1)}. The engineer has to say what frame it needs.` },
  }),
};

/** What is cut in the yard is cut before the unit is lifted; what is cut later is cut with its load on it. */
function cutWhen(cut: FactOf<"member-cut">["cut"]): string {
  switch (cut) {
    case undefined:
      return "";
    case "in the yard":
      return ", cut in the yard and lifted so";
    case "after placing":
      return ", cut after placing, under the load then on it";
    case "after shoring":
      return ", cut after shoring";
  }
}

const members = (count: number): string =>
  count === 0 ? "no cross member" : count === 1 ? "one cross member" : `about ${count} cross members`;

const trimming = (count: number): string =>
  count === 0
    ? "Their places are taken, not measured; measure them before it is cut."
    : "The hole needs trimming, which is not judged yet.";

function architectRule({ wallRule, cutShare, shortestPierMm }: WallFacts, say: Figures): string {
  switch (wallRule) {
    case "not a wall":
      return "It stays clear of posts, rails and headers.";
    case "keeps both":
      return `Openings take ${percent(cutShare)} of that wall, and every piece left is long enough to count.`;
    case "more than half cut":
      return `Openings take ${percent(cutShare)} of that wall, more than half.`;
    case "pier under 4 ft":
      return `Openings take ${percent(cutShare)} of that wall, and ${shortPiece(shortestPierMm, say)} as wall.`;
    case "more than half cut and pier under 4 ft":
      return `Openings take ${percent(cutShare)} of that wall, more than half, and ${shortPiece(shortestPierMm, say)}.`;
  }
}

const shortPiece = (pierMm: number, say: Figures): string =>
  pierMm === 0 ? "nothing is left long enough to count" : `a piece of ${say.length(pierMm)} is too short to count`;

const engineerRule = (wall: WallFacts, say: Figures): string =>
  wall.wallRule === "not a wall"
    ? "Clear of posts, rails and headers; strength has a mark of its own."
    : `${engineerWall(wall, say)}; strength has a mark of its own.`;

const bareEdges = ({ bareMm }: FactOf<"opening-in-sheet">, say: Figures): string =>
  bareMm === undefined
    ? ""
    : ` Not framed: over ${say.length(bareMm)} beside each upright edge the sheet is taken to carry nothing; a jamb would hold it.`;

const engineerWall = ({ cutShare, shortestPierMm }: WallFacts, say: Figures): string =>
  `${percent(cutShare)} of the wall cut (limit 50 %), shortest piece ${say.length(shortestPierMm)} (${say.length(1219.2)} counts), from memory`;

const engineerDistances = ({ face, toFrontPostMm, toDoorPostMm }: FactOf<"opening-in-sheet">, say: Figures): string =>
  face === "front" || face === "door"
    ? `${say.length(toFrontPostMm)} from the right post, ${say.length(toDoorPostMm)} from the left`
    : `${say.length(toFrontPostMm)} from the front end's members, ${say.length(toDoorPostMm)} from the door end's`;
