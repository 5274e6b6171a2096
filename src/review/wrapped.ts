/**
 * A text in lines of at most 78 characters, as plain mail wants them; a longer word stands alone.
 *
 * @param indent before every line
 * @example wrapped("a b", "  ") // => "  a b"
 */
export function wrapped(text: string, indent = ""): string {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(/\s+/)) {
    if (line !== "" && indent.length + line.length + 1 + word.length > 78) {
      lines.push(indent + line);
      line = word;
    } else line = line === "" ? word : `${line} ${word}`;
  }
  return [...lines, indent + line].join("\n");
}
