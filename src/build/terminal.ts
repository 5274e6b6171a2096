/** What may be drawn on a stream: a line that moves, colour, and how many characters fit. */
export interface Terminal {
  isTerminal: boolean;
  colour: boolean;
  /** Width in characters. */
  columns: number;
}

/**
 * Reads from a stream and the environment what may be drawn. A line moves only on a real terminal that is not
 * `TERM=dumb`; colour also needs `NO_COLOR` unset or empty (https://no-color.org), and `FORCE_COLOR` grants it.
 *
 * @param stream where messages go, usually process.stderr
 * @param env usually process.env
 * @returns columns is 80 where the stream does not say
 * @example describeTerminal({ isTTY: true, columns: 100 }, { NO_COLOR: "1" }) // { isTerminal: true, colour: false, columns: 100 }
 */
export function describeTerminal(
  stream: { isTTY?: boolean; columns?: number },
  env: Readonly<Record<string, string | undefined>>,
): Terminal {
  const isTerminal = stream.isTTY === true && env["TERM"] !== "dumb";
  const refused = isSet(env["NO_COLOR"]) || env["FORCE_COLOR"] === "0";
  return { isTerminal, colour: !refused && (isTerminal || isSet(env["FORCE_COLOR"])), columns: stream.columns ?? 80 };
}

function isSet(value: string | undefined): boolean {
  return value !== undefined && value !== "";
}
