import { PersonField } from "../../controls/PersonField.tsx";

/** A link that is shown once, with what there is to know about it. */
export function LinkToldOnce({ label, path, children }: { label: string; path: string; children: React.ReactNode }) {
  return (
    <div className="people-told" role="status">
      <p>{children}</p>
      <PersonField label={label}>
        {(bound) => (
          <input
            {...bound}
            readOnly
            value={`${location.origin}${path}`}
            className="digest"
            onFocus={({ target }) => target.select()}
          />
        )}
      </PersonField>
    </div>
  );
}
