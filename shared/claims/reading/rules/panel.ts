import type { FactCheck, StatedConditions } from '../../../contract/check.ts';
import { type Findings, propose } from '../finding.ts';
import { type Item, isWord, keyOf, meaningOf } from '../items.ts';
import { panelNouns, panelVerbs } from '../lexicon/facts.ts';
import { hasKey, type Scene } from '../scene.ts';
import { resolveMention } from '../units.ts';
import { splitVariant } from '../variant.ts';
import { denialBefore, factConditions } from './factCheck.ts';

const nouns = new Set(panelNouns.split('; '));
const verbs = new Set(panelVerbs.split('; '));
/** Between the verb and the kind only what describes: "is a fine 55-inch OLED", never "is as black as an OLED". */
const turning =
  /^(?:like|as|than|for|of|to|from|any|most|every|other|between|unlike|beside|against|versus|or|what|how|almost|nearly|better|because|since|if|when|where|old|older|previous|last)$/;

/** "It has an IPS panel", "it is an OLED", "with a mini-LED backlight": said of the set, not of panels in general. */
export function readPanel(scene: Scene, findings: Findings): undefined {
  if (!hasKey(scene, 'panelKind')) return;
  let said = false;
  for (const [at, item] of scene.items.entries()) {
    const kind = meaningOf(item, 'panelKind');
    if (!kind || scene.used.has(item)) continue;
    if (hasKey(scene, 'superlative') || hasKey(scene, 'comparative') || !endsHere(scene, at)) continue;
    const lead = leadOf(scene, at, said);
    if (!lead) continue;
    const noun = nouns.has(scene.items[at + 1]?.text ?? '') ? scene.items[at + 1] : undefined;
    const denial =
      denialBefore(scene, item) ??
      scene.items.slice(Math.max(0, at - 2), at).find((before) => isWord(before, 'no'));
    const check: FactCheck = {
      kind: 'fact',
      key: kind.data as string,
      op: 'includes',
      x: [kind.key],
      conditions: conditionsOf(scene, lead),
      ...(denial && { negated: true }),
    };
    propose(findings, scene, 'fact', check, [denial, lead, item, noun]);
    said = true;
  }
}

/** The kind stands before its noun or at the end of a statement: not "OLED rivals", "VA panels". */
function endsHere({ items, sentence }: Scene, at: number): boolean {
  const next = sentence[items[at]!.index + 1]?.type === 'mark' ? undefined : items[at + 1];
  return (
    next === undefined ||
    next.type === 'mark' ||
    nouns.has(next.text) ||
    keyOf(next, 'panelKind') !== undefined ||
    keyOf(next, 'dimming') !== undefined ||
    isWord(next, 'and', 'but', 'with', 'so', 'then', 'which', 'that', 'at', 'here', 'too', 'though', 'in')
  );
}

/** The verb that says it of a set, or the set's name where an earlier kind had the verb: "… and the Umbra an OLED". */
function leadOf(scene: Scene, at: number, said: boolean): Item | undefined {
  const { sentence, items } = scene;
  const own = items[at - 1];
  // "Its VA panel", "Panel: VA"
  if (isWord(own, 'its') && nouns.has(items[at + 1]?.text ?? '')) return own;
  // "The Hearth 55: a VA panel, 160 zones …"
  const { index } = items[at]!;
  const heads = isWord(sentence[index - 2], ':') && keyOf(sentence[index - 3], 'unit') !== undefined;
  if (isWord(own, 'a', 'an') && heads && nouns.has(items[at + 1]?.text ?? '')) return own;
  const colon = sentence[items[at]!.index - 1];
  if (isWord(colon, ':'))
    return sentence
      .slice(0, colon!.index)
      .some((item) => isWord(item, 'panel', 'backlight', 'the panel', 'the backlight'))
      ? colon
      : undefined;
  // "That is common with OLED": of the kind, and of no set.
  if (
    items
      .slice(Math.max(0, at - 4), at)
      .some((item) => isWord(item, 'common', 'typical', 'usual', 'normal', 'familiar', 'expected'))
  )
    return undefined;
  let first = at - 1;
  while (
    first >= 0 &&
    at - first < 7 &&
    !verbs.has(scene.items[first]!.text) &&
    !scene.units.some(({ item }) => item === scene.items[first]) &&
    scene.items[first]!.type !== 'mark' &&
    !turning.test(scene.items[first]!.text)
  )
    first -= 1;
  const lead = scene.items[first];
  if (!lead || at - first >= 7) return undefined;
  if (isWord(lead, 'and', 'with')) return said || scene.previous?.said ? lead : withVerb(scene, first);
  // "For that you get an IPS panel", and not "for £200 more you get …"
  const isForThat = isWord(items[first - 1], 'you') && isWord(items[first - 2], 'that', 'this');
  if (isWord(lead, 'get') && !isForThat) return undefined;
  if (verbs.has(lead.text)) return lead;
  return said && scene.units.some(({ item }) => item === lead) ? lead : undefined;
}

/** "It is a big set with an IPS panel": the verb stands before "with". */
function withVerb(scene: Scene, at: number): Item | undefined {
  return scene.items.slice(0, at).some((item) => verbs.has(item.text) && !isWord(item, 'and', 'with'))
    ? scene.items[at]
    : undefined;
}

/** Of two sets in a clause the one whose name stands right before the verb. */
function conditionsOf(scene: Scene, lead: Item): StatedConditions {
  const owner = scene.units.filter(({ item, role }) => role !== 'maker' && item.index <= lead.index).at(-1);
  const id = owner && resolveMention(owner, scene.carry, scene.context);
  if (!owner || id === (scene.unit ?? scene.context.own)) return factConditions(scene);
  const { unit: _unit, variantInches: _inches, ...rest } = factConditions(scene);
  if (id === undefined) return { ...rest, unmatched: 'of a set that the words name' };
  if (id === scene.context.own) return { ...rest, origin: {} };
  return { ...rest, unit: splitVariant(id).unit!, origin: { unit: 'named' } };
}

/** "an Ultra HD panel", "resolves 3840 × 2160": the panel's number of pixels. */
export function readResolution(scene: Scene, findings: Findings): undefined {
  for (const item of scene.items) {
    const resolution = keyOf(item, 'resolution');
    if (!resolution || scene.used.has(item)) continue;
    if (
      !hasKey(scene, 'fact', 'resolution') &&
      !scene.items.some((entry) =>
        isWord(
          entry,
          'panel',
          'the panel',
          'resolves',
          'native',
          'screen',
          'pixels',
          'television',
          'tv',
          'set',
        ),
      )
    )
      continue;
    propose(
      findings,
      scene,
      'fact',
      { kind: 'fact', key: 'resolution', op: '=', x: resolution, conditions: factConditions(scene) },
      [item, scene.items.find((entry) => keyOf(entry, 'fact') === 'resolution')],
    );
  }
}
