import { Link } from "@tanstack/react-router";
import { sheets } from "../../sheet/contract.ts";

/** The row of seven, as on every other sheet. */
export const SheetRow = ({ projectId }: { projectId: string }) => (
  <nav className="status-sheets" aria-label="Sheets">
    {sheets.map(({ number, name }) => (
      <Link
        key={number}
        to="/projects/$projectId/sheet/$sheet"
        params={{ projectId, sheet: String(number) }}
        aria-current={number === 5 ? "page" : undefined}
      >
        <b>{number}</b> {name}
      </Link>
    ))}
  </nav>
);
