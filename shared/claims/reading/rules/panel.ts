import type { FactCheck } from '../../../contract/check.ts';
import { type Findings, propose } from '../finding.ts';
import { isWord, keyOf } from '../items.ts';
import { hasKey, type Scene } from '../scene.ts';
import { denialBefore, factConditions } from './factCheck.ts';

/** "It has an IPS panel": the kind of panel, said of the set and not of panels in general. */
export function readPanel(scene: Scene, findings: Findings): undefined {
  for (const [at, item] of scene.items.entries()) {
    const noun = scene.items[at + 1];
    if (!isWord(item, 'ips', 'va', 'oled') || !isWord(noun, 'panel', 'screen')) continue;
    const verb = scene.items
      .slice(Math.max(0, at - 3), at)
      .find((entry) => isWord(entry, 'has', 'uses', 'pairs', 'sports', 'is', 'offers', 'carries'));
    if (!verb || hasKey(scene, 'superlative') || hasKey(scene, 'comparative')) continue;
    const denial = denialBefore(scene, item);
    const check: FactCheck = {
      kind: 'fact',
      key: 'panel',
      op: 'includes',
      x: [item.text.toUpperCase()],
      conditions: factConditions(scene),
      ...(denial && { negated: true }),
    };
    propose(findings, scene, 'fact', check, [denial, verb, item, noun]);
  }
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
