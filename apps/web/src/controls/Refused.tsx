/** Why the service did not do what was asked, in its own words, said at once to those who listen. */
export const Refused = ({ error }: { error: unknown }) =>
  error === null || error === undefined ? null : (
    <p className="field-fault" role="alert">
      {error instanceof Error ? error.message : "This did not go through."}
    </p>
  );
