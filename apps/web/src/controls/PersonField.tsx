import type { ReactNode } from "react";
import { useId } from "react";

/** A label over one field, with what is wrong with it below. */
export function PersonField({
  label,
  fault,
  children,
}: {
  label: string;
  fault?: string | undefined;
  children: (bound: { id: string; "aria-invalid": boolean; "aria-describedby": string | undefined }) => ReactNode;
}) {
  const id = useId();
  const faultId = `${id}-fault`;
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      {children({
        id,
        "aria-invalid": fault !== undefined,
        "aria-describedby": fault === undefined ? undefined : faultId,
      })}
      {fault === undefined ? null : (
        <p id={faultId} className="field-fault" role="alert">
          {fault}
        </p>
      )}
    </div>
  );
}
