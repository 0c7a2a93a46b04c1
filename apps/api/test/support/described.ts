import { Ajv2020, type ValidateFunction } from "ajv/dist/2020.js";
import { ApiDocument } from "../../src/description/document.ts";

/** A description made ready to hold answers to, each of its validators once it is asked for. */
export class Described {
  readonly #document: ApiDocument;
  readonly #ways: { way: RegExp; path: string }[];
  readonly #ajv = new Ajv2020({ strict: false, validateFormats: false, allErrors: true });
  readonly #validators = new Map<string, ValidateFunction>();

  constructor(description: object) {
    this.#document = ApiDocument.parse(description);
    this.#ajv.addSchema(description, "api");
    this.#ways = Object.keys(this.#document.paths)
      .map((path) => ({ path, way: new RegExp(`^${path.replaceAll(/\{\w+\}/g, "[^/]+")}$`) }))
      .sort((a, b) => a.path.split("{").length - b.path.split("{").length); // what is named goes before what is open
  }

  /** The path an address is of, and what is described of this method on it. */
  operation(method: string, address: string) {
    const path = this.#ways.find(({ way }) => way.test(address))?.path;
    if (path === undefined) return undefined;
    const operation = Object.entries(this.#document.paths[path] ?? {});
    return [path, operation.find(([name]) => name === method.toLowerCase())?.[1]] as const;
  }

  /** Where a body does not agree with the schema at a JSON pointer (RFC 6901); undefined where it does. */
  disagreement(pointer: string, body: unknown): string | undefined {
    const validate = this.#validators.get(pointer) ?? this.#ajv.compile({ $ref: `api#/${pointer}` });
    this.#validators.set(pointer, validate);
    return validate(body) ? undefined : this.#ajv.errorsText(validate.errors);
  }
}
