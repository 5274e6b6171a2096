import { describe, expect, it } from "vitest";
import { createProgress, formatDuration, type ProgressOptions } from "../../src/build/progress.ts";

/** A log over a written string, a clock set by hand and a ticker rung by hand. */
function logInMemory(options: Partial<ProgressOptions> = {}) {
  const written: string[] = [];
  const clock = { ms: 0 };
  const tickers = new Set<() => void>();
  const progress = createProgress({
    stream: { write: (text: string) => written.push(text) },
    quiet: false,
    isTerminal: false,
    colour: false,
    now: () => clock.ms,
    everyTick(callback) {
      tickers.add(callback);
      return () => tickers.delete(callback);
    },
    ...options,
  });
  const passTime = (ms: number) => {
    clock.ms += ms;
    for (const tick of tickers) tick();
  };
  return { progress, passTime, tickers, text: () => written.join("") };
}

describe("createProgress", () => {
  it("writes one line a step: verb, what went in and came out, time at the right", () => {
    const { progress, passTime, text } = logInMemory();
    const step = progress.step("read", "8 files");
    passTime(640);
    step.done("120,412 records");
    expect(text()).toBe("read      8 files → 120,412 records                                      0.6 s\n");
  });

  it("says reused in place of the time", () => {
    const { progress, text } = logInMemory();
    progress.step("place", "1,204 places").done("1,204 squares", { reused: true });
    expect(text()).toMatch(/^place {5}1,204 places → 1,204 squares +reused\n$/);
  });

  it("leaves out the arrow of a step without a subject", () => {
    const { progress, text } = logInMemory();
    progress.step("check", "").done("nothing to ask");
    expect(text()).toMatch(/^check {5}nothing to ask {2,}0\.0 s\n$/);
  });

  it("never moves a line where the stream is no terminal, however long the step", () => {
    const { progress, passTime, tickers, text } = logInMemory();
    const step = progress.step("read", "8 files");
    step.update(1, 2);
    passTime(60_000);
    expect(tickers.size).toBe(0);
    expect(text()).toBe("");
  });

  it("shows a bar on a terminal after a second, and takes it away before the result", () => {
    const { progress, passTime, tickers, text } = logInMemory({ isTerminal: true });
    const step = progress.step("draw", "400 pages");
    step.update(100, 400);
    passTime(900);
    expect(text()).toBe("");
    passTime(200);
    expect(text()).toBe(`\r\u001b[2Kdraw      400 pages ${"█".repeat(5)}${"░".repeat(15)} 25 % 1.1 s`);
    step.done("400 files");
    expect(text()).toMatch(/\r\u001b\[2Kdraw {6}400 pages → 400 files +1\.1 s\n$/);
    expect(tickers.size).toBe(0);
  });

  it("shows a count where the total is not known, and only the time where nothing is", () => {
    const { progress, passTime, text } = logInMemory({ isTerminal: true });
    const step = progress.step("read", "8 files");
    passTime(1500);
    expect(text()).toBe("\r\u001b[2Kread      8 files 1.5 s");
    step.update(12_000);
    passTime(100);
    expect(text()).toMatch(/\r\u001b\[2Kread {6}8 files 12,000 1\.6 s$/);
  });

  it("cuts a moving line to the terminal's width, so that it can be erased", () => {
    const { progress, passTime, text } = logInMemory({ isTerminal: true, columns: 20 });
    progress.step("read", "a subject longer than the terminal is wide");
    passTime(2000);
    expect(text()).toBe("\r\u001b[2Kread      a subject");
  });

  it("writes a note on a line of its own and goes on with the step", () => {
    const { progress, passTime, text } = logInMemory({ isTerminal: true });
    progress.step("read", "8 files");
    passTime(1500);
    progress.note("records/old.csv has no rows");
    passTime(100);
    expect(text()).toBe(
      "\r\u001b[2Kread      8 files 1.5 s\r\u001b[2Krecords/old.csv has no rows\n\r\u001b[2Kread      8 files 1.6 s",
    );
  });

  it("takes an unfinished step away when it is closed", () => {
    const { progress, passTime, tickers, text } = logInMemory({ isTerminal: true });
    progress.step("read", "8 files");
    passTime(1500);
    progress.close();
    expect(text()).toMatch(/1\.5 s\r\u001b\[2K$/);
    expect(tickers.size).toBe(0);
  });

  it("writes nothing when quiet", () => {
    const { progress, passTime, text } = logInMemory({ isTerminal: true, quiet: true });
    const step = progress.step("read", "8 files");
    passTime(5000);
    progress.note("a note");
    step.done("1 record");
    expect(text()).toBe("");
  });

  it("colours the verb and the time faint, and nothing else", () => {
    const { progress, text } = logInMemory({ colour: true });
    progress.step("read", "8 files").done("9 records");
    expect(text()).toMatch(/^\u001b\[2mread {6}\u001b\[22m8 files → 9 records +\u001b\[2m0\.0 s\u001b\[22m\n$/);
  });
});

describe("formatDuration", () => {
  it("gives the examples of its docstring", () => {
    expect(formatDuration(640)).toBe("0.6 s");
    expect(formatDuration(125_000)).toBe("2 min 5 s");
  });

  it("never shows ten seconds with a tenth, nor sixty seconds", () => {
    expect([9949, 9950, 59_499, 59_500, 119_700].map(formatDuration)).toEqual([
      "9.9 s",
      "10 s",
      "59 s",
      "1 min 0 s",
      "2 min 0 s",
    ]);
  });
});
