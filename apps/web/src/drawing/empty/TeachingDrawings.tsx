import { memo } from "react";
import type { Verdict } from "@cornerway/schema";
import { hatchFill } from "../../look/hatch.ts";
import { ink, verdictInk } from "../../look/ink.ts";
import { VerdictSymbol } from "../../look/VerdictSymbol.tsx";
import { verdictClass, verdictWords } from "../../look/verdict-class.ts";
import { rectPath } from "../px-path.ts";
import { LoadStroke } from "../stroke/LoadStroke.tsx";
import "./teaching-drawings.css";

type Lesson = { verdict: Verdict; says: string; drawing: React.ReactNode };

/** Four small drawings that teach the picture, for a sheet on which nothing stands yet. */
export const TeachingDrawings = memo(function TeachingDrawings() {
  return (
    <ul className="teaching">
      {lessons.map(({ verdict, says, drawing }) => (
        <li key={verdict}>
          <svg viewBox="0 0 160 104" width="160" height="104" aria-hidden="true">
            {drawing}
            <path d="M4 98H156" stroke={ink.ink} strokeWidth="2.4" strokeLinecap="round" />
          </svg>
          <h3 className={verdictClass(verdict)}>
            <VerdictSymbol verdict={verdict} sizePx={15} />
            {verdictWords(verdict)}
          </h3>
          <p>{says}</p>
        </li>
      ))}
    </ul>
  );
});

function Box({ x, y, wide, high = 42 }: { x: number; y: number; wide: number; high?: number }) {
  const fitting = (fx: number, fy: number) => rectPath({ xPx: fx, yPx: fy, widthPx: 6, heightPx: 4 });
  return (
    <>
      <path
        d={rectPath({ xPx: x, yPx: y, widthPx: wide, heightPx: high })}
        fill={ink.paper}
        stroke={ink.ink}
        strokeWidth="1.4"
      />
      <path
        d={fitting(x, y) + fitting(x + wide - 6, y) + fitting(x, y + high - 4) + fitting(x + wide - 6, y + high - 4)}
        fill={ink.ink}
      />
    </>
  );
}

function Down({
  x,
  from,
  to,
  head,
  foot,
  broken,
}: {
  x: number;
  from: number;
  to: number;
  head: number;
  foot: number;
  broken?: string;
}) {
  return (
    <LoadStroke
      id={`lesson-${x}-${from}`}
      run={{ from: { xPx: x, yPx: from }, to: { xPx: x, yPx: to }, widthFromPx: head, widthToPx: foot }}
      breakColour={broken}
    />
  );
}

const Band = ({
  verdict,
  x,
  y,
  wide,
  high = 7,
}: {
  verdict: Verdict;
  x: number;
  y: number;
  wide: number;
  high?: number;
}) => (
  <path
    d={rectPath({ xPx: x, yPx: y, widthPx: wide, heightPx: high })}
    fill={hatchFill(verdict, high > 20 ? "normal" : "small")}
    stroke={verdictInk[verdict]}
    strokeWidth="1"
  />
);

const lessons: readonly Lesson[] = [
  {
    verdict: "works as built",
    says: "Corner over corner: the stroke runs down the posts.",
    drawing: (
      <>
        <Box x={26} y={12} wide={108} />
        <Box x={26} y={55} wide={108} />
        <Down x={30} from={12} to={97} head={1.4} foot={7} />
        <Down x={130} from={12} to={97} head={1.4} foot={7} />
      </>
    ),
  },
  {
    verdict: "works with steel",
    says: "Off the corner: added steel takes it down.",
    drawing: (
      <>
        <Box x={44} y={12} wide={108} />
        <Box x={8} y={55} wide={108} />
        <Band verdict="works with steel" x={100} y={52} wide={36} />
        <Band verdict="works with steel" x={44} y={55} wide={9} high={42} />
        <Down x={48} from={12} to={54} head={1.4} foot={4} />
        <Down x={148} from={12} to={54} head={1.4} foot={3} />
        <Down x={112} from={58} to={97} head={5} foot={7} />
        <Down x={12} from={55} to={97} head={1.4} foot={3} />
      </>
    ),
  },
  {
    verdict: "needs the engineer",
    says: "It crosses a wall that no rule covers: a person says.",
    drawing: (
      <>
        <Box x={54} y={12} wide={44} />
        <Box x={8} y={55} wide={144} />
        <Band verdict="needs the engineer" x={46} y={55} wide={60} />
        <Down x={58} from={12} to={54} head={1.4} foot={5} broken={ink.mulberry} />
        <Down x={94} from={12} to={54} head={1.4} foot={5} broken={ink.mulberry} />
      </>
    ),
  },
  {
    verdict: "does not work",
    says: "Nothing is left beneath it: the stroke stops.",
    drawing: (
      <>
        <Box x={54} y={12} wide={44} />
        <Box x={8} y={55} wide={144} />
        <path d={rectPath({ xPx: 50, yPx: 61, widthPx: 52, heightPx: 36 })} fill={ink.slip} />
        <Band verdict="does not work" x={50} y={61} wide={52} high={36} />
        <Down x={58} from={12} to={54} head={1.4} foot={5} broken={ink.rust} />
        <Down x={94} from={12} to={54} head={1.4} foot={5} broken={ink.rust} />
      </>
    ),
  },
];
