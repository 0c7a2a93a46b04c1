import { Link } from "@tanstack/react-router";
import { asleepSheets } from "../../room/asleep-sheets.ts";
import { sheets } from "../../sheet/contract.ts";

/** The row of seven, as on every other sheet. */
export function SheetRow({ projectId }: { projectId: string }) {
  return (
    <nav className="status-sheets" aria-label="Sheets">
      {sheets.map(({ number, name }) => {
        const why = asleepSheets.get(number);
        const label = (
          <>
            <b>{number}</b> {name}
          </>
        );
        if (why !== undefined)
          return (
            <span key={number} className="sheet-asleep" title={why}>
              {label}
              <span className="unseen">, {why}</span>
            </span>
          );
        return (
          <Link
            key={number}
            to="/projects/$projectId/sheet/$sheet"
            params={{ projectId, sheet: String(number) }}
            aria-current={number === 5 ? "page" : undefined}
          >
            {label}
          </Link>
        );
      })}
    </nav>
  );
}
