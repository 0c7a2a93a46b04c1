import type { ReactNode } from "react";
import "./part-strip.css";

export interface StripPart {
  id: string;
  name: ReactNode;
}

/** Where a drawing has its levels a sheet of words has its parts: choosing one brings it into view. */
export const PartStrip = ({
  heading,
  parts,
  onChoose,
}: {
  heading: string;
  parts: readonly StripPart[];
  onChoose: (id: string) => void;
}) => (
  <nav className="part-strip" aria-label={heading}>
    <h2 className="caption">{heading}</h2>
    <ol>
      {parts.map(({ id, name }) => (
        <li key={id}>
          <button type="button" onClick={() => onChoose(id)}>
            {name}
          </button>
        </li>
      ))}
    </ol>
  </nav>
);
