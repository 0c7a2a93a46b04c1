import type { Premium } from "@cornerway/schema";
import { Link } from "@tanstack/react-router";
import { moneyText } from "../wording/money.ts";
import { apartWords } from "./apart-words.ts";
import { ForShow } from "./ForShow.tsx";
import "./prices.css";

/** The premium of what a sheet shows in one line, and the way to its items. */
export function PremiumLine({ projectId, premium }: { projectId: string; premium: Premium }) {
  const apart = apartWords(premium);
  return (
    <p className="price-line">
      <span>
        Premium over the plain stack <b>{moneyText(premium.total, premium.currency)}</b>
      </span>{" "}
      <Link to="/projects/$projectId/premium" params={{ projectId }}>
        Line by line
      </Link>{" "}
      <ForShow forShow={premium.forShow && premium.lines.length > 0} />{" "}
      {apart === undefined ? null : <span className="price-small">{apart}</span>}
    </p>
  );
}
