import { parseArgs } from 'node:util';
import { backupCommand } from './cli/backup.ts';

import { checkCommand } from './cli/check.ts';
import { type Command, type CommandInput, type ExitStatus, helpOf, type Terminal } from './cli/command.ts';
import { exportCommand } from './cli/export.ts';
import { importCommand } from './cli/import.ts';
import { metricsCommand } from './cli/metrics.ts';
import { releaseCommand } from './cli/release.ts';
import { restoreCommand } from './cli/restore.ts';
import { serveCommand } from './cli/serve.ts';
import { spokenCommand } from './cli/spoken.ts';
import { verifyCommand } from './cli/verify.ts';

const commands: readonly Command[] = [
  checkCommand,
  importCommand,
  exportCommand,
  metricsCommand,
  serveCommand,
  verifyCommand,
  backupCommand,
  restoreCommand,
  releaseCommand,
  spokenCommand,
];

/** Runs one command line (without `node` and the script). Never throws; mistakes of ours end in one sentence. */
export async function runCommandLine(args: readonly string[], terminal: Terminal): Promise<ExitStatus> {
  const [name, ...rest] = args;
  if (name === undefined || name === '--help' || name === '-h' || name === 'help') {
    const command = commands.find((known) => known.name === rest[0]);
    terminal.out(command === undefined ? overview() : helpOf(command));
    return name === undefined ? 2 : 0;
  }
  const command = commands.find((known) => known.name === name);
  if (command === undefined) {
    terminal.error(
      `There is no command "${name}". The commands are ${commands.map((known) => known.name).join(', ')}.\n`,
    );
    return 2;
  }
  let input: CommandInput;
  try {
    const parsed = parseArgs({
      args: rest,
      options: { ...command.options, help: { type: 'boolean', short: 'h' } },
      allowPositionals: true,
    });
    input = { positionals: parsed.positionals, values: parsed.values as CommandInput['values'] };
  } catch (error) {
    terminal.error(`${(error as Error).message.split('\n')[0]} See "nitproof ${name} --help".\n`);
    return 2;
  }
  if (input.values.help === true) {
    terminal.out(helpOf(command));
    return 0;
  }
  if (input.positionals.length !== command.positionals) {
    const wanted =
      command.positionals === 0 ? 'no path' : command.positionals === 1 ? 'one path' : 'two paths';
    terminal.error(`${name} takes ${wanted}, not ${input.positionals.length}: nitproof ${command.usage}\n`);
    return 2;
  }
  try {
    return await command.run(input, terminal);
  } catch (error) {
    terminal.error(`Something went wrong inside Nitproof: ${(error as Error).message}\n`);
    return 2;
  }
}

function overview(): string {
  const width = Math.max(...commands.map(({ name }) => name.length));
  return [
    'nitproof COMMAND … ties every claim of a television review to the measurement behind it.',
    '',
    ...commands.map(({ name, summary }) => `  ${name.padEnd(width)}  ${summary}`),
    '',
    '"nitproof COMMAND --help" says more.',
    '',
  ].join('\n');
}

if (import.meta.main) {
  // A reader such as `head` that has seen enough closes the pipe; that is no error.
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
    process.exit();
  });
  process.exitCode = await runCommandLine(process.argv.slice(2), {
    out: (text) => process.stdout.write(text),
    error: (text) => process.stderr.write(text),
  });
}
