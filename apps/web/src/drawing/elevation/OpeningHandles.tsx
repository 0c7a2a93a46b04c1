import { ink } from "../../look/ink.ts";
import { handleName, handles } from "../opening-handles.ts";
import { px, type RectPx } from "../px-path.ts";

const sizePx = 6;
const targetPx = 14;

/** Eight small squares on the edges of a chosen opening; each draws the edges it stands on. `along` −1 where u runs left. */
export function OpeningHandles({ rect, along }: { rect: RectPx; along: 1 | -1 }) {
  return (
    <g className="opening-handles" aria-hidden="true">
      {handles.map((handle) => {
        const x = rect.xPx + (rect.widthPx * (1 + handle.along * along)) / 2;
        const y = rect.yPx + (rect.heightPx * (1 - handle.up)) / 2;
        return (
          <g
            key={handleName(handle)}
            data-handle={handleName(handle)}
            className={handleClass(handle.along * along, handle.up)}
          >
            <rect
              x={px(x - targetPx / 2)}
              y={px(y - targetPx / 2)}
              width={targetPx}
              height={targetPx}
              fill="transparent"
            />
            <rect
              x={px(x - sizePx / 2)}
              y={px(y - sizePx / 2)}
              width={sizePx}
              height={sizePx}
              fill={ink.slip}
              stroke={ink.ink}
              strokeWidth={1}
            />
          </g>
        );
      })}
    </g>
  );
}

function handleClass(right: number, up: number): string {
  if (up === 0) return "handle-across";
  if (right === 0) return "handle-up";
  return right === up ? "handle-rising" : "handle-falling";
}
