import type { FactOf } from "../mark.ts";
import type { JudgedPart } from "../strength-fact.ts";
import { inRow, percent } from "./figures.ts";
import type { Named, Telling } from "./reader.ts";

/** What numbers say of strength: beyond it, within it, open, pulled or pushed with nothing to hold. */
export const strengthSentences = {
  overstressed: ({ parts, more }: FactOf<"overstressed">, { at, say, tagged }: Named): Telling => {
    const [worst, ...next] = parts;
    return {
      architect: {
        body: `${at(0)} is loaded beyond its strength, whatever is assumed: ${usedOf(worst)}.${others(parts.length - 1 + more, "are beyond it too")}${padFor(parts, say)}`,
      },
      engineer: {
        body: `${at(0)} is over under every assumption: ${tagged(inRow([worst].flatMap(told)))}.${tagged(further("Over too", next, more))}${padFor(parts, say)}`,
      },
      owner: {
        body: `Parts of ${at(0)} are too weak for what is drawn. It needs steel, or less load, before it can stand.`,
      },
    };
  },

  "strength-open": (fact: FactOf<"strength-open">, { at, say, tagged }: Named): Telling => {
    const { parts, more } = fact;
    const causes = causesOf(fact);
    const count = parts.length + more;
    const [worst, ...next] = parts;
    const first = worst === undefined ? "" : ` First: the ${worst.part}, ${worst.why}.`;
    return {
      architect: {
        body: `Numbers alone do not settle the strength of ${at(0)}.${first === "" ? ` What is open: ${inRow(causes)}.` : first}${padFor(parts, say)}`,
      },
      engineer: {
        body: `${at(0)}: ${tagged(inRow([...(worst === undefined ? [] : [`${judged(worst)}, ${worst.why}`]), ...causes]))}.${tagged(further("Open too", next, more))}${padFor(parts, say)}`,
      },
      owner: {
        body: `The strength of ${at(0)} is for the engineer to say${count > 1 ? ", in several places" : ""}. Nothing is wrong with it yet.`,
      },
    };
  },

  "strength-adequate": ({ under, governing, parts }: FactOf<"strength-adequate">, { at, tagged }: Named): Telling => ({
    architect: {
      body: `Every part of ${at(0)} that is checked stays within its strength under ${under}; the most used is the ${governing.part} at ${percent(governing.utilisation ?? 0)}.`,
    },
    engineer: {
      body: `${at(0)}: ${parts} parts within their strengths under ${under}, over the whole envelope. Governing: ${tagged(judged(governing))}.`,
    },
    owner: {
      body: `The parts of ${at(0)} that were checked are strong enough for ${under === "all loads" ? "the loads of this place" : "what it carries; wind and earthquakes are not looked at yet"}.`,
    },
  }),

  uplift: ({ places, forceKn, run }: FactOf<"uplift">, { at, say, tagged }: Named): Telling => ({
    architect: {
      body: `${at(0)} is lifted at ${inRow(places)}, and nothing drawn there holds it down. A hold-down or lock for ${say.force(forceKn)} at each would do.`,
    },
    engineer: {
      body: `${at(0)} pulls at ${inRow(places)}, up to ${say.forceExact(forceKn)} factored, on bearings that only press. Governing run ${tagged(run)}; other parts are judged as if it were held there.`,
    },
    owner: { body: `${at(0)} could be lifted off what it stands on. It has to be held down.` },
  }),

  slides: ({ places, forceKn, frictionKn, run }: FactOf<"slides">, { at, say, tagged }: Named): Telling => ({
    architect: {
      body: `${at(0)} is pushed sideways with ${say.force(forceKn)}, more than friction holds. Locks or made connections at ${inRow(places)} would do.`,
    },
    engineer: {
      body: `${at(0)} takes ${say.forceExact(forceKn)} sideways, factored, against ${say.forceExact(frictionKn)} of friction, with no connection drawn at ${inRow(places)}. Governing run ${tagged(run)}; locks at play.`,
    },
    owner: { body: `${at(0)} could be pushed off its place. It has to be fastened.` },
  }),

  "no-lateral-wall": ({ way, walls }: FactOf<"no-lateral-wall">, { at }: Named): Telling => ({
    architect: {
      body: `Nothing that may count holds ${at(0)} against ${way} push, nor any other unit of its storey. ${wouldDo[way]}`,
    },
    engineer: {
      body: `${at(0)}, ${way}: no counted element in its storey${walls.length === 0 ? "" : ": "}${walls.map(({ face, fails }) => `${faceNames[face]} misses: ${inRow(fails)}`).join("; ")}. ${wouldDo[way]}`,
    },
    owner: { body: `Wind or an earthquake could lean ${at(0)} over. It needs a wall or a frame that holds it.` },
  }),
};

/** What is open besides the parts; of the wind's limits each that does not hold by name. */
const causesOf = ({ others: causes, windLimits = [] }: FactOf<"strength-open">): string[] =>
  causes.map((cause) =>
    cause === "wind outside its limits" && windLimits.length > 0 ? `${cause} (${windLimits.join(", ")})` : cause,
  );

const wouldDo = {
  lengthwise: "A side with 4 ft of whole sheet and its openings framed would do, or a portal.",
  crosswise: "Doors welded shut would do, or a whole blind end, or a portal in either end.",
} as const;

const faceNames = { left: "left side", right: "right side", front: "blind end", door: "door end" } as const;

const usedOf = (part: JudgedPart | undefined): string =>
  part === undefined
    ? ""
    : part.utilisation === null
      ? `no strength can be stated for the ${part.part}`
      : `the ${part.part} takes ${percent(part.utilisation)} of it`;

/** Part, place, check, utilisation and run, with what the envelope does to it. */
function judged({ part, place, check, utilisation, ifProved, upperBound, run, envelope }: JudgedPart): string {
  const size = utilisation === null ? "not stated" : utilisation.toFixed(2);
  const proved = ifProved === undefined ? "" : `, ${ifProved.toFixed(2)} if proved at 343 MPa`;
  const upper = upperBound === undefined ? "" : `, ${upperBound.toFixed(2)} of its upper bound`;
  const span =
    envelope === undefined || envelope.leastIn === envelope.mostIn
      ? ""
      : `, ${envelope.least.toFixed(2)} with ${envelope.leastIn} to ${envelope.most?.toFixed(2) ?? "not stated"} with ${envelope.mostIn}`;
  const stock = part === "lock" ? ", a transport fitting and no code-listed connector" : "";
  return `${part} ${place}, ${check} ${size}${stock}${proved}${upper} in ${run}${span}`;
}

const told = (part: JudgedPart | undefined): string[] => (part === undefined ? [] : [judged(part)]);

/** The pad that would do for the worst of these that stand on one too small. */
function padFor(parts: readonly Pick<JudgedPart, "wouldDo">[], say: Named["say"]): string {
  const pad = parts.find(({ wouldDo: size }) => size !== undefined)?.wouldDo;
  if (pad === undefined) return "";
  const side = say.length(pad.sideMm);
  return ` A pad ${side} by ${side}, ${say.length(pad.depthMm)} deep, would do.`;
}

/** The next parts by their size alone: each opens to its working. */
function further(what: string, next: readonly JudgedPart[], more: number): string {
  const sizes = next.map(
    ({ part, place, utilisation }) => `${part} ${place} ${utilisation?.toFixed(2) ?? "not stated"}`,
  );
  const rest = more === 0 ? [] : [`${more} more`];
  return next.length + more === 0 ? "" : ` ${what}: ${inRow([...sizes, ...rest])}.`;
}

const others = (count: number, what: string): string => (count === 0 ? "" : ` Others ${what}: ${count} more.`);
