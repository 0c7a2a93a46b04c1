import type { Digest } from "@cornerway/schema";
import { dashes, pens, ptPerMm, tones, type DigestInk, type Ink, type PathInk, type TextInk } from "../paper/ink.ts";
import { runsOf, widthOf } from "../paper/typefaces.ts";

export type Digests = { set: Digest; page: Digest };

export function drawInk(doc: PDFKit.PDFDocument, ink: Ink, digests: Digests): void {
  switch (ink.kind) {
    case "path":
      return drawPath(doc, ink);
    case "text":
      return drawText(doc, ink);
    case "digest":
      return drawDigest(doc, ink, digests[ink.of]);
  }
}

function drawPath(doc: PDFKit.PDFDocument, { d, pen, dash, tone = "ink", fill }: PathInk): void {
  doc.path(d);
  if (pen === undefined) {
    if (fill !== undefined) doc.fill(tones[fill]);
    return;
  }
  doc
    .lineWidth(pens[pen] * ptPerMm)
    .lineJoin("miter")
    .lineCap("butt");
  if (dash === undefined) doc.undash();
  else doc.dash(dashes[dash][0], { space: dashes[dash][1] });
  if (dash !== undefined && dashes[dash].length > 2) doc.addContent(`[${dashes[dash].join(" ")}] 0 d`);
  if (fill === undefined) doc.stroke(tones[tone]);
  else doc.fillAndStroke(tones[fill], tones[tone]);
}

function drawText(doc: PDFKit.PDFDocument, ink: TextInk): void {
  const { x, y, text, face, size, tone = "ink", anchor, turn = 0, tracking = 0 } = ink;
  const width = anchor === undefined ? 0 : widthOf(text, face, size, tracking) - tracking;
  const from = anchor === "middle" ? -width / 2 : anchor === "end" ? -width : 0;
  doc.save();
  if (turn !== 0) doc.rotate(-turn, { origin: [x, y] });
  doc.fillColor(tones[tone]);
  let at = x + from;
  for (const run of runsOf(text, face)) {
    doc.font(run.face).fontSize(size);
    doc.text(run.text, at, y, { lineBreak: false, baseline: "alphabetic", characterSpacing: tracking });
    at += doc.widthOfString(run.text, { characterSpacing: tracking });
  }
  doc.restore();
}

/** In groups of four signs, so that it can be read out and compared. */
function drawDigest(doc: PDFKit.PDFDocument, { x, y, size, perLine }: DigestInk, digest: Digest): void {
  const groups = digest.match(/.{4}/g) ?? [];
  doc.font("digest").fontSize(size).fillColor(tones.ink);
  for (let from = 0; from < groups.length; from += perLine)
    doc.text(groups.slice(from, from + perLine).join(" "), x, y + (from / perLine) * size * 1.5, {
      ...{ lineBreak: false, baseline: "alphabetic" },
    });
}
