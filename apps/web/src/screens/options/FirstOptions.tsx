import { FirstActs, SmallGround, SmallUnit, type FirstAct } from "../../drawing/empty/FirstActs.tsx";
import { ink } from "../../look/ink.ts";

/** What alternatives are for, while there is nothing to be chosen between. */
export const FirstOptions = () => <FirstActs heading="How one is chosen" acts={acts} />;

const acts: readonly FirstAct[] = [
  {
    does: "Say what is to be chosen",
    says: "“Where the upper unit stands”, “How wide the shop front is”.",
    drawing: (
      <>
        <SmallUnit x={30} y={70} wide={140} />
        <SmallUnit x={30} y={28} wide={64} dashed />
        <SmallUnit x={106} y={28} wide={64} dashed />
        <SmallGround />
      </>
    ),
  },
  {
    does: "Lay up to six side by side",
    says: "Each is kept as drawn, with its verdict, its steel and its premium.",
    drawing: (
      <>
        {[4, 72, 140].map((x, at) => (
          <g key={x}>
            <SmallUnit x={x} y={62} wide={56} high={24} />
            <SmallUnit x={x + at * 12} y={38} wide={30} high={24} />
            <path d={`M${x} 87H${x + 56}`} stroke={ink.ink} strokeWidth="2" />
            <path d={`M${x} 98H${x + 40 - at * 8}M${x} 106H${x + 26 + at * 8}`} stroke={ink.graphite} strokeWidth="1" />
          </g>
        ))}
      </>
    ),
  },
  {
    does: "Pick one",
    says: "The record keeps which and why. The others stay where they can be found.",
    drawing: (
      <>
        <SmallUnit x={30} y={70} wide={140} />
        <SmallUnit x={106} y={28} wide={64} />
        <path d="M34 52H90" stroke={ink.pencil} strokeWidth="1" strokeDasharray="6 4" />
        <path d="M178 34l5 7l12 -18" fill="none" stroke={ink.ink} strokeWidth="2" />
        <SmallGround />
      </>
    ),
  },
];
