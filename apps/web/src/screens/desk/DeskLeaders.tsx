import { useLayoutEffect, useRef, useState } from "react";
import { px } from "../../drawing/px-path.ts";

type Leader = { id: string; d: string; x: number; y: number };

/** From each thing that waits down to the house it concerns: straight, then one bend, a dot where it ends. */
export function DeskLeaders({ drawn }: { drawn: unknown }) {
  const layer = useRef<SVGSVGElement>(null);
  const [leaders, setLeaders] = useState<readonly Leader[]>([]);
  useLayoutEffect(() => {
    const plot = layer.current?.parentElement;
    if (plot === null || plot === undefined) return undefined;
    const measure = () =>
      setLeaders((before) => {
        const next = leadersIn(plot);
        return JSON.stringify(next) === JSON.stringify(before) ? before : next;
      });
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(plot);
    // A house that comes after the others leaves the plot as large as it was.
    const built = new MutationObserver(measure);
    built.observe(plot, { childList: true, subtree: true });
    return () => {
      watch.disconnect();
      built.disconnect();
    };
  }, [drawn]);
  return (
    <svg className="desk-leaders" ref={layer} aria-hidden="true">
      {leaders.map(({ id, d, x, y }) => (
        <g key={id} fill="none">
          <path d={d} stroke="var(--ink)" strokeWidth="0.8" />
          <circle cx={x} cy={y} r="2.8" fill="var(--ink)" />
        </g>
      ))}
    </svg>
  );
}

/** A leader bends where the street begins; the words of the thing above stand clear of it. */
function leadersIn(plot: HTMLElement): Leader[] {
  const whole = plot.getBoundingClientRect();
  const street = plot.querySelector(".desk-street")?.getBoundingClientRect();
  if (street === undefined) return [];
  return [...plot.querySelectorAll<HTMLElement>("[data-waits]")].flatMap((from) => {
    const id = from.dataset["waits"] ?? "";
    const house = plot.querySelector(`[data-house="${CSS.escape(id)}"]`)?.getBoundingClientRect();
    if (house === undefined || house.width === 0) return [];
    const box = from.getBoundingClientRect();
    const start = { x: box.left + box.width / 2 - whole.left, y: box.bottom - whole.top };
    const end = { x: house.left + house.width / 2 - whole.left, y: house.top - whole.top + 8 };
    const bend = Math.max(start.y, Math.min(street.top - whole.top + 4, end.y - 30));
    const d = `M${px(start.x)} ${px(start.y)}V${px(bend)}L${px(end.x)} ${px(end.y)}`;
    return [{ id, d, x: px(end.x), y: px(end.y) }];
  });
}
