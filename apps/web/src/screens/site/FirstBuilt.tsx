import { FirstActs, SmallGround, SmallUnit, type FirstAct } from "../../drawing/empty/FirstActs.tsx";
import { ink } from "../../look/ink.ts";

/** What the site's page is for, while there is nothing to build from. */
export const FirstBuilt = () => <FirstActs heading="How it comes to be built from" acts={acts} />;

const acts: readonly FirstAct[] = [
  {
    does: "The engineer stamps it",
    says: "On sheet 3, or issues it for seal. Until then nothing here is to be made.",
    drawing: (
      <>
        <path d="M30 12H150V112H30Z" fill={ink.slip} stroke={ink.ink} strokeWidth="1.6" />
        <path d="M42 90H104M42 98H88" stroke={ink.graphite} strokeWidth="0.75" />
        <SmallUnit x={44} y={26} wide={76} high={26} />
        <SmallUnit x={44} y={52} wide={76} high={26} />
        <g transform="rotate(-5 142 84)" fill="none" stroke={ink.mulberry}>
          <path d="M108 66H180V104H108Z" strokeWidth="2" />
          <path d="M112 70H176V100H112ZM120 80H166M120 90H150" strokeWidth="1" />
        </g>
      </>
    ),
  },
  {
    does: "Every piece of it is listed",
    says: "Pads, posts, seats, frames and welds, each with its size from the drawing.",
    drawing: (
      <>
        {[26, 48, 70, 92].map((y) => (
          <g key={y} fill="none" stroke={ink.ink}>
            <path d={`M36 ${y - 7}H50V${y + 7}H36Z`} strokeWidth="1.1" />
            <path d={`M62 ${y}H164`} stroke={ink.graphite} strokeWidth="0.75" />
          </g>
        ))}
        <path d="M39 26l4 5l8 -12M39 48l4 5l8 -12" fill="none" stroke={ink.ink} strokeWidth="1.8" />
      </>
    ),
  },
  {
    does: "It is made, looked at, closed",
    says: "Each by whoever has looked at it, with a photo. What stands otherwise is said.",
    drawing: (
      <>
        <SmallUnit x={20} y={30} wide={128} high={38} />
        <path d="M36 68V112H46V68Z" fill={ink.prussian} />
        <path d="M124 68V112H134V68Z" fill={ink.prussian} />
        <SmallGround />
        <g fill={ink.slip} stroke={ink.ink} strokeWidth="1.1">
          <path d="M152 60H190V88H152ZM164 60l3 -5h10l3 5" />
          <circle cx="171" cy="74" r="8.5" fill="none" />
        </g>
      </>
    ),
  },
];
