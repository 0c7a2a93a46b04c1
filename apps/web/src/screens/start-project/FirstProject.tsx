import { FirstActs, SmallGround, SmallUnit, type FirstAct } from "../../drawing/empty/FirstActs.tsx";
import { ink } from "../../look/ink.ts";

/** How a project comes to be, from its name to its first container. */
export const FirstProject = () => <FirstActs heading="How a project comes to be" acts={acts} />;

const acts: readonly FirstAct[] = [
  {
    does: "It is named",
    says: "By an administrator of this service: its name, its place and whom it is built for.",
    drawing: (
      <>
        <path d="M26 34H174V100H26Z" fill={ink.slip} stroke={ink.ink} strokeWidth="1.6" />
        <path d="M26 66H174M26 82H134M134 66V100M62 66V82M98 66V82" stroke={ink.ink} strokeWidth="0.75" />
        <path d="M36 48H108" stroke={ink.ink} strokeWidth="2.4" />
        <path d="M36 57H88M34 76H54M70 76H88M106 76H124M34 92H112" stroke={ink.graphite} strokeWidth="0.9" />
        <path d="M154 74V92M149 78l5 -4M149 92H159" fill="none" stroke={ink.ink} strokeWidth="1.8" />
      </>
    ),
  },
  {
    does: "Its people are asked in",
    says: "By letter. Whoever draws it does not judge it; the owner confirms who the engineer is.",
    drawing: (
      <>
        {[
          [24, ink.ink],
          [78, ink.mulberry],
          [132, ink.ochre],
        ].map(([x, hand]) => (
          <g key={x} fill="none" stroke={ink.ink}>
            <path
              d={`M${x} 54h44v30h-44Z`}
              transform={`rotate(${Number(x) / 26 - 3} ${x} 70)`}
              fill={ink.slip}
              strokeWidth="1.2"
            />
            <path d={`M${Number(x) + 3} 57l19 15l19 -15`} strokeWidth="0.9" />
            <path d={`M${x} 98h44`} stroke={String(hand)} strokeWidth="2.4" />
          </g>
        ))}
      </>
    ),
  },
  {
    does: "Its first container is set",
    says: "On sheet 1, by the architect. From then on each move tells what it does to the load.",
    drawing: (
      <>
        <path d="M30 14V112M170 14V112" stroke={ink.pencil} strokeWidth="0.7" strokeDasharray="12 3 2 3" />
        <SmallUnit x={30} y={70} wide={140} />
        <SmallUnit x={30} y={28} wide={140} dashed />
        <SmallGround />
      </>
    ),
  },
];
