import { isProblem } from "../data/http.ts";
import { PasswordField } from "./PasswordField.tsx";

/** The password of whoever is signed in, asked once more before an act that is theirs alone. */
export const PasswordOnce = ({ error, onPassword }: { error: unknown; onPassword: (password: string) => void }) => (
  <PasswordField
    label="Your password, once more"
    fault={isProblem(error, "present-password-wrong") ? "This is not your password." : undefined}
    given={{ name: "password", onChange: ({ target }) => onPassword(target.value) }}
  />
);
