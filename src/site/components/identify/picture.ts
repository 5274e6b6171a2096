import type { Media } from "../../../publishing/contracts.ts";

/** What a page needs to show a picture: the file every browser knows, and the choices. */
export interface Picture {
  readonly src: string;
  readonly type: string;
  /** `srcset` of each format; empty where the picture has one file. */
  readonly webp: string;
  readonly jpeg: string;
}

/**
 * The files of a picture as a page names them.
 *
 * @param address of a file all languages share
 * @example picture(drawing, (path) => `/${path}`).src // "/media/hind-leg.svg"
 */
export function picture({ sources }: Pick<Media, "sources">, address: (path: string) => string): Picture {
  const of = (type: string) => sources.filter((source) => source.type === type);
  const choices = (type: string) =>
    of(type)
      .map(({ path, width }) => `${address(path)} ${width}w`)
      .join(", ");
  const jpeg = of("image/jpeg");
  const plain = jpeg[0] ?? sources[0];
  return {
    src: plain === undefined ? "" : address(plain.path),
    type: plain?.type ?? "",
    webp: choices("image/webp"),
    jpeg: jpeg.length > 1 ? choices("image/jpeg") : "",
  };
}
