import { z } from "zod";

const Content = z.record(z.string(), z.object({ schema: z.unknown().optional() }));

const Operation = z.object({
  operationId: z.string(),
  summary: z.string(),
  description: z.string().optional(),
  tags: z.array(z.string()).length(1),
  security: z.array(z.record(z.string(), z.array(z.string()))).optional(),
  parameters: z
    .array(
      z.object({
        name: z.string(),
        in: z.enum(["path", "query", "header"]),
        required: z.boolean().optional(),
        description: z.string().optional(),
        schema: z.unknown(),
      }),
    )
    .default([]),
  requestBody: z.object({ content: Content }).optional(),
  responses: z.record(z.string(), z.object({ description: z.string(), content: Content.optional() })),
});
export type DescribedOperation = z.infer<typeof Operation>;

/** What this program reads of its own API description: OpenAPI 3.1, as `plugins/description.ts` makes it. */
export const ApiDocument = z.object({
  openapi: z.literal("3.1.0"),
  info: z.object({ title: z.string(), version: z.string(), description: z.string() }),
  tags: z.array(z.object({ name: z.string(), description: z.string() })),
  paths: z.record(z.string(), z.partialRecord(z.enum(["get", "post", "put", "patch", "delete"]), Operation)),
  components: z.object({
    schemas: z.record(z.string(), z.unknown()),
    securitySchemes: z.record(z.string(), z.unknown()),
  }),
});
export type ApiDocument = z.infer<typeof ApiDocument>;
