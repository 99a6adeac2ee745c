import { builtOptions, runElectronHost } from './electron.ts';

await runElectronHost(builtOptions(import.meta.url, process.argv.slice(1)));
