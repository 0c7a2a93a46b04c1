import { useState } from "react";
import type { InputHTMLAttributes, Ref } from "react";
import { PersonField } from "./PersonField.tsx";
import "./password-field.css";

type Given = Pick<InputHTMLAttributes<HTMLInputElement>, "name" | "onChange" | "onBlur"> & {
  ref?: Ref<HTMLInputElement>;
};

/** A password that can be looked at while it is typed. Pasting is never in the way. */
export function PasswordField({
  label,
  fault,
  isNew = false,
  given,
}: {
  label: string;
  fault?: string | undefined;
  /** True where one is chosen, false where the present one is asked. */
  isNew?: boolean;
  /** What the form binds to the field. */
  given: Given;
}) {
  const [shown, setShown] = useState(false);
  return (
    <div className="password-field">
      <PersonField label={label} fault={fault}>
        {(bound) => (
          <input
            {...bound}
            {...given}
            type={shown ? "text" : "password"}
            autoComplete={isNew ? "new-password" : "current-password"}
            spellCheck={false}
          />
        )}
      </PersonField>
      <button
        type="button"
        className="command command-quiet"
        aria-label={`${shown ? "Hide it" : "Show it"}: ${label}`}
        onClick={() => setShown((was) => !was)}
      >
        {shown ? "Hide it" : "Show it"}
      </button>
    </div>
  );
}
