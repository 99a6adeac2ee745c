import { readFileSync } from 'node:fs';
import { join } from 'node:path';

const demo = join(import.meta.dirname, '..', '..', '..', 'main', 'demo', 'dossier', 'articles');

/** Words that claim nothing that a reading could settle. */
const calm = [
  'The crate came on a wet morning and the courier would not take the stairs.',
  'We set the stand together on the kitchen floor while the kettle sang.',
  'Somebody had left a note in the box with good wishes and a drawing of a lamp.',
  'The room has a window to the garden, a shelf of old maps and a chair that creaks.',
  'After supper the family argued about what to watch and settled for a film about bees.',
  'The remote found its place under a cushion and stayed there until the weekend.',
  'A neighbour came by, sat down for a moment and left when the credits rolled.',
  'It rained again, so we looked at the menus and wrote down where everything lives.',
];

/** The demo's long review three times and more among calm prose: about `words` words, some 200 claims. */
export function longArticle(words: number): string {
  const review = readFileSync(join(demo, 'hearth-55.md'), 'utf8').trim().split('\n\n').slice(1);
  const claiming = [review, review, review, review.slice(0, 7)].flat();
  const count = (text: string) => text.split(/\s+/).length;
  const missing = words - count(claiming.join(' '));
  const paragraphs: string[] = [];
  let written = 0;
  let turn = 0;
  claiming.forEach((paragraph, index) => {
    paragraphs.push(paragraph);
    const due = (missing * (index + 1)) / claiming.length;
    while (written < due) {
      const filler = Array.from({ length: 5 }, () => calm[turn++ % calm.length]).join(' ');
      paragraphs.push(filler);
      written += count(filler);
    }
  });
  return `# A long look at one hearth\n\n${paragraphs.join('\n\n')}\n`;
}
