/** Tab, space, quotation mark, and the delimiters. */
const NOTHING = new Set([...'\t ",;|'].map((sign) => sign.charCodeAt(0)));
const [FEED, RETURN] = [10, 13] as const;

/** Looks at the bytes of a text, piece by piece, for a row whose cells are all empty. */
export interface EmptyRows {
  look(piece: Uint8Array): void;
  found(): boolean;
}

/**
 * Watches for rows that hold delimiters and nothing else, as spreadsheets save rows that were cleared: they are no records,
 * and the database would take them for some.
 *
 * @example
 * const rows = watchEmptyRows();
 * rows.look(Buffer.from("a;b\n;\n1;2\n"));
 * rows.found(); // => true
 */
export function watchEmptyRows(): EmptyRows {
  let found = false;
  /** True while nothing but such signs has come since the last line break; at least one of them. */
  let [empty, signs] = [false, 0];
  return {
    look(piece) {
      const nextBreak = breaksOf(piece);
      let at = 0;
      while (!found && at < piece.length) {
        if (!empty) {
          const end = nextBreak(at);
          if (end < 0) return;
          [at, empty, signs] = [end + 1, true, 0];
          continue;
        }
        const byte = piece[at] ?? 0;
        if (NOTHING.has(byte)) signs += 1;
        else if (byte === FEED || byte === RETURN) {
          found = signs > 0;
          signs = 0;
        } else empty = false;
        at += 1;
      }
    },
    found: () => found || (empty && signs > 0),
  };
}

/** Where the next line break is, of either kind; a piece without one kind is searched for it once only. */
function breaksOf(piece: Uint8Array): (from: number) => number {
  const next = (sign: number) => {
    let at = 0;
    return (from: number) => {
      if (at >= 0 && at <= from) at = piece.indexOf(sign, from);
      return at;
    };
  };
  const [feed, carriage] = [next(FEED), next(RETURN)];
  return (from) => {
    const [one, other] = [feed(from), carriage(from)];
    return one < 0 || other < 0 ? Math.max(one, other) : Math.min(one, other);
  };
}
