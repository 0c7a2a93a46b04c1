import { PersonField } from "./PersonField.tsx";

/** What someone writes about a matter, in a few lines. */
export function WordsField({ label, text, onText }: { label: string; text: string; onText: (text: string) => void }) {
  return (
    <PersonField label={label}>
      {(bound) => (
        <textarea {...bound} rows={2} maxLength={2000} value={text} onChange={({ target }) => onText(target.value)} />
      )}
    </PersonField>
  );
}
