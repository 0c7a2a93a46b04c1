import type { ElevationPost } from "@cornerway/engine";
import { memo } from "react";
import { hatchFill } from "../../look/hatch.ts";
import { dash, ink } from "../../look/ink.ts";
import { DrawnElement } from "../DrawnElement.tsx";
import { rectToPx } from "../paper-to-px.ts";
import { rectPath, type RectPx } from "../px-path.ts";
import { sameDrawn } from "../same-drawn.ts";
import { itemOf, type ElementSetting } from "../element-setting.ts";

/** Added posts: prussian, dashed where a face stands before them. */
export function ElevationPosts({ posts, ...setting }: { posts: readonly ElevationPost[] } & ElementSetting) {
  return posts.map((place) => {
    const rect = rectToPx(setting.view, place);
    return (
      <DrawnElement key={place.post.id} {...itemOf(setting, place.post.id, "post")} rect={rect}>
        <PostShaft rect={rect} behind={place.behind} />
      </DrawnElement>
    );
  });
}

/** The shaft of an added post with its cap and base plates. */
const PostShaft = memo(function PostShaft({ rect, behind }: { rect: RectPx; behind: boolean }) {
  const plate = (yPx: number): RectPx => ({ xPx: rect.xPx - 3, yPx, widthPx: rect.widthPx + 6, heightPx: 2 });
  return (
    <>
      <path
        d={rectPath(rect)}
        fill={behind ? "none" : ink.paper}
        stroke={ink.prussian}
        strokeWidth={behind ? 0.75 : 1.1}
        strokeDasharray={behind ? dash.hidden : undefined}
      />
      {!behind && <path d={rectPath(rect)} fill={hatchFill("works with steel", "small")} />}
      {!behind && (
        <path d={rectPath(plate(rect.yPx)) + rectPath(plate(rect.yPx + rect.heightPx - 2))} fill={ink.prussian} />
      )}
    </>
  );
}, sameDrawn);
