import type { FactOf } from "../mark.ts";
import { inRow, type Figures } from "./figures.ts";
import type { Named, Telling } from "./reader.ts";

/** What added beams stand on, carry and stand in the way of. */
export const beamSentences = {
  "borne-on-beam": (fact: FactOf<"borne-on-beam">, { at, rest, say }: Named): Telling => ({
    architect: {
      body: `${at(0)} stands on ${inRow(rest(1))} at ${places(fact.places)}; ${downThere(fact.forceKn, say)}. What the beam and the rails there take is judged with strength.`,
    },
    engineer: {
      body: `${at(0)} bears on ${inRow(rest(1))} at ${places(fact.places)}, heaviest ${say.forceExact(fact.forceKn)} by statics, ± not known${offAxis(fact, say)}${toPack(fact, say)}. Beam, its twisting and bearing are held against the forces of the model.`,
    },
    owner: { body: `${at(0)} stands on ${inRow(rest(1))}. The engineer has to say how strong that must be.` },
  }),

  "beam-carries": ({ forceKn, spanMm, momentKnm }: FactOf<"beam-carries">, { at, rest, say }: Named): Telling => ({
    architect: {
      body: `${at(0)} spans ${say.length(spanMm)}, holds up ${inRow(rest(1))} and takes ${say.force(forceKn)}. Its size is judged with strength.`,
    },
    engineer: {
      body: `${at(0)} holds ${inRow(rest(1))}: ${say.forceExact(forceKn)} unfactored on a longest span of ${say.length(spanMm)}, ${say.moment(momentKnm)} by statics with spans simply supported, ± not known. Section and bearings are held against the forces of the model; deflection is not judged.`,
    },
    owner: { body: `Beam ${at(0)} holds up ${inRow(rest(1))}. The engineer has to say how strong it must be.` },
  }),

  "beam-holds-nothing": (_fact: FactOf<"beam-holds-nothing">, { at, say }: Named): Telling => ({
    architect: { body: `Nothing comes down on ${at(0)}. It holds nothing up.` },
    engineer: {
      body: `No fitting, rail, post or beam lies within ${say.small(25)} above ${at(0)}. It holds nothing up.`,
    },
    owner: { body: `Beam ${at(0)} holds nothing up. It may not be needed.` },
  }),

  "beam-end-without-support": (
    { supports, pastMm }: FactOf<"beam-end-without-support">,
    { at, say }: Named,
  ): Telling => {
    const run = `runs ${say.length(pastMm)} past its last support`;
    if (supports > 1)
      return {
        architect: { body: `${at(0)} ${run}. What that end takes is not judged yet.` },
        engineer: { body: `${at(0)} ${run}: an overhang. Its moment over the support and its tip are not judged.` },
        owner: {
          body: `Beam ${at(0)} reaches past the last thing that holds it. The engineer has to say what that needs.`,
        },
      };
    const held = supports === 0 ? "has nothing under it" : "rests on one support only";
    return {
      architect: { body: `${at(0)} ${held}. A beam needs two supports.`, detail: "A post with a pad settles it." },
      engineer: { body: `${at(0)} ${held}: no equilibrium. What comes down on it has no way to the ground by it.` },
      owner: { body: `Beam ${at(0)} ${held}. The architect has to put a support under it.` },
    };
  },

  "beam-lifts": ({ upliftKn, tips }: FactOf<"beam-lifts">, { at, say }: Named): Telling => ({
    architect: {
      body: tips
        ? `${at(0)} turns over the support its load hangs past. Nothing drawn holds its other end down.`
        : `${at(0)} lifts off one of its supports under what hangs past another. What it takes is not judged yet.`,
    },
    engineer: {
      body: `Statics lifts ${at(0)} off a support by ${say.forceExact(upliftKn)}. ${tips ? "It turns over the next one: nothing drawn holds it down" : "It is left out of the forces below"}.`,
    },
    owner: {
      body: tips
        ? `Beam ${at(0)} would turn over as it is drawn. It needs a support further out.`
        : `Beam ${at(0)} lifts off one of its supports. The engineer has to say whether it may.`,
    },
  }),

  "beam-through-unit": ({ through }: FactOf<"beam-through-unit">, { at }: Named): Telling =>
    through === "sheet"
      ? {
          architect: { body: `${at(0)} goes through the sheet of ${at(1)}. The hole it needs is not judged yet.` },
          engineer: { body: `${at(0)} passes sheet, floor or roof of ${at(1)}. Trimming round it is not judged.` },
          owner: { body: `Beam ${at(0)} goes through ${at(1)}. The engineer has to say what frame the hole needs.` },
        }
      : {
          architect: {
            body: `${at(0)} is drawn where ${at(1)} has its ${through}. The two cannot share one place.`,
          },
          engineer: { body: `${at(0)} is drawn through the ${through} of ${at(1)}. The member would have to be cut.` },
          owner: {
            body: `Beam ${at(0)} is drawn inside a part of ${at(1)} that holds it up. The architect has to move it.`,
          },
        },
};

/** Less than this prints as 0 kN on the drawing. */
const leastKn = 0.5;

const downThere = (forceKn: number, say: Figures): string =>
  forceKn < leastKn ? "nothing presses there as drawn" : `${say.force(forceKn)} comes down at the heaviest place`;

const places = (count: number): string => (count === 1 ? "one place" : `${count} places`);

const offAxis = ({ offAxisMm }: FactOf<"borne-on-beam">, say: Figures): string =>
  offAxisMm < 1 ? "" : `, up to ${say.small(offAxisMm)} beside its middle`;

const toPack = ({ gapMm }: FactOf<"borne-on-beam">, say: Figures): string =>
  gapMm < 1 ? "" : `, ${say.small(gapMm)} to pack`;
