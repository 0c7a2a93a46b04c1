import { PageSheet } from "../../sheet/PageSheet.tsx";
import type { LinkFormProps } from "./form-contract.ts";
import { PersonForm } from "./PersonForm.tsx";

/** Nobody is known to the service yet: whoever holds its first link becomes its administrator. */
export function FirstForm({ send, error, sending }: LinkFormProps) {
  return (
    <PageSheet title="The first administrator" heading="Nobody is known here yet. You are the first.">
      <div className="page-columns">
        <PersonForm
          knownEmail={null}
          command={sending ? "Opening the desk" : "Become the administrator"}
          error={error}
          onWords={(words) => send({ as: "first administrator", ...words })}
        />
        <section className="link-words">
          <h2 className="caption">What an administrator does</h2>
          <p>Starts projects, asks people into them, and takes parts away. Everyone else comes by invitation.</p>
          <p>
            An administrator sees nothing of what is drawn, unless they have a part in the project, and never says who
            the engineer is: that is the owner's word.
          </p>
        </section>
      </div>
    </PageSheet>
  );
}
