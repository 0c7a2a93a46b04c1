import { Link } from "@tanstack/react-router";
import { Refused } from "../../controls/Refused.tsx";
import { useKeptProjects } from "../../data/people.ts";

/** For administrators: every project of the service, and the way to its people. Nothing of what is drawn. */
export function KeptProjects() {
  const kept = useKeptProjects(true);
  return (
    <section aria-labelledby="desk-kept">
      <h2 className="caption" id="desk-kept">
        Projects of this service
      </h2>
      <Refused error={kept.error} />
      {kept.data?.length === 0 && <p>There is none yet. Start the first one, then ask people in.</p>}
      {kept.data !== undefined && kept.data.length > 0 && (
        <ul className="desk-kept">
          {kept.data.map(({ id, name, place }) => (
            <li key={id}>
              <Link to="/projects/$projectId/people" params={{ projectId: id }}>
                {name}, {place}: people
              </Link>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
