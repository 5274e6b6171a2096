import type { Server } from "node:http";
import { Mistake } from "../mistake.ts";

/** Only this machine reaches what listens here. */
const HOST = "127.0.0.1";

/**
 * Lets a server listen to this machine alone, on the first free port.
 *
 * @param first the first port to try; 0 takes any free one
 * @param tries how many ports to try, counting up
 * @returns the port
 * @throws {Mistake} when none of them is free
 * @example await listenOnFree(createServer(), 4321, 20) // => 4321
 */
export async function listenOnFree(server: Server, first: number, tries: number): Promise<number> {
  for (let port = first; port < first + tries; port++) {
    try {
      return await listen(server, port);
    } catch (error) {
      if (!(error instanceof Error && "code" in error && error.code === "EADDRINUSE")) throw error;
    }
  }
  const ports = tries === 1 ? `port ${first} is` : `ports ${first} to ${first + tries - 1} are`;
  throw new Mistake("server", `cannot start: ${ports} in use`, "name another with --port");
}

function listen(server: Server, port: number): Promise<number> {
  return new Promise((done, failed) => {
    server.once("error", failed);
    server.listen(port, HOST, () => {
      server.removeListener("error", failed);
      const address = server.address();
      done(typeof address === "object" && address !== null ? address.port : port);
    });
  });
}
