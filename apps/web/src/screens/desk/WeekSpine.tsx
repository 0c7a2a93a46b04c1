import type { ProjectSummary } from "@cornerway/schema";
import { useQueries } from "@tanstack/react-query";
import { useState } from "react";
import { fetchRecordTail } from "../../data/record.ts";
import { weekOf, type WeekDay } from "./week-of.ts";

/** The projects one looks back over; the ones that changed last. */
const mostProjects = 8;
const mostStitches = 12;

/** The binding edge of the desk: a stitch for each entry of this week, over all projects, today marked. */
export function WeekSpine({ projects }: { projects: readonly ProjectSummary[] }) {
  const recent = projects.toSorted((a, b) => ((a.since ?? "") < (b.since ?? "") ? 1 : -1)).slice(0, mostProjects);
  const records = useQueries({
    queries: recent.map(({ id, last }) => ({
      queryKey: ["record-tail", id, last],
      queryFn: () => fetchRecordTail(id, last),
      staleTime: Infinity,
    })),
  });
  const moments = records.flatMap(({ data }) => (data ?? []).map(({ at }) => at));
  const [openedAt] = useState(() => Date.now());
  const days = weekOf(moments, openedAt);
  const entries = days.reduce((sum, { count }) => sum + count, 0);
  return (
    <aside className="week-spine" aria-label="This week">
      <h2 className="caption">This week</h2>
      <ol>
        {days.map((day) => (
          <Day key={day.label} day={day} />
        ))}
      </ol>
      <p>
        marks made <b>{entries}</b>
      </p>
    </aside>
  );
}

function Day({ day: { label, count, today } }: { day: WeekDay }) {
  const shown = Math.min(mostStitches, count);
  const high = 20 + shown * 7;
  const stitches = Array.from({ length: shown }, (_, at) => `M9 ${15 + at * 7}l10 -4`);
  return (
    <li>
      <span className={today ? "week-day week-today" : "week-day"} aria-current={today ? "date" : undefined}>
        {label}
        <span className="unseen">
          , {count} {count === 1 ? "entry" : "entries"}
        </span>
      </span>
      <svg width="28" height={high} aria-hidden="true">
        <path d={`M14 2V${high - 2}`} stroke="var(--ink)" strokeWidth="0.9" />
        <path d={stitches.join("")} stroke="var(--ink)" strokeWidth="1.1" strokeLinecap="round" />
      </svg>
    </li>
  );
}
