import { Link } from "@tanstack/react-router";

/** Where the record goes into print. */
export const PermitSetSection = ({ projectId }: { projectId: string }) => (
  <section>
    <h2 className="caption">The permit set</h2>
    <p>The record up to its last entry is printed with drawings and calculations as one set.</p>
    <Link className="command" to="/projects/$projectId/permit-set" params={{ projectId }}>
      The permit set and the plan check
    </Link>
    <p>What was found of the containers, and what is built, is in the set as well.</p>
    <Link className="command command-quiet" to="/projects/$projectId/survey" params={{ projectId }}>
      Survey of the containers
    </Link>{" "}
    <Link className="command command-quiet" to="/projects/$projectId/site" params={{ projectId }}>
      The site
    </Link>
  </section>
);
