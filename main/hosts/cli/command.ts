import { existsSync } from 'node:fs';
import type { ParseArgsOptionsConfig } from 'node:util';
import { type Fault, faultLine } from '../../../shared/contract/fault.ts';

/** Exit statuses: 0 nothing breaks; 1 something breaks or is refused for cause; 2 the command or its input is wrong. */
export type ExitStatus = 0 | 1 | 2;

/** Where a command writes; tests pass their own. */
export interface Terminal {
  out(text: string): void;
  error(text: string): void;
}

export interface Command {
  name: string;
  /** `check DOSSIER|LIBRARY [--json]` */
  usage: string;
  /** One sentence */
  summary: string;
  /** Option name → what it does, for the help */
  optionHelp: Readonly<Record<string, string>>;
  options: ParseArgsOptionsConfig;
  /** How many paths the command takes */
  positionals: number;
  run(input: CommandInput, terminal: Terminal): Promise<ExitStatus>;
}

export interface CommandInput {
  positionals: readonly string[];
  values: Readonly<Record<string, string | boolean | undefined>>;
}

export function text(input: CommandInput, name: string): string | undefined {
  const value = input.values[name];
  return typeof value === 'string' ? value : undefined;
}

/** An option the command cannot do without; undefined after a sentence on stderr. */
export function required(input: CommandInput, name: string, terminal: Terminal): string | undefined {
  const value = text(input, name);
  if (value === undefined || value === '') {
    terminal.error(`--${name} is missing. Say what it is, or see the help with --help.\n`);
    return undefined;
  }
  return value;
}

/** The file that an option names and that must not exist yet; undefined after a sentence on stderr. */
export function requiredNewFile(
  input: CommandInput,
  name: string,
  inTheWay: Pick<Fault, 'sentence' | 'mend'>,
  terminal: Terminal,
): string | undefined {
  const file = required(input, name, terminal);
  if (file === undefined || !existsSync(file)) return file;
  report([{ code: 'refused', ...inTheWay, place: { file } }], terminal);
  return undefined;
}

const mostFaults = 50;

/** Faults on stderr, one a line, and the status of a wrong input. */
export function report(faults: readonly Fault[], terminal: Terminal): ExitStatus {
  for (const fault of faults.slice(0, mostFaults)) terminal.error(`${faultLine(fault)}\n`);
  if (faults.length > mostFaults) terminal.error(`… and ${faults.length - mostFaults} more.\n`);
  return 2;
}

export function helpOf(command: Command): string {
  const options = Object.entries(command.optionHelp);
  const width = Math.max(0, ...options.map(([name]) => name.length));
  return [
    `nitproof ${command.usage}`,
    '',
    command.summary,
    ...(options.length > 0 ? ['', ...options.map(([name, what]) => `  ${name.padEnd(width)}  ${what}`)] : []),
    '',
    'Exit status: 0 nothing breaks, 1 something breaks or is refused for cause, 2 wrong command or input, nothing changed.',
    '',
  ].join('\n');
}
