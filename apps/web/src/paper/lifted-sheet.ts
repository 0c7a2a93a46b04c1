const svgNames = "http://www.w3.org/2000/svg";

/** What names a part or can be reached in it: a copy has none of it, and is seen only. */
const named = ["id", "role", "tabindex", "data-element", "data-of", "data-lifted", "data-testid"];

/** The sheet over the paper that parts of the drawing are laid on while they go along with the hand. */
export class LiftedSheet {
  readonly #sheet: SVGSVGElement | null;
  readonly #laid = new Map<SVGElement, { root: Element; moved: SVGElement }>();

  /** Nothing lies on it: what lay there was lifted off another drawing. */
  constructor(sheet: SVGSVGElement | null) {
    this.#sheet = sheet;
    sheet?.replaceChildren();
  }

  /** Lays a copy of a part as far away from its place as is told, a CSS transform. */
  lay(part: SVGElement, transform: string): void {
    const laid = this.#laid.get(part) ?? this.#copied(part);
    laid.moved.style.transform = transform;
  }

  /** Takes off the copies of all others. */
  keep(parts: ReadonlySet<SVGElement>): void {
    for (const [part, { root }] of this.#laid) {
      if (parts.has(part)) continue;
      root.remove();
      this.#laid.delete(part);
    }
  }

  #copied(part: SVGElement) {
    const moved = document.createElementNS(svgNames, "g");
    moved.append(unnamed(part.cloneNode(true)));
    const laid = { root: within(part, moved), moved };
    this.#sheet?.append(laid.root);
    this.#laid.set(part, laid);
    return laid;
  }
}

/** A copy within copies of the groups its part is drawn in: what it has from them it has here as well. */
function within(part: Element, copy: Element): Element {
  const group = part.parentElement;
  if (group === null || group.localName !== "g") return copy;
  const shell = unnamed(group.cloneNode(false));
  shell.append(copy);
  return within(group, shell);
}

function unnamed(copy: Node): Element {
  if (!(copy instanceof Element)) throw new TypeError("what is copied is an element");
  for (const each of [copy, ...copy.querySelectorAll("*")]) for (const name of named) each.removeAttribute(name);
  return copy;
}
