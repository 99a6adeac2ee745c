import { spawn } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { parseArgs } from 'node:util';
import open from 'open';
import { faultLine } from '../../shared/contract/index.ts';
import { openWorkbench } from '../openWorkbench.ts';
import { serveLoopback } from './loopback.ts';

/** `npm start`: the Electron window where Electron's program is installed, else the same window in a browser. */
const projectFolder = join(import.meta.dirname, '..', '..');
const { values } = parseArgs({ options: { library: { type: 'string' }, port: { type: 'string' } } });
const electronProgram = findElectron(join(projectFolder, 'node_modules', 'electron'));

if (electronProgram !== null && hasDisplay()) {
  const args = [projectFolder, ...(values.library === undefined ? [] : [`--library=${values.library}`])];
  const child = spawn(electronProgram, args, { stdio: 'inherit' });
  child.on('exit', (code) => process.exit(code ?? 0));
} else {
  await serveInBrowser();
}

async function serveInBrowser(): Promise<void> {
  const opened = await openWorkbench({
    library: values.library ?? join(projectFolder, '.data', 'demo.sqlite'),
    demoDossier: join(projectFolder, 'main', 'demo', 'dossier'),
  });
  if (!opened.ok) {
    console.error(opened.faults.map(faultLine).join('\n'));
    process.exit(2);
  }
  const host = await serveLoopback({
    workbench: opened.value,
    appFolder: join(projectFolder, 'dist', 'app'),
    port: Number(values.port ?? 0),
  });
  const link = host.oneTimeLink();
  const why =
    electronProgram === null ? 'Electron’s program is not installed here' : 'There is no display here';
  if (hasDisplay() && process.env.CI === undefined) {
    console.log(`${why}, so Nitproof opens in your browser; the link works once: ${link}`);
    await open(link);
  } else {
    console.log(`${why}, so open Nitproof in a browser; the link works once: ${link}`);
  }
  if (process.stdin.isTTY) {
    createInterface({ input: process.stdin }).on('line', () => console.log(host.oneTimeLink()));
  }
  const stop = async () => {
    await host.close();
    await opened.value.close();
    process.exit(0);
  };
  process.on('SIGINT', stop);
  process.on('SIGTERM', stop);
}

/** The package alone is types; `path.txt` names the program once it was downloaded. */
function findElectron(packageFolder: string): string | null {
  const pathFile = join(packageFolder, 'path.txt');
  if (!existsSync(pathFile)) return null;
  const program = join(packageFolder, 'dist', readFileSync(pathFile, 'utf8').trim());
  return existsSync(program) ? program : null;
}

function hasDisplay(): boolean {
  return process.platform !== 'linux' || Boolean(process.env.DISPLAY ?? process.env.WAYLAND_DISPLAY);
}
