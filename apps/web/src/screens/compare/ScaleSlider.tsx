import type { Pair } from "@cornerway/schema";
import { Triangle } from "../../look/Triangle.tsx";

/** The scale bar as the slider between two revisions: at its left end the former stands alone. */
export const ScaleSlider = ({
  letters,
  share,
  onShare,
}: {
  letters: Pair<string>;
  share: number;
  onShare: (share: number) => void;
}) => (
  <div className="scale-slider">
    <label className="caption" htmlFor="laid-over">
      Lay one over the other
    </label>
    <input
      id="laid-over"
      type="range"
      min={0}
      max={100}
      step={5}
      value={Math.round(share * 100)}
      aria-valuetext={
        share === 0
          ? `revision ${letters.before} alone`
          : `revision ${letters.after} over ${letters.before}, ${Math.round(share * 100)} of 100`
      }
      onChange={({ target }) => onShare(Number(target.value) / 100)}
    />
    <p className="scale-ends">
      <Triangle letter={letters.before} sizePx={24} />
      <span>drag, or hold B to see {letters.before} alone</span>
      <Triangle letter={letters.after} sizePx={24} current />
    </p>
  </div>
);
