import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { createServer } from 'node:net';

const HOST = '127.0.0.1';

export function address(port: number): string {
  return `http://${HOST}:${port}/`;
}

/** The command that serves `folder` at `address(port)`, to be run from the project's folder. */
export function previewCommand(port: number, folder = 'dist'): [string, ...string[]] {
  const vite = ['node_modules/vite/bin/vite.js', 'preview', '--outDir', folder];
  return ['node', ...vite, '--host', HOST, '--port', String(port), '--strictPort'];
}

/** A server of the built app that a test can stop, to be without one as in a workshop. */
export interface Server {
  readonly url: string;
  stop(): Promise<void>;
}

/** Serves the built app, or the copy of it in `folder`. */
export async function startServer(folder?: string): Promise<Server> {
  const port = await freePort();
  const [program, ...args] = previewCommand(port, folder);
  const child = spawn(program, args, { stdio: 'ignore' });
  await answering(address(port), child);
  return { url: address(port), stop: () => stop(child) };
}

async function stop(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const gone = once(child, 'exit');
  child.kill('SIGKILL');
  await gone;
}

async function answering(url: string, child: ChildProcess): Promise<void> {
  while (child.exitCode === null) {
    const answer = await fetch(url).catch(() => undefined);
    if (answer?.ok) return;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error(`The server for ${url} ended with code ${child.exitCode}.`);
}

/** A port that no one listens on now. */
async function freePort(): Promise<number> {
  const probe = createServer().listen(0, HOST);
  await once(probe, 'listening');
  const found = probe.address();
  probe.close();
  await once(probe, 'close');
  if (found === null || typeof found === 'string') throw new Error('No port is free.');
  return found.port;
}
