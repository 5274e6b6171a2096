/** One step of a build while it runs. */
export interface Step {
  /** Shows how far it is: `done` of `total` units. Without a total only the count is shown. */
  update(done: number, total?: number): void;
  /** Ends the step with its result, for example "120,412 records"; `reused` when nothing had to be done again. */
  done(summary: string, options?: { reused?: boolean }): void;
}

/** The log of a build: one line a step. */
export interface Progress {
  /** Begins a step: a verb and its subject, for example "read", "8 files". One step runs at a time. */
  step(name: string, subject: string): Step;
  /** Writes a line of its own. */
  note(text: string): void;
  /** Takes an unfinished step off the screen, so that an error message stands alone. */
  close(): void;
}

export interface ProgressOptions {
  stream: { write(text: string): unknown };
  /** Writes nothing at all. */
  quiet: boolean;
  /** Whether a line may move. */
  isTerminal: boolean;
  colour: boolean;
  /** Width in characters; 80 by default. */
  columns?: number;
  /** Milliseconds from any fixed moment; the monotonic clock by default. */
  now?: () => number;
  /** Calls back a few times a second until the returned function is called; a timer by default. */
  everyTick?: (callback: () => void) => () => void;
}

const SHOWN_AFTER_MS = 1000;
const TICK_MS = 120;
const NAME_WIDTH = 10;
const LINE_WIDTH = 78;
const BAR_WIDTH = 20;
/** To the first column, then erase the line (ECMA-48, EL 2). */
const CLEAR_LINE = "\r\u001b[2K";

/**
 * The log of a build. Each step ends as one line, its verb, what went in and came out, and the time it took:
 *
 *     read      8 files → 120,412 records            0.6 s
 *
 * On a terminal a step that takes over a second shows a moving line meanwhile; elsewhere nothing moves.
 *
 * @param options where to write, what may be drawn there, and the clock
 * @returns the log; `close` it when the build ends early
 * @example createProgress({ stream: process.stderr, quiet: false, isTerminal: false, colour: false }).step("read", "8 files").done("9 records")
 */
export function createProgress(options: ProgressOptions): Progress {
  const {
    stream,
    quiet,
    isTerminal,
    colour,
    columns = 80,
    now = () => performance.now(),
    everyTick = onTimer,
  } = options;
  const faint = (text: string) => (colour ? `\u001b[2m${text}\u001b[22m` : text);
  let clear = () => {};
  let stop = () => {};

  function write(text: string): void {
    if (!quiet) stream.write(text);
  }

  function finish(): void {
    stop();
    clear();
    stop = clear = () => {};
  }

  function step(name: string, subject: string): Step {
    finish();
    const begun = now();
    let state = "";
    let drawn = false;
    clear = () => {
      if (drawn) write(CLEAR_LINE);
      drawn = false;
    };
    const redraw = () => {
      const elapsed = now() - begun;
      if (elapsed < SHOWN_AFTER_MS) return;
      const line = [name.padEnd(NAME_WIDTH - 1), subject, state, formatDuration(elapsed)].filter(Boolean).join(" ");
      write(CLEAR_LINE + line.slice(0, columns - 1));
      drawn = true;
    };
    if (isTerminal && !quiet) stop = everyTick(redraw);
    return {
      update(done, total) {
        state = total === undefined ? done.toLocaleString("en-GB") : drawBar(done, total);
      },
      done(summary, { reused = false } = {}) {
        finish();
        write(`${layOut(name, subject, summary, reused ? "reused" : formatDuration(now() - begun), faint)}\n`);
      },
    };
  }

  return {
    step,
    note(text) {
      clear();
      write(`${text}\n`);
    },
    close: finish,
  };
}

/**
 * A span of time in the unit a person would use.
 *
 * @param milliseconds not negative
 * @returns tenths of a second below ten seconds, then seconds, then minutes and seconds
 * @example formatDuration(640) // "0.6 s"
 * @example formatDuration(125_000) // "2 min 5 s"
 */
export function formatDuration(milliseconds: number): string {
  if (milliseconds < 9950) return `${(milliseconds / 1000).toFixed(1)} s`;
  const seconds = Math.round(milliseconds / 1000);
  return seconds < 60 ? `${seconds} s` : `${Math.floor(seconds / 60)} min ${seconds % 60} s`;
}

function layOut(name: string, subject: string, summary: string, time: string, faint: (text: string) => string): string {
  const verb = name.padEnd(NAME_WIDTH);
  const result = [subject, summary].filter(Boolean).join(" → ");
  const gap = " ".repeat(Math.max(2, LINE_WIDTH - verb.length - result.length - time.length));
  return faint(verb) + result + gap + faint(time);
}

function drawBar(done: number, total: number): string {
  const share = total > 0 ? Math.min(1, Math.max(0, done / total)) : 1;
  const filled = Math.round(share * BAR_WIDTH);
  return `${"█".repeat(filled)}${"░".repeat(BAR_WIDTH - filled)} ${Math.floor(share * 100)} %`;
}

function onTimer(callback: () => void): () => void {
  const timer = setInterval(callback, TICK_MS);
  timer.unref();
  return () => clearInterval(timer);
}
