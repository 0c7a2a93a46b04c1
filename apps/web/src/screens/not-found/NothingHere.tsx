import { Link } from "@tanstack/react-router";
import { CautionLine } from "../../controls/CautionLine.tsx";
import { EmptyGround } from "../../controls/EmptyGround.tsx";
import "../../controls/trouble.css";

/** An address that leads nowhere. */
export function NothingHere() {
  return (
    <main className="trouble">
      <EmptyGround />
      <section className="trouble-slip">
        <h1>There is no sheet at this address</h1>
        <p>It was moved, or it is not yours to see.</p>
        <Link className="command command-next" to="/">
          Back to the desk
        </Link>
      </section>
      <CautionLine />
    </main>
  );
}
