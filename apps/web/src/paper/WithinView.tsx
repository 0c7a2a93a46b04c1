import { useId } from "react";
import type { ReactNode } from "react";
import { drawnRect, isPlain } from "./lens.ts";
import type { Lens, ViewName } from "./lens.ts";
import type { LaidView } from "./lay-views.ts";

/** One view on the field. Looked into more closely, it is cut off at its own place. */
export function WithinView({
  name,
  view,
  lens,
  children,
}: {
  name: ViewName;
  view: LaidView;
  lens: Lens;
  children: ReactNode;
}) {
  const id = useId();
  const { leftPx, topPx, widthPx, heightPx } = drawnRect(view.rect);
  const cut = !isPlain(lens);
  return (
    <g data-view={name} clipPath={cut ? `url(#${id})` : undefined}>
      {cut ? (
        <clipPath id={id}>
          <rect x={leftPx} y={topPx} width={widthPx} height={heightPx} />
        </clipPath>
      ) : null}
      {children}
    </g>
  );
}
