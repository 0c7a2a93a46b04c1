/** Thrown inside a reading and turned into a returned value by the reader's one entry; never leaves it. */
export class ReadError extends Error {
  readonly path: string;

  constructor(path: string, message: string) {
    super(message);
    this.path = path;
  }
}

/** A place in a JSON value together with its path (RFC 9535, as in `$.beams[3].section`). */
export class JsonCursor {
  readonly value: unknown;
  readonly path: string;

  constructor(value: unknown, path = "$") {
    this.value = value;
    this.path = path;
  }

  fail(message: string): never {
    throw new ReadError(this.path, message);
  }

  /** The members of an object; any key that is not among `known` is an error at that key. */
  object<K extends string>(known: readonly K[]): { [P in K]?: JsonCursor } {
    const result: { [P in K]?: JsonCursor } = {};
    for (const [key, member] of this.members()) {
      const name = known.find((candidate) => candidate === key);
      if (name === undefined) member.fail(`unknown key "${key}"`);
      else result[name] = member;
    }
    return result;
  }

  /** The members of an object with free keys, in file order. */
  members(): [string, JsonCursor][] {
    const { value } = this;
    if (typeof value !== "object" || value === null || Array.isArray(value))
      return this.fail(`expected an object, found ${nameOf(value)}`);
    return Object.entries(value).map(([key, member]) => [key, new JsonCursor(member, this.path + memberPath(key))]);
  }

  array(): JsonCursor[] {
    if (!Array.isArray(this.value)) return this.fail(`expected a list, found ${nameOf(this.value)}`);
    return this.value.map((item: unknown, index) => new JsonCursor(item, `${this.path}[${index}]`));
  }

  string(): string {
    if (typeof this.value !== "string") return this.fail(`expected text, found ${nameOf(this.value)}`);
    return this.value;
  }

  id(): string {
    const id = this.string();
    return id === "" ? this.fail("an id must not be empty") : id;
  }

  number(): number {
    if (typeof this.value !== "number") return this.fail(`expected a number, found ${nameOf(this.value)}`);
    if (!Number.isFinite(this.value)) return this.fail("expected a finite number");
    return this.value;
  }

  positive(): number {
    const value = this.number();
    return value > 0 ? value : this.fail(`expected a number above zero, found ${value}`);
  }

  notNegative(): number {
    const value = this.number();
    return value >= 0 ? value : this.fail(`expected zero or more, found ${value}`);
  }

  boolean(): boolean {
    if (typeof this.value !== "boolean") return this.fail(`expected true or false, found ${nameOf(this.value)}`);
    return this.value;
  }

  oneOf<T extends string>(choices: readonly T[]): T {
    const text = this.string();
    return (
      choices.find((choice) => choice === text) ?? this.fail(`expected one of ${choices.join(", ")}, found "${text}"`)
    );
  }

  listOf(length: number): JsonCursor[] {
    const items = this.array();
    return items.length === length ? items : this.fail(`expected ${length} entries, found ${items.length}`);
  }
}

/** The member, or an error at its parent when it is missing. */
export function required(parent: JsonCursor, member: JsonCursor | undefined, key: string): JsonCursor {
  return member ?? parent.fail(`missing key "${key}"`);
}

/** The step of a JSON path to a member: `.name`, or `["a name"]` where the name needs quotes. */
export function memberPath(key: string): string {
  return /^[A-Za-z_][A-Za-z0-9_]*$/.test(key) ? `.${key}` : `[${JSON.stringify(key)}]`;
}

function nameOf(value: unknown): string {
  if (value === null) return "null";
  if (value === undefined) return "nothing";
  return Array.isArray(value) ? "a list" : typeof value === "object" ? "an object" : JSON.stringify(value);
}
