import type { ConditionNow } from "@cornerway/schema";
import { useConditions } from "../../../data/condition.ts";
import { useRoom } from "../../../room/room-context.ts";
import { ConditionItem } from "./ConditionItem.tsx";
import "../../../controls/matter.css";
import "./conditions.css";

/** The conditions of answers, stamps and checks: open ones first, closed ones folded. */
export function ConditionList() {
  const { project } = useRoom();
  const conditions = useConditions(project.id).data ?? [];
  if (conditions.length === 0) return null;
  const closed = conditions.filter(({ state }) => state === "closed");
  return (
    <section className="conditions" aria-label="Conditions">
      <h3 className="caption">{headingOf(conditions.length - closed.length)}</h3>
      <ol>
        {conditions
          .filter(({ state }) => state !== "closed")
          .map((condition) => (
            <ConditionItem key={condition.id} condition={condition} />
          ))}
      </ol>
      {closed.length === 0 ? null : <Closed conditions={closed} />}
    </section>
  );
}

const headingOf = (open: number) =>
  open === 0 ? "No condition is open" : open === 1 ? "1 condition is open" : `${open} conditions are open`;

const Closed = ({ conditions }: { conditions: readonly ConditionNow[] }) => (
  <details className="settled">
    <summary>Closed: {conditions.map(({ number }) => number).join(", ")}</summary>
    <ol>
      {conditions.map((condition) => (
        <ConditionItem key={condition.id} condition={condition} />
      ))}
    </ol>
  </details>
);
