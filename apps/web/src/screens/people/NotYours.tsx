import { Link } from "@tanstack/react-router";
import { PageSheet } from "../../sheet/PageSheet.tsx";

/** The project is not there, or not theirs to see: the same page for both. */
export const NotYours = () => (
  <PageSheet
    title="Not yours to see"
    heading="There is no sheet at this address"
    way={
      <Link className="command command-next" to="/">
        To the desk
      </Link>
    }
  >
    <p>It is not there, or it is not yours to see. If your part was taken away, whoever asked you in can say why.</p>
  </PageSheet>
);
