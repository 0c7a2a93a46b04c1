/** What is sent again and again, as JSON text under a digest of its content; what was not asked for longest makes room. */
export class KeptTexts {
  readonly #texts = new Map<string, string>();
  readonly #mostCharacters: number;
  #characters = 0;

  constructor(mostCharacters: number) {
    this.#mostCharacters = mostCharacters;
  }

  get(key: string): string | undefined {
    const text = this.#texts.get(key);
    if (text === undefined) return undefined;
    this.#texts.delete(key);
    this.#texts.set(key, text);
    return text;
  }

  keep(key: string, text: string): string {
    this.#characters += text.length - (this.#texts.get(key)?.length ?? 0);
    this.#texts.delete(key);
    this.#texts.set(key, text);
    for (const [oldest, { length }] of this.#texts) {
      if (this.#characters <= this.#mostCharacters) break;
      this.#texts.delete(oldest);
      this.#characters -= length;
    }
    return text;
  }
}
