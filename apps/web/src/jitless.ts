import { z } from "zod";

// The content-security policy forbids making code from text, which zod does otherwise. Must run before any schema.
z.config({ jitless: true });
