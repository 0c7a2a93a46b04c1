import { cautionLine, cautions } from "@cornerway/schema";
import "./caution-line.css";

/** The one line never hidden; it opens the five cautions. */
export function CautionLine() {
  return (
    <details className="caution-line">
      <summary>{cautionLine}</summary>
      <ul>
        {cautions.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
    </details>
  );
}
