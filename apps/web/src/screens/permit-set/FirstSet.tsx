import type { ReactNode } from "react";
import { FirstActs, SmallUnit, type FirstAct } from "../../drawing/empty/FirstActs.tsx";
import { ink } from "../../look/ink.ts";

/** What a permit set holds, while none was printed. */
export const FirstSet = () => <FirstActs heading="What the set holds" acts={acts} />;

/** A page lying on others, its border and its title block drawn. */
const Page = ({ children }: { children: ReactNode }) => (
  <>
    <path d="M36 14H178V112H36Z" fill={ink.paper} stroke={ink.pencil} strokeWidth="0.75" />
    <path d="M30 8H172V106H30Z" fill={ink.slip} stroke={ink.ink} strokeWidth="1.6" />
    <path d="M30 98H172M132 98V106M152 98V106" stroke={ink.ink} strokeWidth="0.75" />
    {children}
  </>
);

const acts: readonly FirstAct[] = [
  {
    does: "The cover",
    says: "The basis, the cautions, the list of pages; the boxes of the seal and of the authority stay blank.",
    drawing: (
      <Page>
        <path d="M42 24H104M42 31H88" stroke={ink.ink} strokeWidth="2.2" />
        <path d="M42 46H104M42 54H104M42 62H104M42 70H92" stroke={ink.graphite} strokeWidth="0.75" />
        <g fill="none" stroke={ink.graphite} strokeWidth="0.9" strokeDasharray="5 3">
          <path d="M118 22H160V54H118ZM118 62H160V88H118Z" />
        </g>
      </Page>
    ),
  },
  {
    does: "The drawings",
    says: "Plans, sides, details and schedules of the revision, to scale.",
    drawing: (
      <Page>
        <SmallUnit x={44} y={58} wide={84} high={26} />
        <SmallUnit x={66} y={32} wide={84} high={26} />
        <path d="M38 84H164" stroke={ink.ink} strokeWidth="2" />
        <path d="M44 91H128M41 94l6 -6M125 94l6 -6" stroke={ink.graphite} strokeWidth="0.75" />
        <path d="M66 20H150M63 23l6 -6M147 23l6 -6" stroke={ink.graphite} strokeWidth="0.75" />
      </Page>
    ),
  },
  {
    does: "The calculations",
    says: "Each check with its formula, the values put in, the result and the clause.",
    drawing: (
      <Page>
        <path d="M48 8V98" stroke={ink.rust} strokeWidth="0.5" />
        {[26, 50, 74].map((y, at) => (
          <g key={y}>
            <path d={`M58 ${y}H112M58 ${y + 7}H96`} stroke={ink.graphite} strokeWidth="0.75" />
            <path d={`M122 ${y + 4}H162M156 ${y - 2}V${y + 10}`} stroke={ink.ink} strokeWidth="0.75" />
            <path d={`M122 ${y + 1}h${28 - at * 8}v6h-${28 - at * 8}Z`} fill={ink.ink} />
          </g>
        ))}
      </Page>
    ),
  },
  {
    does: "The record",
    says: "Who did what and when, up to the last entry, with the head its pages are held against.",
    drawing: (
      <Page>
        <path d="M50 20C44 34 56 40 50 54S44 74 50 88" fill="none" stroke={ink.ink} strokeWidth="1.1" />
        {[24, 40, 56, 72, 86].map((y) => (
          <g key={y}>
            <circle cx="50" cy={y} r="3" fill={ink.slip} stroke={ink.ink} strokeWidth="1.1" />
            <path d={`M60 ${y}H78M86 ${y}H${y === 56 ? 140 : 160}`} stroke={ink.graphite} strokeWidth="0.75" />
          </g>
        ))}
      </Page>
    ),
  },
];
