import type { Fault } from './fault.ts';

/** One line for a terminal or a message: `file:line:column: sentence mend`. */
export function faultLine(fault: Fault): string {
  const { file, line, column } = fault.place ?? {};
  const where = [file, line, column].filter((part) => part !== undefined).join(':');
  return [where && `${where}:`, fault.sentence, fault.mend].filter(Boolean).join(' ');
}
