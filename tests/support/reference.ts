import { readFileSync } from "node:fs";

/**
 * Reads a file of published or independently computed values.
 *
 * @param name file name in tests/reference
 * @returns its content, with a `source` line that says where the values come from
 */
export function readReferenceFile<Content>(name: string): Content & { source: string } {
  return JSON.parse(readFileSync(new URL(`../reference/${name}`, import.meta.url), "utf8")) as Content & {
    source: string;
  };
}
