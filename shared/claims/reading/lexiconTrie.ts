import type { NamedUnit, ReadingContext } from '../../contract/articleText.ts';
import type { House } from '../../contract/house.ts';
import type { Meaning, MeaningKind } from './items.ts';
import * as claimWords from './lexicon/claims.ts';
import * as conditionWords from './lexicon/conditions.ts';
import { factWords, formatWords, panelWords, resolutionWords } from './lexicon/facts.ts';
import * as grammar from './lexicon/grammar.ts';
import { diagramWords, gamutWords, hueWords, quantityWords, toneWords } from './lexicon/quantities.ts';
import { expandPhrases, PhraseTrie, wordsOf } from './phraseTrie.ts';

export type Lexicon = PhraseTrie<Meaning>;

function addLines(trie: Lexicon, kind: MeaningKind, key: string, lines: string, data?: unknown): void {
  const meaning: Meaning = data === undefined ? { kind, key } : { kind, key, data };
  for (const words of expandPhrases(lines)) trie.add(words, meaning);
}

function addAll(trie: Lexicon, kind: MeaningKind, entries: Readonly<Record<string, string>>): void {
  for (const [key, lines] of Object.entries(entries)) addLines(trie, kind, key, lines);
}

function addHouse(trie: Lexicon, house: House): void {
  for (const [phrase, range] of Object.entries(house.severities)) {
    const meaning = { kind: 'severity' as const, key: phrase, data: range };
    trie.add(wordsOf(phrase), meaning, 'front');
    if (/\bha(?:ve|s) to\b/.test(phrase))
      trie.add(wordsOf(phrase.replace(/\bha(?:ve|s) to\b/, 'had to')), meaning, 'front');
    // "Only for a trained eye", "only a trained eye will find it" are the same word of the house.
    if (phrase.includes('to a trained eye'))
      for (const other of ['for a trained', 'a trained'])
        trie.add(wordsOf(phrase.replace('to a trained', other)), meaning, 'front');
  }
  for (const [phrase, size] of Object.entries(house.intensities))
    trie.add(wordsOf(phrase), { kind: 'intensity', key: size }, 'front');
  for (const [topic, phrases] of Object.entries(house.topics))
    for (const phrase of phrases) trie.add(wordsOf(phrase), { kind: 'topic', key: topic }, 'front');
  for (const [phrase, meaning] of Object.entries(house.adjectives))
    trie.add(wordsOf(phrase), { kind: 'adjective', key: phrase.toLowerCase(), data: meaning }, 'front');
}

/** The model's words without its size: "Hearth" of "Hearth 55", "Plain" of "Plain 50". */
function stemOf(unit: NamedUnit): string[] {
  const words = wordsOf(unit.model);
  const inches = unit.diagonalInches === undefined ? undefined : String(unit.diagonalInches);
  const stem = words.filter((word) => word !== inches);
  return stem.length > 0 ? stem : words;
}

/**
 * Names of units: maker, model, both, and the model without its size. A name that several units share is kept
 * as `a|b`; the reader resolves or asks.
 */
function addUnits(trie: Lexicon, context: ReadingContext): void {
  const names = new Map<string, { words: string[]; ids: string[]; kind: MeaningKind }>();
  const add = (words: string[], id: string, kind: MeaningKind) => {
    if (words.length === 0) return;
    const key = words.join(' ');
    const entry = names.get(key) ?? { words, ids: [], kind };
    if (!entry.ids.includes(id)) entry.ids.push(id);
    if (kind === 'unit') entry.kind = 'unit';
    names.set(key, entry);
  };
  for (const unit of context.units) {
    const maker = wordsOf(unit.maker);
    const model = wordsOf(unit.model);
    const stem = stemOf(unit);
    add([...maker, ...model], unit.id, 'unit');
    if (model.length > 1 || /[a-z]{3}|\d/i.test(model[0] ?? '')) add(model, unit.id, 'unit');
    add([...maker, ...stem], unit.id, 'unit');
    if (stem.some((word) => /[a-z]{3}/i.test(word))) add(stem, unit.id, 'unit');
    add(maker, unit.id, 'maker');
    for (const inches of unit.variantInches) {
      const variantName = [...stem, String(inches)];
      add(variantName, `${unit.id}@${inches}`, 'unit');
      add([...maker, ...variantName], `${unit.id}@${inches}`, 'unit');
    }
  }
  for (const { words, ids, kind } of names.values()) trie.add(words, { kind, key: ids.join('|') }, 'front');
}

function addModes(trie: Lexicon, context: ReadingContext): void {
  const seen = new Set<string>();
  const modes = [
    ...context.units.flatMap((unit) => unit.modes.map((entry) => entry.mode)),
    ...Object.values(context.conditions ?? {}).flatMap((entry) => (entry.mode ? [entry.mode] : [])),
  ];
  for (const mode of modes) {
    if (seen.has(mode)) continue;
    seen.add(mode);
    trie.add(wordsOf(mode), { kind: 'mode', key: mode }, 'front');
  }
}

function addStatic(trie: Lexicon): void {
  addAll(trie, 'concept', quantityWords);
  addAll(trie, 'gamut', gamutWords);
  addAll(trie, 'diagram', diagramWords);
  addAll(trie, 'hue', hueWords);
  for (const [key, entry] of Object.entries(toneWords)) addLines(trie, 'tone', key, entry.phrases, entry);
  for (const [key, entry] of Object.entries(factWords))
    addLines(trie, 'fact', key, entry.phrases, entry.unit);
  for (const [key, entry] of Object.entries(panelWords))
    addLines(trie, 'panelKind', key, entry.phrases, entry.fact);
  addAll(trie, 'format', formatWords);
  addAll(trie, 'resolution', resolutionWords);
  addAll(trie, 'stage', conditionWords.stageWords);
  addAll(trie, 'signal', conditionWords.signalWords);
  addAll(trie, 'dimming', conditionWords.dimmingWords);
  addAll(trie, 'room', conditionWords.roomWords);
  addAll(trie, 'side', conditionWords.sideWords);
  addAll(trie, 'plane', conditionWords.planeWords);
  addAll(trie, 'level', conditionWords.levelWords);
  addLines(trie, 'fullScreen', '100', conditionWords.fullScreenLines);
  addLines(trie, 'lean', 'lean', claimWords.leanLines);
  addLines(trie, 'awardWord', 'award', claimWords.awardLines);
  addAll(trie, 'hedge', grammar.hedgeWords);
  addAll(trie, 'comparator', grammar.comparatorWords);
  addAll(trie, 'trailing', grammar.trailingComparators);
  addAll(trie, 'stat', grammar.statWords);
  addAll(trie, 'house', grammar.houseWords);
  addAll(trie, 'negation', grammar.negationWords);
  addAll(trie, 'verb', grammar.verbWords);
  addLines(trie, 'saying', 'maker', grammar.sayingWords);
  addLines(trie, 'gotThere', 'got', grammar.gotThereWords);
  addLines(trie, 'fellShort', 'short', grammar.fellShortWords);
  addLines(trie, 'makerWord', 'maker', grammar.makerWords);
  addAll(trie, 'pronoun', grammar.pronounWords);
  for (const [key, entry] of Object.entries(grammar.multipleWords))
    addLines(trie, 'multiple', key, entry.phrases, entry);
  for (const [word, n] of Object.entries(grammar.ordinalWords))
    trie.add(word.split(' '), { kind: 'ordinal', key: String(n) });
  for (const [key, entry] of Object.entries(grammar.unitWords))
    addLines(trie, 'measure', key, entry.phrases, entry);
  for (const [symbol, code] of Object.entries(grammar.currencySymbols))
    trie.add([symbol], { kind: 'currency', key: code });
  for (const [key, entry] of Object.entries(claimWords.comparativeWords))
    addLines(trie, 'comparative', key, entry.phrases, entry);
  for (const [key, entry] of Object.entries(claimWords.superlativeWords))
    addLines(trie, 'superlative', key, entry.phrases, entry);
  for (const [key, entry] of Object.entries(claimWords.equativeWords))
    addLines(trie, 'equative', key, entry.phrases, entry);
  addAll(trie, 'standing', claimWords.standingWords);
  addAll(trie, 'tint', claimWords.tintWords);
  addAll(trie, 'direction', claimWords.directionWords);
  addLines(trie, 'idiom', 'idiom', claimWords.idiomLines);
  addLines(trie, 'opinion', 'opinion', claimWords.opinionWords);
  for (const month of 'january february march april may june july august september october november december'.split(
    ' ',
  ))
    trie.add([month], { kind: 'month', key: month });
}

let shipped: Lexicon | undefined;

/** The shipped words, the same for every library: put together when the first article is read. */
function shippedLexicon(): Lexicon {
  if (!shipped) {
    shipped = new PhraseTrie<Meaning>();
    addStatic(shipped);
  }
  return shipped;
}

const lexicons = new WeakMap<ReadingContext, Lexicon>();

/** The lexicon of a context, built once: the library's names and the house's words before the shipped words. */
export function lexiconOf(context: ReadingContext): Lexicon {
  let lexicon = lexicons.get(context);
  if (!lexicon) {
    lexicon = shippedLexicon().fork();
    addUnits(lexicon, context);
    addModes(lexicon, context);
    addHouse(lexicon, context.house);
    for (const award of context.awards ?? [])
      lexicon.add(wordsOf(award), { kind: 'concept', key: 'award', data: 'name' }, 'front');
    const criteria = new Set(context.units.flatMap((unit) => unit.criteria ?? []));
    for (const criterion of criteria)
      lexicon.add(wordsOf(criterion.replaceAll('-', ' ').replaceAll('.', ' ')), {
        kind: 'criterion',
        key: criterion,
      });
    lexicons.set(context, lexicon);
  }
  return lexicon;
}
