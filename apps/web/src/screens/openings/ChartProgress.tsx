import { Command } from "../../controls/Command.tsx";
import type { LiveChart } from "../../worker/use-opening-chart.ts";

/** How far the chart is drawn, and how to stop it or begin again. */
export function ChartProgress({ live: { so, stop, again } }: { live: LiveChart }) {
  if (so === null) return null;
  if (so.state === "drawing")
    return (
      <span className="notes-remark">
        {so.of === 0 ? "the building is solved " : `${so.done}/${so.of} places `}
        <Command quiet onPress={stop}>
          Stop
        </Command>
      </span>
    );
  if (so.state === "drawn") return <span className="notes-remark">{`${so.chart?.solved ?? 0} solved`}</span>;
  return (
    <span className="notes-remark">
      {`stopped at ${so.done}/${so.of} `}
      <Command quiet onPress={again}>
        Draw it again
      </Command>
    </span>
  );
}
