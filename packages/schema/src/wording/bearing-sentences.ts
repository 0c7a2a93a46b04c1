import type { FactOf } from "../mark.ts";
import { inRow, type Figures } from "./figures.ts";
import { cornerWords } from "./part-words.ts";
import type { Named, Telling } from "./reader.ts";

/** What corners and rails come down on. */
export const bearingSentences = {
  "borne-on-rail": (fact: FactOf<"borne-on-rail">, { at, rest, say }: Named): Telling => {
    const heaviestKn = Math.max(...fact.crossings.map(({ forceKn }) => forceKn));
    const furthestMm = Math.max(...fact.crossings.map(({ toNearestFittingMm }) => toNearestFittingMm));
    const pulledKn = -Math.min(...fact.crossings.map(({ forceKn }) => forceKn));
    const heaviest =
      heaviestKn < leastKn && pulledKn > 0
        ? `pulled up with up to ${say.forceExact(pulledKn)}`
        : `heaviest ${say.forceExact(heaviestKn)}`;
    const seats = seatsDrawn(fact);
    const how = fact.turned ? "crosses" : "comes down on the rails of";
    return {
      architect: {
        body: `${at(0)} ${how} ${inRow(rest(1))} away from the corners, up to ${say.length(furthestMm)} from the nearest; ${downThere(heaviestKn, pulledKn, say)}${seats}. What the rails take there has a mark of its own.`,
      },
      engineer: {
        body: `${at(0)} bears on rails of ${inRow(rest(1))} at ${fact.crossings.length} places, up to ${say.length(furthestMm)} from a fitting${toPack(fact, say)}${seats}; ${heaviest} by statics, ± not known. Rail bending, bearing and the sheet below have a mark of their own.`,
      },
      owner: {
        body: `${at(0)} stands on parts of ${inRow(rest(1))} that are not made to carry it. The engineer has to say what they need.`,
      },
    };
  },

  "made-connection": (fact: FactOf<"made-connection">, { at, say }: Named): Telling => {
    const apart = whyWords[fact.why](say.small(fact.offsetMm));
    const { corners = 0, drawn = 0 } = fact;
    if (corners > 0 && drawn >= corners) return settledByMade(apart, at);
    const some = drawn === 0 ? "" : `, drawn at ${drawn} of ${corners}`;
    return {
      architect: {
        body: `${at(0)} stands on the corners of ${at(1)}, ${apart}. A stock lock does not serve; the corners need a made connection${some}.`,
      },
      engineer: {
        body: `${at(0)} on ${at(1)}: ${apart}. No stock lock; a made connection at these fittings${some}, its strength not judged.`,
      },
      owner: {
        body: `${at(0)} and ${at(1)} cannot be joined with the usual locks. The engineer has to say how they are connected.`,
      },
    };
  },

  "corner-on-air": (fact: FactOf<"corner-on-air">, { at, say }: Named): Telling => {
    const corner = cornerWords[fact.fitting];
    const what =
      fact.over === "sheet"
        ? `comes down on the roof sheet of ${at(1)}, which carries nothing`
        : `has nothing under it for ${fact.dropMm < 1000 ? say.small(fact.dropMm) : say.length(fact.dropMm)}`;
    return {
      architect: { body: `At ${corner} ${at(0)} ${what}. A container is made to stand on its four corners.` },
      engineer: {
        body: `At ${corner} ${at(0)} ${what}. Its load is shared by the other bearings by statics; what the frame makes of that is not judged.`,
      },
      owner: {
        body: `One corner of ${at(0)} has nothing firm under it. The engineer has to say whether it may stay so.`,
      },
    };
  },

  "stands-clear": ({ gapMm, places: count }: FactOf<"stands-clear">, { at, rest, say }: Named): Telling => {
    const where = `${say.small(gapMm)} above ${inRow(rest(1))} at ${count === 1 ? "one place" : `${count} places`}`;
    return {
      architect: {
        body: `${at(0)} is drawn up to ${where}. It bears there only once the gap is packed.`,
      },
      engineer: {
        body: `${at(0)} stands up to ${where}: taken as packed. Packing, its steel and its hold sideways are not judged.`,
      },
      owner: { body: `${at(0)} does not touch all it is to stand on. It has to be packed when it is set down.` },
    };
  },

  "off-its-pad": ({ corners, pastMm }: FactOf<"off-its-pad">, { at, rest, say }: Named): Telling => ({
    architect: {
      body: `${at(0)} reaches up to ${say.small(pastMm)} past the edge of its pad at ${places(corners)} (${inRow(rest(1))}). The whole corner fitting needs a pad under it.`,
    },
    engineer: {
      body: `At ${places(corners)} the fitting of ${at(0)} reaches up to ${say.small(pastMm)} past the edge of ${inRow(rest(1))}. Edge bearing of fitting and pad is not judged.`,
    },
    owner: {
      body: `${at(0)} stands partly beside its foundation at ${places(corners)}. The architect has to move or enlarge it.`,
    },
  }),

  "pad-missing": ({ corners }: FactOf<"pad-missing">, { at }: Named): Telling => ({
    architect: { body: `${at(0)} stands on bare ground at ${places(corners)}. It needs pads there.` },
    engineer: {
      body: `${at(0)} stands on bare ground at ${places(corners)}. No pad is drawn; the soil is not judged.`,
    },
    owner: { body: `${at(0)} has no foundation drawn under ${places(corners)}. The architect has to draw one.` },
  }),

  "below-ground": ({ depthMm }: FactOf<"below-ground">, { at, say }: Named): Telling => {
    const below = depthMm < 1000 ? say.small(depthMm) : say.length(depthMm);
    return {
      architect: {
        body: `${at(0)} lies ${below} below the ground level of the site. What the ground does to its walls is not judged.`,
        detail: "Container walls are not made to hold back earth.",
      },
      engineer: {
        body: `The underside of ${at(0)} lies ${below} below ground level. Earth and water against the sheets, uplift and the pit itself are not judged.`,
      },
      owner: {
        body: `${at(0)} lies partly in the ground as it is drawn. The engineer has to say what holds the earth back.`,
      },
    };
  },

  "pad-off-ground": ({ aboveMm }: FactOf<"pad-off-ground">, { at, say }: Named): Telling => {
    const above = aboveMm < 1000 ? say.small(aboveMm) : say.length(aboveMm);
    return {
      architect: {
        body: `Pad ${at(0)} hangs ${above} above the ground. It has to reach down, or stand on something drawn.`,
      },
      engineer: {
        body: `The underside of pad ${at(0)} lies ${above} above the ground. What stands on it has no way down.`,
      },
      owner: {
        body: `The foundation ${at(0)} does not reach the ground as it is drawn. The architect has to change it.`,
      },
    };
  },

  "pad-holds-nothing": (_fact: FactOf<"pad-holds-nothing">, { at }: Named): Telling => ({
    architect: { body: `Nothing stands on pad ${at(0)}. It can go, or something has to come down on it.` },
    engineer: { body: `Nothing stands on pad ${at(0)}.` },
    owner: { body: `Nothing stands on the foundation ${at(0)}. It may not be needed.` },
  }),
};

/** Where a made connection is drawn at every corner that needs one. */
const settledByMade = (apart: string, at: Named["at"]): Telling => ({
  architect: {
    body: `${at(0)} stands on the corners of ${at(1)}, ${apart}. Made connections are drawn there; what they take is not judged yet.`,
  },
  engineer: {
    body: `${at(0)} on ${at(1)}: ${apart}. Made connections are drawn at these fittings, their strength not judged.`,
  },
  owner: {
    body: `${at(0)} and ${at(1)} are held by connections made for them. The engineer has to say how strong they must be.`,
  },
});

/** How many of the places have a seat drawn. */
function seatsDrawn({ crossings }: FactOf<"borne-on-rail">): string {
  const drawn = crossings.filter(({ seatId }) => seatId !== undefined).length;
  if (drawn === 0) return ", no seat drawn there";
  return drawn === crossings.length
    ? ", on the seats drawn there"
    : `, with a seat drawn at ${drawn} of ${crossings.length}`;
}

/** Less than this prints as 0 kN on the drawing: a bearing that lifts as the unit begins to turn. */
const leastKn = 0.5;

function downThere(heaviestKn: number, pulledKn: number, say: Figures): string {
  if (heaviestKn >= leastKn) return `${say.force(heaviestKn)} comes down at the heaviest place`;
  return pulledKn >= leastKn ? `it pulls up there with up to ${say.force(pulledKn)}` : "nothing presses there as drawn";
}

/** What is still to pack: what a seat leaves is told with the seat. */
function toPack({ crossings }: FactOf<"borne-on-rail">, say: Figures): string {
  const open = crossings.filter(({ seatId }) => seatId === undefined);
  const gaps = [...new Set(open.map(({ gapMm }) => say.small(gapMm)))];
  return gaps.length === 0 ? "" : `, with ${inRow(gaps)} to pack`;
}

const whyWords: Record<FactOf<"made-connection">["why"], (offset: string) => string> = {
  "apertures cross": () => "turned across them, so that their apertures cross",
  "hole centres apart": (offset) => `hole centres ${offset} apart`,
  "bears off the corner": (offset) => `${offset} off, bearing beside the post`,
};

const places = (count: number): string => (count === 1 ? "one corner" : `${count} corners`);
