/**
 * A module of about `bytes` bytes that is parsed and evaluated whole: functions with branches, loops and text, each
 * called once, as a program's modules are when they load. Marks its end with an element.
 */
export function sameSizeScript(bytes: number): string {
  const parts: string[] = ['const table = new Map();\n'];
  let size = parts[0]!.length;
  for (let index = 0; size < bytes; index += 1) {
    const part = `function part${index}(start, names) {
  const found = { name: 'part ${index}', sum: 0, words: names.map((name) => name + ' ${index * 7919}') };
  for (let step = 0; step < 6; step += 1) {
    if ((start + step) % 3 === 0) found.sum += step * ${index % 97};
    else if (step > 4) found.words.push(String(found.sum));
    else found.sum -= Math.sqrt(step + ${index % 13});
  }
  return { ...found, again: (other) => (other > found.sum ? found.words.join(', ') : found.name.slice(2)) };
}
table.set('part ${index}', part${index}(${index}, ['holds', 'breaks', 'close', 'stale']));
`;
    parts.push(part);
    size += part.length;
  }
  parts.push(
    "const end = document.createElement('p'); end.id = 'done'; end.textContent = table.size; document.body.append(end);\n",
  );
  return parts.join('');
}
