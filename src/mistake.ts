/** Where in a file a mistake stands. Lines, columns and rows count from 1; a row counts the header as row 1. */
export interface Whereabouts {
  file?: string;
  line?: number;
  column?: number;
  row?: number;
  field?: string;
}

/**
 * The user's own mistake: shown as its message alone, without a stack trace, and exits with its own code.
 * Anything else that is thrown is our bug and keeps its stack.
 *
 * @example new Mistake("periods[0].to", "is 1989, before its own start 1990", "write a year from 1990 on", { file: "atlas.yaml", line: 12, column: 9 })
 */
export class Mistake extends Error {
  readonly what: string;
  readonly found: string;
  readonly wayOut: string;
  readonly where: Whereabouts;

  constructor(what: string, found: string, wayOut: string, where: Whereabouts = {}) {
    super(`${describeWhere(where)}${what} ${found}; ${wayOut}`);
    this.name = "Mistake";
    this.what = what;
    this.found = found;
    this.wayOut = wayOut;
    this.where = where;
  }
}

function describeWhere({ file, line, column, row, field }: Whereabouts): string {
  const place = [file, line, column].filter((part) => part !== undefined).join(":");
  const cell = [row === undefined ? "" : `row ${row}`, field === undefined ? "" : `field ${field}`]
    .filter(Boolean)
    .join(", ");
  return [place, cell]
    .filter(Boolean)
    .map((part) => `${part}: `)
    .join("");
}
