import { readFileSync, statSync } from "node:fs";
import sax, { type QualifiedTag } from "sax";

/** What is done at the beginning and the end of an element; its text is that between its own tags. */
export interface XmlWatcher {
  open(tag: QualifiedTag): void;
  close(tag: QualifiedTag, content: string): void;
}

/**
 * Reads XML with its namespaces, strictly. A document type is refused, and with it every entity it could define.
 *
 * @throws {Error} where the text is not well-formed or holds a document type
 */
export function parseXml(text: string, watcher: XmlWatcher): void {
  const open: { tag: QualifiedTag; content: string }[] = [];
  const reader = sax.parser(true, { xmlns: true });
  const add = (piece: string) => {
    const last = open.at(-1);
    if (last !== undefined) last.content += piece;
  };
  reader.onerror = (error) => {
    throw new Error(error.message.replaceAll(/\s*\n\s*/g, ", "));
  };
  reader.ondoctype = () => {
    throw new Error("it holds a document type, which is not read");
  };
  reader.ontext = add;
  reader.oncdata = add;
  reader.onopentag = (tag) => {
    open.push({ tag: tag as QualifiedTag, content: "" });
    watcher.open(tag as QualifiedTag);
  };
  reader.onclosetag = () => {
    const last = open.pop();
    if (last !== undefined) watcher.close(last.tag, last.content);
  };
  reader.write(text.replaceAll("\0", "\uFFFD")).close();
}

/** No description of an archive is longer, in bytes. */
const LONGEST = 4 * 2 ** 20;

/**
 * The text of an XML file, by its byte order mark, else by the encoding it states, else UTF-8.
 *
 * @throws {Error} where the file is too long to be a description
 */
export function readXmlText(path: string): string {
  if (statSync(path).size > LONGEST) throw new Error(`it is longer than ${LONGEST / 2 ** 20} MB`);
  const bytes = readFileSync(path);
  const mark = bytes.subarray(0, 2).toString("hex");
  if (mark === "fffe") return new TextDecoder("utf-16le").decode(bytes);
  if (mark === "feff") return new TextDecoder("utf-16be").decode(bytes);
  const stated = /^[^>]*encoding\s*=\s*["']([\w.:-]+)["']/.exec(bytes.subarray(0, 200).toString("latin1"))?.[1];
  try {
    return new TextDecoder(stated ?? "utf-8").decode(bytes);
  } catch {
    return new TextDecoder().decode(bytes);
  }
}
