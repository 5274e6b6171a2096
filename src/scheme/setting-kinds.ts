/** Kinds of values that several settings share. */
import { z } from "zod";

/** A name that the scheme gives: in tables, and for others to refer to. */
export const identifier = z
  .string()
  .regex(/^[a-z0-9][a-z0-9_-]*$/, "use lower-case letters, figures, - and _")
  .describe("lower-case letters, figures, - and _");

/** A path inside the scheme's folder. */
export const relativePath = z
  .string()
  .refine(
    (path) => !/^(?:[\\/]|[A-Za-z]:)/.test(path) && !path.split(/[\\/]/).includes(".."),
    "use a path inside the scheme's folder",
  );
