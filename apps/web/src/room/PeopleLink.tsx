import { Link } from "@tanstack/react-router";
import { useRoom } from "./room-context.ts";

/** From the sheets to who has a part in them. */
export function PeopleLink() {
  const { project } = useRoom();
  return (
    <Link className="command command-quiet" to="/projects/$projectId/people" params={{ projectId: project.id }}>
      People
    </Link>
  );
}
