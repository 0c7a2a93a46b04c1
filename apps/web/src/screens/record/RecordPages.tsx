import type { RecordEntry } from "@cornerway/schema";
import { Command } from "../../controls/Command.tsx";

/** Entries on one page of the thread. */
export const pageLength = 100;

export const pagesOf = (entries: readonly RecordEntry[]): number => Math.max(1, Math.ceil(entries.length / pageLength));

/** From page to page of a long thread; nothing where one page holds all. */
export function RecordPages({ page, pages, onPage }: { page: number; pages: number; onPage: (page: number) => void }) {
  if (pages === 1) return null;
  return (
    <nav className="record-pages" aria-label="Pages of the record">
      <Command
        onPress={() => onPage(page - 1)}
        asleepBecause={page === 0 ? "This is where the record begins." : undefined}
      >
        Earlier
      </Command>
      <span className="lettered">
        page {page + 1} of {pages}
      </span>
      <Command
        onPress={() => onPage(page + 1)}
        asleepBecause={page === pages - 1 ? "This is the last entry so far." : undefined}
      >
        Later
      </Command>
    </nav>
  );
}
