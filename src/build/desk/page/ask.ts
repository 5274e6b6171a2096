/** The path everything of this run stands under; it holds the token, which is kept nowhere else. */
export const AT = `/${location.pathname.split("/")[1] ?? ""}/`;

const TOKEN = AT.slice(1, -1);

/** What the desk refused, in words for the person. */
export class Refused extends Error {}

/**
 * Asks the desk.
 *
 * @param path behind `api/`, such as "record/12"
 * @throws {Refused} with the desk's words where it does not answer
 * @example await ask<RecordAnswer>("record/12")
 */
export function ask<Answer>(path: string): Promise<Answer> {
  return exchange(path, {});
}

/** Sends the desk something to write. */
export function send<Answer>(path: string, body: unknown): Promise<Answer> {
  return exchange(path, {
    method: "POST",
    body: JSON.stringify(body),
    headers: { "content-type": "application/json" },
  });
}

async function exchange<Answer>(path: string, { headers, ...options }: RequestInit): Promise<Answer> {
  let response: Response;
  try {
    response = await fetch(`${AT}api/${path}`, {
      ...options,
      headers: { ...(headers as Record<string, string> | undefined), "x-desk-token": TOKEN },
      credentials: "omit",
    });
  } catch {
    throw new Refused("The desk does not answer: see whether it still runs in the terminal.");
  }
  if (!response.ok) throw new Refused((await response.text()).trim());
  return (await response.json()) as Answer;
}
