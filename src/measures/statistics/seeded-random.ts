/**
 * A source of random numbers that gives the same numbers for the same name, on every machine. Whatever needs chance (a
 * bootstrap, say) names its stream after what it is about, so that no figure moves when another is worked out or not.
 * The generator is "small fast counter" of 32 bits (Doty-Humphrey, PractRand), started from hashes of the name.
 *
 * @param name of the stream, such as "season/invented-terrestris"
 * @returns a function that gives the next number, from 0 up to, not including, 1
 * @example seededRandom("a")() === seededRandom("a")() // => true
 */
export function seededRandom(name: string): () => number {
  let a = hashOf(name);
  let b = hashOf(`${name}/second`);
  let c = hashOf(`${name}/third`);
  let counter = 1;
  const next = (): number => {
    const sum = (((a + b) | 0) + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = (((c << 21) | (c >>> 11)) + sum) | 0;
    return (sum >>> 0) / 4_294_967_296;
  };
  for (let i = 0; i < 15; i += 1) next();
  return next;
}

/** Hash of a text to a whole number of 32 bits (Fowler–Noll–Vo 1a). */
function hashOf(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i += 1) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return hash >>> 0;
}
