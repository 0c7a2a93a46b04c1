import type { RecordEntry } from "@cornerway/schema";
import { PersonField } from "../../controls/PersonField.tsx";
import { matters, type RecordFilter } from "./filter-entries.ts";

type RecordFiltersProps = {
  entries: readonly RecordEntry[];
  filter: RecordFilter;
  onFilter: (filter: RecordFilter) => void;
};

/** What one looks for in the record: whose acts, of which matter, on which element. */
export function RecordFilters({ entries, filter, onFilter }: RecordFiltersProps) {
  const people = new Map(entries.map(({ actor }) => [actor.id, actor.name]));
  return (
    <form className="record-filters" aria-label="Look for" onSubmit={(event) => event.preventDefault()}>
      <PersonField label="By">
        {(bound) => (
          <select
            {...bound}
            value={filter.personId ?? ""}
            onChange={({ target }) => onFilter({ ...filter, personId: target.value === "" ? null : target.value })}
          >
            <option value="">anyone</option>
            {[...people].map(([id, name]) => (
              <option key={id} value={id}>
                {name}
              </option>
            ))}
          </select>
        )}
      </PersonField>
      <PersonField label="About">
        {(bound) => (
          <select
            {...bound}
            value={filter.matter}
            onChange={({ target }) =>
              onFilter({ ...filter, matter: matters.find((each) => each === target.value) ?? "everything" })
            }
          >
            {matters.map((matter) => (
              <option key={matter}>{matter}</option>
            ))}
          </select>
        )}
      </PersonField>
      <PersonField label="On, such as F1">
        {(bound) => (
          <input
            {...bound}
            value={filter.element}
            maxLength={12}
            onChange={({ target }) => onFilter({ ...filter, element: target.value })}
          />
        )}
      </PersonField>
    </form>
  );
}
