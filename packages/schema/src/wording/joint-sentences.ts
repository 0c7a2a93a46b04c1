import type { FactOf } from "../mark.ts";
import type { Named, Telling } from "./reader.ts";

/** What seats, ties and locks do where they are drawn. */
export const jointSentences = {
  "seat-without-bearing": ({ lacks }: FactOf<"seat-without-bearing">, { at }: Named): Telling => {
    const what = lacks === "both" ? "a member under it and one over it" : lacks;
    return {
      architect: {
        body: `Seat ${at(0)} lacks ${what}. It bears nothing; it has to lie on a whole rail, fitting or beam and under a rail or fitting.`,
      },
      engineer: { body: `${at(0)} lacks ${what}. It takes no load in the run-down.` },
      owner: { body: `Seat ${at(0)} bears nothing as it is drawn. The architect has to move it.` },
    };
  },

  "seat-packing": ({ gapMm, packingMm, leftMm }: FactOf<"seat-packing">, { at, say }: Named): Telling => {
    const asDrawn = `${at(0)} is ${say.small(packingMm)} thick in a gap of ${say.small(gapMm)}`;
    const off = say.small(Math.abs(leftMm));
    return leftMm > 0
      ? {
          architect: { body: `Seat ${asDrawn}. ${at(1)} stands ${off} clear of it and does not bear there.` },
          engineer: { body: `${asDrawn}: ${at(1)} stands ${off} clear. Taken as packed to bear in the run-down.` },
          owner: { body: `Seat ${at(0)} is too thin to be reached by ${at(1)}. The architect has to change it.` },
        }
      : {
          architect: { body: `Seat ${asDrawn}. ${at(1)} rocks on it, ${off} above its other bearings.` },
          engineer: {
            body: `${asDrawn}: ${off} too thick, so that ${at(1)} rocks on it. Taken as level in the run-down.`,
          },
          owner: { body: `Seat ${at(0)} is too thick, and ${at(1)} would rock on it. The architect has to change it.` },
        };
  },

  "seat-off-rail": ({ offMm, pastMm }: FactOf<"seat-off-rail">, { at, say }: Named): Telling => ({
    architect: {
      body: `The plate of seat ${at(0)} reaches ${say.small(pastMm)} past the edge of what it lies on in ${at(1)}. It needs to be narrower or nearer to the middle.`,
    },
    engineer: {
      body: `The plate of ${at(0)} reaches ${say.small(pastMm)} past the edge of its member of ${at(1)}, its middle ${say.small(offMm)} off the member's. Twisting of the rail and bending of the plate are not judged.`,
    },
    owner: { body: `Seat ${at(0)} reaches past the edge of ${at(1)}. The engineer has to say whether it may.` },
  }),

  "tie-joins": ({ gapMm, meets, upright }: FactOf<"tie-joins">, { at, say }: Named): Telling => {
    const [a, b] = meets;
    const bridged = `bridges ${say.small(gapMm)} from the ${a} of ${at(1)} to the ${b} of ${at(2)}`;
    return {
      architect: {
        body: `Tie ${at(0)} ${bridged}. ${upright ? "How the two then share their load upright" : "What it takes"} is judged with strength.`,
      },
      engineer: {
        body: `${at(0)} ${bridged}, ${upright ? "in plan and upright" : "in plan only"}. ${upright ? "Statics gives it no share of upright load; its force" : "Its force"} is found by the model and held against a stated plate.`,
      },
      owner: { body: `Tie ${at(0)} joins ${at(1)} and ${at(2)}. The engineer has to say how strong it must be.` },
    };
  },

  "tie-cannot-serve": ({ why, awayMm }: FactOf<"tie-cannot-serve">, { at, say }: Named): Telling => {
    const said = whyTie[why](at(1), at(2), say.length(awayMm));
    return {
      architect: { body: `Tie ${at(0)} ${said}. It has to go from fitting or rail to fitting or rail across one gap.` },
      engineer: { body: `${at(0)} ${said}. It is left out of everything here.` },
      owner: { body: `Tie ${at(0)} does not join ${at(1)} and ${at(2)} as it is drawn. The architect has to move it.` },
    };
  },

  "lock-cannot-serve": ({ lockKind, why, offsetMm }: FactOf<"lock-cannot-serve">, { at, say }: Named): Telling => {
    const said = `${whyLock[why](say.small(offsetMm))}`;
    return {
      architect: {
        body: `The ${lockKind} ${at(0)} cannot be put at ${at(1)}: ${said}. ${instead[why]}`,
      },
      engineer: { body: `The ${lockKind} ${at(0)} at ${at(1)} does not serve: ${said}. It holds nothing here.` },
      owner: {
        body: `${at(0)} cannot hold ${at(1)} the way it is drawn. The architect has to draw another connection.`,
      },
    };
  },
};

type WhyTie = FactOf<"tie-cannot-serve">["why"];
const whyTie: Record<WhyTie, (a: string, b: string, away: string) => string> = {
  "out of reach": (a, b, away) => `lies ${away} away from ${a} or ${b}`,
  "not side by side": (a, b) => `is drawn between ${a} and ${b}, which are not side by side`,
  "on sheet": (a, b) => `meets only sheet on ${a} or ${b}, which takes no pull`,
  "in an opening": (a, b) => `ends in an opening of ${a} or ${b}`,
};

type WhyLock = FactOf<"lock-cannot-serve">["why"];
const whyLock: Record<WhyLock, (offset: string) => string> = {
  "apertures cross": () => "the apertures cross",
  "hole centres apart": (offset) => `hole centres are ${offset} apart`,
  "bears off the corner": (offset) => `it bears ${offset} off the corner`,
  "gap to pack": () => "there is a gap to pack",
  "not on a fitting": () => "no fitting is under this one",
  "not on a pad": () => "no pad is under this fitting",
  "on bare ground": () => "there is only bare ground under it",
  "nothing under it": () => "nothing is under this fitting",
  "joined already": () => "this fitting is joined already",
};

const madeInstead = "A made connection would serve.";
const instead: Record<WhyLock, string> = {
  "apertures cross": madeInstead,
  "hole centres apart": madeInstead,
  "bears off the corner": madeInstead,
  "gap to pack": madeInstead,
  "not on a fitting": madeInstead,
  "not on a pad": madeInstead,
  "on bare ground": "A pad is needed first.",
  "nothing under it": "Something has to be under it first.",
  "joined already": "One of the two can go.",
};
