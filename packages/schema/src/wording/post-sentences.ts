import type { FactOf } from "../mark.ts";
import { inRow } from "./figures.ts";
import type { Named, Telling } from "./reader.ts";

/** What added posts stand on, hold and stand in the way of. */
export const postSentences = {
  "post-without-ground": ({ under }: FactOf<"post-without-ground">, { at, rest }: Named): Telling => {
    const on = standsOn[under](rest(1)[0]);
    return {
      architect: {
        body: `${at(0)} stands on ${on}. A post needs its own way to the ground.`,
        detail: "A pad under it settles it.",
      },
      engineer: { body: `${at(0)} stands on ${on}. It has no way of its own to the ground.` },
      owner: { body: `Post ${at(0)} has no foundation of its own. The architect has to put one under it.` },
    };
  },

  "post-holds-nothing": (_fact: FactOf<"post-holds-nothing">, { at, say }: Named): Telling => ({
    architect: { body: `The head of ${at(0)} meets nothing. It holds nothing up.` },
    engineer: {
      body: `No fitting, rail, post or beam lies within ${say.small(25)} above the head of ${at(0)}. It holds nothing up.`,
    },
    owner: { body: `Post ${at(0)} holds nothing up. It may not be needed.` },
  }),

  "post-carries": ({ forceKn }: FactOf<"post-carries">, { at, rest, say }: Named): Telling => ({
    architect: {
      body:
        forceKn < leastKn
          ? `${at(0)} holds up ${inRow(rest(1))}. Statics alone gives it no load; what it takes depends on how stiff the parts are, and is judged with strength.`
          : `${at(0)} holds up ${inRow(rest(1))} and takes ${say.force(forceKn)} to the ground. Its size and its pad are judged with strength.`,
    },
    engineer: {
      body:
        forceKn < leastKn
          ? `${at(0)} holds ${inRow(rest(1))}: statics gives it no share; what stiffness gives it is found by the model, and section, head, foot and pad are held against it.`
          : `${at(0)} holds ${inRow(rest(1))}: ${say.forceExact(forceKn)} unfactored, by statics, ± not known. Section, head, foot and pad are held against the forces of the model.`,
    },
    owner: { body: `Post ${at(0)} holds up ${inRow(rest(1))}. The engineer has to say how strong it must be.` },
  }),

  "post-off-centre": ({ end, offsetMm, momentKnm }: FactOf<"post-off-centre">, { at, rest, say }: Named): Telling => {
    const off = say.small(offsetMm);
    const head = end === "head";
    return {
      architect: {
        body: head
          ? `${at(0)} stands ${off} off the middle of what it holds, ${inRow(rest(1))}. What that bends is not judged.`
          : `${at(0)} stands ${off} off the middle of its pad ${at(1)}. What that does to the pad is not judged.`,
      },
      engineer: {
        body: `${head ? `The load of ${inRow(rest(1))} comes down ${off} off the axis of ${at(0)}` : `${at(0)} stands ${off} off the centre of ${at(1)}`}: ${say.moment(momentKnm)}, not carried in the run-down. ${head ? "Bending of the post" : "Tilting of the pad and the soil under it"} is not judged.`,
      },
      owner: {
        body: head
          ? `Post ${at(0)} does not stand straight under what it holds. The engineer has to say whether it may.`
          : `Post ${at(0)} does not stand in the middle of its foundation. The engineer has to say whether it may.`,
      },
    };
  },

  "post-through-opening": (_fact: FactOf<"post-through-opening">, { at }: Named): Telling => ({
    architect: {
      body: `${at(0)} stands in the clear width of ${at(1)}. One of them has to move, or the opening is divided.`,
    },
    engineer: { body: `${at(0)} stands in the clear width of ${at(1)} in ${at(2)}.` },
    owner: { body: `Post ${at(0)} stands in the way of ${at(1)}. The architect has to move one of them.` },
  }),

  "post-through-unit": ({ through }: FactOf<"post-through-unit">, { at }: Named): Telling => {
    const sheet = through === "roof" || through === "floor";
    return {
      architect: {
        body: sheet
          ? `${at(0)} goes through the ${through} of ${at(1)}. The hole it needs is not judged yet.`
          : `${at(0)} is drawn where ${at(1)} has its ${through}. The two cannot share one place.`,
      },
      engineer: {
        body: sheet
          ? `${at(0)} passes the ${through} of ${at(1)}. Trimming round it is not judged.`
          : `${at(0)} is drawn through the ${through} of ${at(1)}. The member would have to be cut.`,
      },
      owner: {
        body: sheet
          ? `Post ${at(0)} goes through the ${through} of ${at(1)}. The engineer has to say what frame the hole needs.`
          : `Post ${at(0)} is drawn inside a part of ${at(1)} that holds it up. The architect has to move it.`,
      },
    };
  },
};

/** Below this, kN, statics has found nothing to give: to a rail's post it gives only what comes down on that rail. */
const leastKn = 0.05;

const standsOn: Record<FactOf<"post-without-ground">["under"], (unit: string | undefined) => string> = {
  air: () => "nothing",
  rail: (unit) => (unit === undefined ? "a rail" : `a rail of ${unit}`),
  sheet: (unit) => (unit === undefined ? "sheet" : `sheet or floor of ${unit}`),
  ground: () => "bare ground without a pad",
};
