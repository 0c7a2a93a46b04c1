import type { FactOf, Mark, MarkKind } from "../mark.ts";
import { beamSentences } from "./beam-sentences.ts";
import { bearingSentences } from "./bearing-sentences.ts";
import { fabricSentences } from "./fabric-sentences.ts";
import { figuresIn } from "./figures.ts";
import type { UnitSystem } from "./figures.ts";
import { givenSentences } from "./given-sentences.ts";
import { jointSentences } from "./joint-sentences.ts";
import { postSentences } from "./post-sentences.ts";
import { inTags } from "./in-tags.ts";
import type { Named, Reader, Telling } from "./reader.ts";
import { strengthSentences } from "./strength-sentences.ts";
import { standSentences } from "./stand-sentences.ts";
import { verdictHeadings } from "./verdict-heading.ts";

/** A mark as a note: the verdict over it, at most two sentences, and for some readers one grey line. */
export type MarkSentences = { readonly heading: string; readonly body: string; readonly detail?: string };

/**
 * What a mark says to one reader. `names` gives each element's tag by its id; one that has none is called by its id.
 * The engineer's grey line is the basis of the mark and how far it can be trusted. Numbers are written in `units`.
 */
export function markSentences(
  mark: Mark,
  names: ReadonlyMap<string, string>,
  reader: Reader,
  units: UnitSystem = "SI",
): MarkSentences {
  const { body, detail } = tell(mark.fact.kind, mark.fact, namedBy(mark, names, units))[reader];
  const heading = verdictHeadings[mark.verdict];
  if (reader === "engineer") return { heading, body, detail: `${mark.basis} Certainty: ${mark.certainty}.` };
  return detail === undefined ? { heading, body } : { heading, body, detail };
}

type Facts = { readonly [K in MarkKind]: FactOf<K> };

const sentences: { readonly [K in MarkKind]: (fact: Facts[K], named: Named) => Telling } = {
  ...standSentences,
  ...bearingSentences,
  ...fabricSentences,
  ...postSentences,
  ...beamSentences,
  ...jointSentences,
  ...givenSentences,
  ...strengthSentences,
};

const tell = <K extends MarkKind>(kind: K, fact: Facts[K], named: Named): Telling => sentences[kind](fact, named);

function namedBy({ elements }: Mark, names: ReadonlyMap<string, string>, units: UnitSystem): Named {
  const tags = elements.map((id) => names.get(id) ?? id);
  return {
    ...{ at: (index) => tags[index] ?? "", rest: (from) => tags.slice(from), say: figuresIn(units) },
    tagged: (text) => inTags(text, names),
  };
}
