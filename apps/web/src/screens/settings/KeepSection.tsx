import { may, revisionTables, type Project } from "@cornerway/schema";

/** What can be taken out of the service and kept: tables of the newest revision, and the whole project. */
export function KeepSection({ project, newest }: { project: Project; newest: string | null }) {
  const path = `/api/projects/${project.id}`;
  return (
    <section aria-labelledby="settings-keep">
      <h2 className="caption" id="settings-keep">
        To keep
      </h2>
      {newest === null ? (
        <p>Tables can be saved once a revision is sent.</p>
      ) : (
        <>
          <p>Tables of revision {newest}, as text with commas (RFC 4180), units in their heads:</p>
          <ul className="settings-tables">
            {revisionTables.map((table) => (
              <li key={table}>
                <a href={`${path}/revisions/${newest}/tables/${table}`} download={`${table}-${newest}.csv`}>
                  {table.replaceAll("-", " ")}
                </a>
              </li>
            ))}
          </ul>
        </>
      )}
      {may(project.roles, "take-archive") && (
        <>
          <p>
            The whole project as one file: the record, every revision and its results, every file as it came. It is
            signed, can be checked without this service, and a later version reads it back. Drafts, notes and prices are
            in it.
          </p>
          <p>
            <a className="command" href={`${path}/archive`} download>
              Take the archive
            </a>
          </p>
          <p>An administrator of another service brings it in where projects are started.</p>
        </>
      )}
    </section>
  );
}
