import type { Verdict } from "@cornerway/schema";
import { VerdictSymbol } from "../look/VerdictSymbol.tsx";
import type { SheetNote } from "../sheet/contract.ts";
import { everyNote, lookedAmong, looksForAny, type NoteFilter } from "./note-filter.ts";
import "./note-filters.css";

interface NoteFiltersProps {
  notes: readonly SheetNote[];
  /** How many are left by the filter. */
  left: number;
  filter: NoteFilter;
  onFilter: (filter: NoteFilter) => void;
}

/** Looks among the notes: by verdict, by who wrote, by what is settled. Numbers stay with their notes. */
export function NoteFilters({ notes, left, filter, onFilter }: NoteFiltersProps) {
  const among = lookedAmong(notes);
  return (
    <form className="note-filters" aria-label="Look among the notes" onSubmit={(event) => event.preventDefault()}>
      {among.verdicts.map(({ verdict, count }) => (
        <VerdictButton
          key={verdict}
          {...{ verdict, count }}
          pressed={filter.verdict === verdict}
          onPress={() => onFilter({ ...filter, verdict: filter.verdict === verdict ? null : verdict })}
        />
      ))}
      {among.authors.length > 0 && (
        <select
          aria-label="Written on by"
          value={filter.author ?? ""}
          onChange={({ target }) => onFilter({ ...filter, author: target.value === "" ? null : target.value })}
        >
          <option value="">anyone</option>
          {among.authors.map((name) => (
            <option key={name}>{name}</option>
          ))}
        </select>
      )}
      {among.anySettled && (
        <select
          aria-label="Settled"
          value={settledWords(filter.settled)}
          onChange={({ target }) =>
            onFilter({
              ...filter,
              settled: settledOf.find((settled) => settledWords(settled) === target.value) ?? null,
            })
          }
        >
          {settledOf.map((settled) => (
            <option key={settledWords(settled)}>{settledWords(settled)}</option>
          ))}
        </select>
      )}
      {!looksForAny(filter) && (
        <p role="status">
          {left} of {notes.length} notes.{" "}
          <button type="button" className="command command-quiet" onClick={() => onFilter(everyNote)}>
            Show all
          </button>
        </p>
      )}
    </form>
  );
}

const settledOf = [null, false, true] as const;

const settledWords = (settled: boolean | null): string => (settled === null ? "all" : settled ? "settled" : "open");

interface VerdictButtonProps {
  verdict: Verdict;
  count: number;
  pressed: boolean;
  onPress: () => void;
}

const VerdictButton = ({ verdict, count, pressed, onPress }: VerdictButtonProps) => {
  const label = `${verdict}: ${count} ${count === 1 ? "note" : "notes"}`;
  return (
    <button type="button" aria-pressed={pressed} aria-label={label} title={label} onClick={onPress}>
      <VerdictSymbol verdict={verdict} sizePx={14} /> {count}
    </button>
  );
};
