import { FirstActs, SmallGround, SmallUnit, type FirstAct } from "../../drawing/empty/FirstActs.tsx";
import { ink } from "../../look/ink.ts";

/** What a survey is for, while no container is in it. */
export const FirstSurvey = () => <FirstActs heading="What is done with each container" acts={acts} />;

const acts: readonly FirstAct[] = [
  {
    does: "Read its door",
    says: "Four letters, six figures and one that checks them: that is its number.",
    drawing: (
      <>
        <path d="M52 20H148V112H52Z" fill={ink.paper} stroke={ink.ink} strokeWidth="1.6" />
        <path d="M100 20V112M62 26V106M138 26V106M78 26V106M122 26V106" stroke={ink.ink} strokeWidth="0.9" />
        <path d="M104 34H136M104 41H128" stroke={ink.ink} strokeWidth="2.4" />
        <path d="M150 38H176" stroke={ink.graphite} strokeWidth="0.75" />
        <circle cx="148" cy="38" r="2.4" fill={ink.ink} />
        <SmallGround />
      </>
    ),
  },
  {
    does: "Note the plate",
    says: "What it was made to carry and when it was last looked at, before it is painted over.",
    drawing: (
      <>
        <path d="M46 22H154V106H46Z" fill={ink.slip} stroke={ink.ink} strokeWidth="1.6" />
        <path d="M58 36H142" stroke={ink.ink} strokeWidth="2.2" />
        <path d="M58 50H142M58 62H142M58 74H142M58 86H112" stroke={ink.graphite} strokeWidth="0.75" />
        <path d="M96 46V90" stroke={ink.graphite} strokeWidth="0.5" />
        {[50, 150].flatMap((cx) => [26, 102].map((cy) => <circle key={`${cx} ${cy}`} {...{ cx, cy }} r="1.8" />))}
      </>
    ),
  },
  {
    does: "Measure what is left of it",
    says: "Dents, rust and the thickness of its steel, each held against its limit.",
    drawing: (
      <>
        <SmallUnit x={16} y={44} wide={168} high={68} />
        <path d="M70 66q13 16 2 32" fill="none" stroke={ink.rust} strokeWidth="1.4" />
        <path d="M66 36V58M84 36V58M66 40H84" stroke={ink.graphite} strokeWidth="0.75" />
        <path d="M63 43l6 -6M81 43l6 -6" stroke={ink.graphite} strokeWidth="1.1" />
        <SmallGround />
      </>
    ),
  },
  {
    does: "Give it its place",
    says: "The architect assigns it. The next revision is checked with what was measured.",
    drawing: (
      <>
        <SmallUnit x={34} y={28} wide={132} dashed />
        <SmallUnit x={34} y={70} wide={132} />
        <path d="M100 6V22M95 16l5 7l5 -7" fill="none" stroke={ink.ink} strokeWidth="1.1" />
        <SmallGround />
      </>
    ),
  },
];
