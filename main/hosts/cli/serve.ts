import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { openWorkbench } from '../../openWorkbench.ts';
import { serveLoopback } from '../loopback.ts';
import { type Command, report, text } from './command.ts';

const projectFolder = join(import.meta.dirname, '..', '..', '..');

export const serveCommand: Command = {
  name: 'serve',
  usage: 'serve [--library FILE] [--port N]',
  summary: 'Opens the window in a browser on this machine only.',
  optionHelp: {
    '--library FILE': 'the library (default: the demo)',
    '--port N': 'the port on 127.0.0.1 (default: any free one)',
  },
  options: { library: { type: 'string' }, port: { type: 'string' } },
  positionals: 0,
  async run(input, terminal) {
    const port = Number(text(input, 'port') ?? 0);
    if (!Number.isInteger(port) || port < 0 || port > 65535) {
      terminal.error(`--port is a whole number up to 65535, not "${text(input, 'port')}".\n`);
      return 2;
    }
    const appFolder = join(projectFolder, 'dist', 'app');
    if (!existsSync(join(appFolder, 'index.html'))) {
      terminal.error('The window is not built yet. Run "npm run build" first.\n');
      return 2;
    }
    const opened = await openWorkbench({
      library: text(input, 'library') ?? join(projectFolder, '.data', 'demo.sqlite'),
      demoDossier: join(projectFolder, 'main', 'demo', 'dossier'),
    });
    if (!opened.ok) return report(opened.faults, terminal);
    const host = await listen(opened.value, appFolder, port);
    if (host === null) {
      await opened.value.close();
      terminal.error(`Port ${port} is taken. Choose another, or leave --port out.\n`);
      return 2;
    }
    terminal.out(`Nitproof opens in a browser on this machine; the link works once: ${host.oneTimeLink()}\n`);
    await new Promise<void>((resolve) => {
      process.once('SIGINT', resolve);
      process.once('SIGTERM', resolve);
    });
    await host.close();
    await opened.value.close();
    return 0;
  },
};

async function listen(
  workbench: Parameters<typeof serveLoopback>[0]['workbench'],
  appFolder: string,
  port: number,
): Promise<Awaited<ReturnType<typeof serveLoopback>> | null> {
  try {
    return await serveLoopback({ workbench, appFolder, port });
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    if (code === 'EADDRINUSE' || code === 'EACCES') return null;
    throw error;
  }
}
