import { describe, expect, it, vi } from 'vitest';
import {
  freshTour,
  nextStep,
  rememberedTour,
  type Sight,
  type Tour,
  tourAfter,
  tourArticle,
  tourSteps,
} from '../../../app/tour/tourState.ts';
import { keysElsewhere, piecesOf, stepWords, withTitle } from '../../../app/tour/tourWords.ts';

const nothing: Sight = {
  room: 'shelf',
  articles: ['hearth-55', tourArticle],
  article: null,
  wentToProblem: false,
  isInProof: false,
  counts: null,
  run: null,
};
const reading = { ...nothing, room: 'draft', article: tourArticle, counts: { problems: 9, accepted: 0 } };
const saw = (tour: Tour, ...sights: Sight[]) =>
  sights.reduce((before, sight) => tourAfter(before, { type: 'saw', sight }), tour);

describe('the first steps', () => {
  it('are ticked one after another as the window shows them taken', () => {
    const sights: Sight[] = [
      reading,
      { ...reading, wentToProblem: true },
      { ...reading, isInProof: true },
      { ...reading, counts: { problems: 8, accepted: 0 } },
      { ...nothing, room: 'bench', run: 'sdr-studio-delivered' },
      { ...nothing, room: 'desk' },
      { ...reading, article: 'my-own' },
    ];
    let tour = freshTour;
    const asked = sights.map((sight) => {
      const step = nextStep(tour);
      tour = saw(tour, sight);
      return step;
    });
    expect(asked).toEqual(tourSteps);
    expect([tour.state, nextStep(tour), tour.done]).toEqual(['finished', null, tourSteps]);
  });

  it('tick nothing that was only looked at', () => {
    const tour = saw(freshTour, nothing, reading, { ...reading, counts: null }, reading);
    expect(tour.done).toEqual(['open']);
    expect(saw(tour, { ...nothing, room: 'bench' }).done).toEqual(['open']);
    expect(saw(tour, { ...reading, article: 'hearth-55', wentToProblem: true }).done).toEqual(['open']);
  });

  it('count a sentence as settled when a problem went or a proof was accepted, not when one came', () => {
    const opened = saw(freshTour, reading);
    const worse = saw(opened, { ...reading, counts: { problems: 11, accepted: 0 } });
    expect(worse.done).toEqual(['open']);
    expect(saw(worse, { ...reading, counts: { problems: 10, accepted: 0 } }).done).toContain('settle');
    expect(saw(opened, { ...reading, counts: { problems: 9, accepted: 1 } }).done).toContain('settle');
  });

  it('do not take a proof that was accepted before for the newcomer’s', () => {
    const sight = { ...reading, counts: { problems: 9, accepted: 3 } };
    expect(saw(freshTour, sight, sight).done).toEqual(['open']);
  });

  it('tick a later step that was taken first and still ask for the earlier one', () => {
    const tour = saw(freshTour, { ...nothing, room: 'desk' });
    expect([tour.done, nextStep(tour)]).toEqual([['desk'], 'open']);
  });

  it('stay the same object when nothing happened', () => {
    const tour = saw(freshTour, reading);
    expect(saw(tour, reading)).toBe(tour);
  });

  it('can be skipped one by one, ended and begun again', () => {
    const skipped = tourAfter(freshTour, { type: 'skip' });
    expect([nextStep(skipped), skipped.done]).toEqual(['problem', []]);
    const ended = tourAfter(skipped, { type: 'end' });
    expect([ended.state, nextStep(ended), saw(ended, reading)]).toEqual(['ended', null, ended]);
    // A window that has not heard of it yet still has the lower number.
    expect([skipped.words, ended.words]).toEqual([0, 1]);
    expect(tourAfter(ended, { type: 'begin' })).toEqual({ ...freshTour, words: ended.words + 1 });
    const all = tourSteps.reduce((tour) => tourAfter(tour, { type: 'skip' }), freshTour);
    expect([all.state, all.done]).toEqual(['finished', []]);
    expect(tourAfter(all, { type: 'end' }).state).toBe('ended');
  });

  it('come back as they were remembered, and fresh from what is no memory of them', () => {
    const tour = saw(freshTour, reading, { ...reading, wentToProblem: true });
    expect(rememberedTour(JSON.stringify(tour))).toEqual(tour);
    expect(rememberedTour('{"state":"ended"}')).toEqual({ ...freshTour, state: 'ended' });
    for (const text of [null, '', '{', '3', '{"state":"odd"}'])
      expect(rememberedTour(text)).toEqual(freshTour);
    expect(rememberedTour('{"state":"running","done":["fly","desk"],"before":{"problems":"x"}}')).toEqual({
      ...freshTour,
      done: ['desk'],
    });
  });
});

describe('the words of the first steps', () => {
  it('name the article and the letters that find it', () => {
    expect(withTitle(stepWords.open.ask, 'Thin, quick')).toBe(
      'Open “Thin, quick”: mistakes are planted in it.',
    );
    expect(withTitle(stepWords.open.how, 'Thin, quick')).toContain('type “thin”');
    expect(piecesOf('`a.b` goes, `c.d` too')).toEqual([
      { command: 'a.b' },
      { text: ' goes, ' },
      { command: 'c.d' },
      { text: ' too' },
    ]);
  });

  it('print the keys that the commands have', async () => {
    vi.stubGlobal('window', {
      nitproof: { ask: vi.fn(), subscribe: vi.fn() },
      matchMedia: vi.fn(),
      location: { hash: '' },
      addEventListener: vi.fn(),
    });
    vi.stubGlobal('localStorage', { getItem: () => null, setItem: vi.fn(), removeItem: vi.fn() });
    const { shellCommands } = await import('../../../app/shell/shellCommands.ts');
    const { draftCommands } = await import('../../../app/draft/draftCommands.ts');
    const commands = [...shellCommands, ...draftCommands];
    const named = Object.values(stepWords).flatMap(({ how }) =>
      piecesOf(how).flatMap((piece) => ('command' in piece ? [piece.command] : [])),
    );
    expect(named.length).toBeGreaterThan(8);
    for (const id of named) expect(commands.find((command) => command.id === id)?.key).toBeTruthy();
    for (const [id, key] of Object.entries(keysElsewhere))
      expect([id, draftCommands.find((command) => command.id === id)?.key]).toEqual([id, key]);
  });
});
