import type { FactOf } from "../mark.ts";
import type { Named, Telling } from "./reader.ts";

/** What is wrong with what was named or said: sections, findings on members, loads. */
export const givenSentences = {
  "section-unknown": ({ part, name }: FactOf<"section-unknown">, { at }: Named): Telling => ({
    architect: {
      body: `${partOf[part](at(0))} names the section ${name}, which the catalogue does not have. Choose one from the list.`,
    },
    engineer: {
      body: `${partOf[part](at(0))} names the section ${name}, which the catalogue does not have. Its size is read from its name and its strength cannot be checked.`,
    },
    owner: { body: `A steel section of ${at(0)} is not in the catalogue. The architect has to choose another.` },
  }),

  "override-misfits": ({ why, member }: FactOf<"override-misfits">, { at }: Named): Telling => {
    const said = whyMisfit[why](at(0), member ?? "part");
    return {
      architect: { body: `${said}. It changes nothing until it is put right.` },
      engineer: { body: `${said}. It is left out of every check.` },
      owner: { body: `Something found on ${at(0)} is not written down rightly. The engineer has to put it right.` },
    };
  },

  "load-off-unit": ({ surface, pastMm }: FactOf<"load-off-unit">, { at, say }: Named): Telling => ({
    architect: {
      body: `Load ${at(0)} is drawn ${say.length(pastMm)} past the edge of ${at(1)}. It has to lie on its ${surface}.`,
    },
    engineer: {
      body: `${at(0)} reaches ${say.length(pastMm)} past the ${surface} of ${at(1)}. The run-down takes it where it is drawn.`,
    },
    owner: { body: `A load ${at(0)} is drawn beside ${at(1)}, not on it. The architect has to move it.` },
  }),
};

type Part = FactOf<"section-unknown">["part"];
const partOf: Record<Part, (tag: string) => string> = {
  post: (tag) => `Post ${tag}`,
  beam: (tag) => `Beam ${tag}`,
  jamb: (tag) => `The jamb of ${tag}`,
  header: (tag) => `The header of ${tag}`,
  sill: (tag) => `The sill of ${tag}`,
  override: (tag) => `What was found on ${tag}`,
};

type WhyMisfit = FactOf<"override-misfits">["why"];
const whyMisfit: Record<WhyMisfit, (tag: string, member: string) => string> = {
  "names no part": (tag) => `What was found on ${tag} does not say on which part of it`,
  "has no such part": (tag, member) => `What was found names a ${member}, which ${tag} does not have`,
  "said twice": (tag, member) => `Two findings stand against each other on the ${member} of ${tag}`,
};
