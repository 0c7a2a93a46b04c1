import { dispositions } from "@cornerway/schema";
import type { ReviewStampProps } from "./contract.ts";
import { StampImpression } from "./StampImpression.tsx";
import "./review-stamp.css";

type Choosing = Extract<ReviewStampProps, { state: "choosing" }>;

/** The engineer's stamp: straight and live while it is chosen, an impression once pressed. */
export function ReviewStamp(props: ReviewStampProps) {
  return props.state === "choosing" ? <ChoosingStamp {...props} /> : <StampImpression {...props} />;
}

function ChoosingStamp(props: Choosing) {
  const { subject, revision, text, onText, signer, chosen, onPress, onAside } = props;
  const asleep = chosen === null;
  return (
    <form
      className="review-stamp"
      aria-label={`Stamp for revision ${revision}`}
      onSubmit={(event) => {
        event.preventDefault();
        if (!asleep) onPress();
      }}
    >
      <header>
        <h2>Reviewed</h2>
        <span>{subject}</span>
      </header>
      <fieldset>
        <legend className="unseen">What the stamp says</legend>
        {dispositions.map((disposition) => (
          <DispositionRow key={disposition} disposition={disposition} {...props} />
        ))}
      </fieldset>
      <p className="stamp-scope">
        Read for agreement with the structural intent. Sizes, fit and site measure stay with those who make and set the
        work.
      </p>
      <label className="field">
        What is to be done
        <textarea rows={2} value={text} onChange={(event) => onText(event.target.value)} />
      </label>
      {props.children}
      <footer>
        <span className="signer">{signer}</span>
        {onAside !== undefined && (
          <button type="button" className="command command-quiet" onClick={onAside}>
            Lay it aside
          </button>
        )}
        <button
          type="submit"
          className="command command-engineer"
          aria-disabled={asleep || undefined}
          title={asleep ? "Choose what the stamp says" : undefined}
        >
          Press the stamp
        </button>
      </footer>
    </form>
  );
}

function DispositionRow({
  disposition,
  chosen,
  onChoose,
  wording,
  next,
  asleepBecause,
}: Choosing & { disposition: (typeof dispositions)[number] }) {
  const why = asleepBecause[disposition];
  const words = wording?.[disposition];
  return (
    <label className={why === undefined ? "stamp-row" : "stamp-row stamp-asleep"} title={why}>
      <input
        type="radio"
        name="disposition"
        checked={chosen === disposition}
        aria-disabled={why !== undefined || undefined}
        onChange={() => {
          if (why === undefined) onChoose(disposition);
        }}
      />
      <b>
        {words ?? disposition}
        {words === undefined ? null : <small>{disposition}</small>}
      </b>
      <span>{why ?? next[disposition]}</span>
    </label>
  );
}
