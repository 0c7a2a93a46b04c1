import PDFDocument from "pdfkit";
import type { Block } from "../paper/ink.ts";
import type { Page } from "../paper/page.ts";
import { registerFaces } from "../paper/typefaces.ts";
import { digestsOf, type PermitSet } from "../permit-set.ts";
import { drawInk, type Digests } from "./draw-ink.ts";

export type WriteOptions = {
  /** Told after each page how many are written. */
  onPage?: (done: number) => void;
  /** Looked at before each page; an abort ends the writing with its reason. */
  signal?: AbortSignal;
};

/**
 * The set as PDF 1.7: vectors, embedded fonts, bookmarks by chapter, tagged. The same set gives the same bytes: its
 * times are those of the record.
 */
export async function writePdf(set: PermitSet, { onPage, signal }: WriteOptions = {}): Promise<Buffer> {
  const doc = openDocument(set);
  const bytes = collect(doc);
  const digests = digestsOf(set);
  const bookmarks = new Bookmarks(doc);
  for (const [at, page] of set.pages.entries()) {
    await nextTurn(); // whoever stops the job is heard between pages
    signal?.throwIfAborted();
    doc.addPage({ size: [page.width, page.height], margin: 0 });
    bookmarks.note(page);
    writePage(doc, page, { set: digests.set, page: digests.pages[at] ?? digests.set });
    onPage?.(at + 1);
  }
  doc.end();
  return bytes;
}

function openDocument({ title, at }: PermitSet): PDFKit.PDFDocument {
  const made = new Date(at);
  const doc = new PDFDocument({
    ...{ autoFirstPage: false, pdfVersion: "1.7", lang: "en-US", tagged: true, displayTitle: true, compress: true },
    info: { Title: title, Producer: "Cornerway", Creator: "Cornerway", CreationDate: made, ModDate: made },
  });
  registerFaces(doc);
  return doc;
}

const collect = (doc: PDFKit.PDFDocument): Promise<Buffer> =>
  new Promise((settle, fail) => {
    const parts: Buffer[] = [];
    doc.on("data", (part: Buffer) => parts.push(part));
    doc.on("end", () => settle(Buffer.concat(parts)));
    doc.on("error", fail);
  });

const nextTurn = (): Promise<void> => new Promise((go) => setImmediate(go));

/** Chapters, and under each its pages. */
class Bookmarks {
  readonly #doc: PDFKit.PDFDocument;
  #chapter: { name: string; at: PDFKit.PDFOutline } | undefined;

  constructor(doc: PDFKit.PDFDocument) {
    this.#doc = doc;
  }

  note({ chapter, number, title }: Page): void {
    if (this.#chapter?.name !== chapter) this.#chapter = { name: chapter, at: this.#doc.outline.addItem(chapter) };
    this.#chapter.at.addItem(`${number} ${title}`);
  }
}

function writePage(doc: PDFKit.PDFDocument, page: Page, digests: Digests): void {
  const section = doc.struct("Sect", { title: `${page.number} ${page.title}` });
  doc.addStructure(section);
  for (const block of page.blocks) {
    if (block.role === "Artifact") writeArtifact(doc, block, digests);
    else section.add(structureOf(doc, block, digests));
  }
  section.end();
}

function writeArtifact(doc: PDFKit.PDFDocument, { inks }: Block, digests: Digests): void {
  doc.markContent("Artifact", { type: "Layout" });
  for (const ink of inks) drawInk(doc, ink, digests);
  doc.endMarkedContent();
}

function structureOf(doc: PDFKit.PDFDocument, block: Block, digests: Digests): PDFKit.PDFStructureElement {
  const { role, alt, inks, children = [] } = block;
  const draw = () => {
    for (const ink of inks) drawInk(doc, ink, digests);
  };
  const kept = [...(inks.length > 0 ? [draw] : []), ...children.map((child) => structureOf(doc, child, digests))];
  return doc.struct(role === "Artifact" ? "NonStruct" : role, alt === undefined ? {} : { alt }, kept);
}
