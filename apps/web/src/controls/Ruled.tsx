import "./ruled.css";

/** What is not here yet, as ruled lines; nothing turns and nothing fills. */
export function Ruled({ label, lines = 6 }: { label: string; lines?: number }) {
  return (
    <div className="ruled" role="status">
      <span className="unseen">{label}</span>
      {Array.from({ length: lines }, (_, at) => (
        <div key={at} className="ruled-line" />
      ))}
    </div>
  );
}
