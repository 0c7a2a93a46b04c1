import type { ChartFace } from "@cornerway/engine";
import type { Scheme } from "@cornerway/schema";
import { Hexagon } from "../../look/Hexagon.tsx";
import { chartFaces, openingsOn, type ChartChoice } from "./chart-choice.ts";

type WallStripProps = {
  readonly scheme: Scheme;
  readonly choice: ChartChoice;
  readonly onChoose: (choice: ChartChoice) => void;
};

const faceWord: Readonly<Record<ChartFace, string>> = { left: "Left", right: "Right", front: "Front" };

/** The strip of sheet 2: which container, which of its walls, which opening in it. */
export function WallStrip({ scheme, choice, onChoose }: WallStripProps) {
  const { containerId, face, openingId } = choice;
  return (
    <nav className="wall-strip" aria-label="Walls and openings">
      <h2 className="caption" id="strip-unit">
        Unit
      </h2>
      <select
        aria-labelledby="strip-unit"
        value={containerId}
        onChange={({ target }) => onChoose({ containerId: target.value, face, openingId: null })}
      >
        {scheme.containers.map(({ id, tag }) => (
          <option key={id} value={id}>
            {tag}
          </option>
        ))}
      </select>
      <h2 className="caption">Walls</h2>
      {chartFaces.map((wall) => (
        <button
          type="button"
          key={wall}
          className="strip-choice"
          aria-pressed={wall === face}
          onClick={() =>
            onChoose({ containerId, face: wall, openingId: openingsOn(scheme, containerId, wall)[0]?.id ?? null })
          }
        >
          {faceWord[wall]}
        </button>
      ))}
      <h2 className="caption">Openings</h2>
      {openingsOn(scheme, containerId, face).map(({ id, tag }) => (
        <button
          type="button"
          key={id}
          className="strip-choice"
          aria-pressed={id === openingId}
          onClick={() => onChoose({ containerId, face, openingId: id })}
        >
          <svg width="44" height="26" role="img" aria-label={tag}>
            <Hexagon tag={tag} xPx={22} yPx={13} />
          </svg>
        </button>
      ))}
      <button
        type="button"
        className="strip-choice"
        aria-pressed={openingId === null}
        onClick={() => onChoose({ containerId, face, openingId: null })}
      >
        New
      </button>
    </nav>
  );
}
