import type { DirectionCheck, Selector, StatedConditions } from '../../../contract/check.ts';
import { type Findings, propose, refuse } from '../finding.ts';
import { hueSaidOfGrey } from '../hueSaid.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import { isOffAxis } from '../offAxis.ts';
import { conditionsFor, operandOf } from '../operand.ts';
import { quantityById } from '../quantity.ts';
import { firstWith, hasKey, type Scene } from '../scene.ts';
import { statOf } from '../selector.ts';

function intensityOf(scene: Scene, near: Item): { size?: DirectionCheck['size']; item?: Item } {
  const candidates = scene.items.filter(
    (item) => keyOf(item, 'intensity') !== undefined && !scene.used.has(item),
  );
  const item = candidates.sort((a, b) => Math.abs(a.index - near.index) - Math.abs(b.index - near.index))[0];
  const tiny = scene.items.find(
    (entry) => isWord(entry, 'shade', 'trace', 'touch', 'tad') && entry.index < near.index,
  );
  if (item) return { size: keyOf(item, 'intensity') as DirectionCheck['size'], item };
  return tiny ? { size: 'slight', item: tiny } : {};
}

/** The stretch of the axis that the clause names, in words or numbers; else the default of the metric. */
function region(scene: Scene, fallback: Partial<Selector>): Selector {
  const axis = scene.axes.find((entry) => entry.kind === 'stimulus');
  if (!axis) return { stat: 'average', ...fallback };
  if (axis.at !== undefined) return { stat: 'at', at: axis.at };
  return {
    stat: 'average',
    ...(axis.from !== undefined && { from: axis.from, ...(!axis.fromIncluded && { fromIncluded: false }) }),
    ...(axis.to !== undefined && { to: axis.to, ...(!axis.toIncluded && { toIncluded: false }) }),
  };
}

function negationBefore(scene: Scene, item: Item): Item | undefined {
  return scene.items.find(
    (entry) =>
      entry.index < item.index &&
      !scene.used.has(entry) &&
      keyOf(entry, 'hedge') === undefined &&
      (keyOf(entry, 'negation') !== undefined || ['none', 'never'].includes(keyOf(entry, 'stat') ?? '')),
  );
}

function emit(
  scene: Scene,
  findings: Findings,
  id: string,
  name: string,
  selector: Selector,
  main: Item,
  words: (Item | undefined)[],
  conditions?: StatedConditions,
  denied?: Item,
): undefined {
  const quantity = quantityById(id);
  const { size, item: sizeItem } = name === 'none' || name === 'on-target' ? {} : intensityOf(scene, main);
  const negation = denied ?? negationBefore(scene, main);
  // The level of a roll-off is a claim of its own.
  const axes = id === 'eotf.rolloff' ? [] : scene.axes.filter((axis) => axis.kind === 'stimulus');
  const axisItems = axes.flatMap((axis) => axis.items);
  propose(
    findings,
    scene,
    'direction',
    {
      kind: 'direction',
      operand: operandOf(scene, quantity, selector, conditions),
      name,
      ...(size && { size }),
      ...(negation && { negated: true }),
    },
    [main, ...words, sizeItem, negation, ...axisItems],
  );
}

/** "Red is oversaturated at every step": not the average, but the level nearest to the target is past the limit. */
function emitEvery(
  scene: Scene,
  findings: Findings,
  id: string,
  key: 'over' | 'under',
  item: Item,
  hue: Item,
): undefined {
  const quantity = quantityById(id);
  const limit = scene.context.house.limits.saturationPercent;
  const { stat: _stat, ...part } = region(scene, {});
  const over = key === 'over';
  propose(
    findings,
    scene,
    'direction',
    {
      kind: 'bound',
      bounds: [
        {
          operand: operandOf(scene, quantity, { ...part, stat: over ? 'min' : 'max' }),
          op: over ? '>' : '<',
          x: over ? limit : -limit,
          unit: quantity.unit,
        },
      ],
    },
    [item, hue, ...scene.items.filter((entry) => keyOf(entry, 'stat') === 'all')],
  );
}

/** Tints of the greyscale: "brighter greys take on a faint green cast", "whites lean towards yellow". */
function readTint(scene: Scene, findings: Findings): undefined {
  for (const item of scene.items) {
    if (scene.used.has(item)) continue;
    let name = keyOf(item, 'tint');
    const words: (Item | undefined)[] = [];
    const lean = keyOf(item, 'lean');
    const at = scene.items.indexOf(item);
    if (!name && lean) {
      let next = at + 1;
      while (
        isWord(scene.items[next], 'the', 'a', 'slightly', 'too', 'towards', 'toward') ||
        keyOf(scene.items[next], 'intensity')
      )
        next += 1;
      const target = scene.items[next];
      name =
        keyOf(target, 'hue') ??
        (isWord(target, 'pink', 'purple') ? 'magenta' : undefined) ??
        (keyOf(target, 'tint') as string | undefined);
      if (!name) continue;
      const subjectHue = scene.items
        .slice(0, at)
        .find((entry) => keyOf(entry, 'hue') && entry.type === 'phrase');
      if (subjectHue) {
        emit(scene, findings, `sweep.${keyOf(subjectHue, 'hue')}.hue`, name, { ...region(scene, {}) }, item, [
          target,
          subjectHue,
        ]);
        scene.used.add(target!);
        continue;
      }
      // "A hint of red" may be said of anything: only of greys it is a tint.
      if (/\bhint of$/.test(item.text)) {
        const greys = scene.items.find(
          (entry) => keyOf(entry, 'tone') || isWord(entry, 'greys', 'grey', 'whites', 'greyscale'),
        );
        if (!greys) continue;
        words.push(greys);
      }
      words.push(target);
    }
    const whole = name ? undefined : hueSaidOfGrey(scene.items, item);
    if (whole) {
      name = whole.hue;
      words.push(whole.subject);
    }
    if (!name) {
      // "a green, clearly visible cast": the hue stands apart from its noun.
      if (keyOf(item, 'concept') !== 'tint') continue;
      const hue = scene.items.slice(Math.max(0, at - 4), at + 4).find((entry) => keyOf(entry, 'hue'));
      if (!hue) {
        const negation = negationBefore(scene, item);
        if (negation) name = 'none';
        else continue;
        words.push(negation);
        scene.used.add(negation);
      } else {
        name = keyOf(hue, 'hue')!;
        words.push(hue);
      }
    }
    if (name === 'tinted') {
      const hue = scene.items[at + 1];
      if (keyOf(hue, 'hue')) {
        name = keyOf(hue, 'hue')!;
        words.push(hue);
      }
    }
    const gone = scene.items.find(
      (entry) =>
        entry.index > item.index &&
        (/\bgone$/.test(entry.text) ||
          isWord(entry, 'disappears', 'disappeared', 'vanishes', 'vanished', 'goes')),
    );
    if (gone && name !== 'none') {
      name = 'none';
      words.push(gone);
    }
    if ((gone ?? (/\bgone$/.test(item.text) || undefined)) && scene.conditions.stage === undefined) {
      refuse(findings, scene, 'direction', 'the words do not say after what it was gone', [item, ...words]);
      continue;
    }
    if (isOffAxis(scene)) {
      refuse(findings, scene, 'direction', 'tints are measured from the front only', [item, ...words]);
      continue;
    }
    const subject = scene.items.find(
      (entry) =>
        entry.index < item.index &&
        (keyOf(entry, 'tone') ||
          keyOf(entry, 'concept') === 'greyError' ||
          keyOf(entry, 'concept') === 'whitePoint' ||
          isWord(entry, 'greys', 'grey', 'whites')),
    );
    if (name === 'none' && item.text === 'neutral' && !subject) continue;
    const onlyWhite = keyOf(subject, 'concept') === 'whitePoint' && !keyOf(subject, 'tone');
    const selector: Selector = onlyWhite ? { stat: 'at', at: 100 } : region(scene, { from: 50, to: 100 });
    emit(scene, findings, 'grey.tint', name, selector, item, [...words, subject]);
  }
}

function eotfSignal(text: string, conditions: StatedConditions): StatedConditions {
  const signal = /\b(?:pq|2084)\b/.test(text)
    ? 'HDR10'
    : /\bhlg\b/.test(text)
      ? 'HLG'
      : /1886/.test(text)
        ? 'SDR'
        : undefined;
  if (!signal || (conditions.signal && conditions.origin.signal === 'named')) return conditions;
  return { ...conditions, signal, origin: { ...conditions.origin, signal: 'named' } };
}

/** Saturation, luminance, tone curve, gamma and colour temperature: over, under or on target. */
export function readDirections(scene: Scene, findings: Findings): undefined {
  readTint(scene, findings);
  const hasValue = scene.items.some(
    (item) =>
      item.number &&
      (item.number.role === undefined || item.number.role === 'value') &&
      item.number.dimension !== '',
  );
  for (const item of scene.items) {
    const key = keyOf(item, 'direction');
    if (!key || scene.used.has(item)) continue;
    if (key === 'rolls-off' || key === 'clips' || key === 'neither') {
      if (keyOf(item, 'topic') && key === 'clips' && !/^clip/.test(item.text)) continue;
      const axis = scene.axes.find((entry) => entry.kind === 'stimulus' && !entry.tone);
      const quantity = quantityById('eotf.rolloff');
      const level = axis?.from ?? axis?.at;
      if (axis && level === undefined) {
        refuse(findings, scene, 'direction', 'a curve leaves its target from a level upwards', [
          item,
          ...axis.items,
        ]);
        continue;
      }
      if (level !== undefined && axis && key !== 'neither') {
        propose(
          findings,
          scene,
          'direction',
          {
            kind: 'value',
            operand: operandOf(scene, quantity, { stat: 'scalar' }),
            stated: { x: level, low: level - 0.5, high: level + 0.5, unit: '%', place: 1 },
          },
          axis.items,
        );
      }
      emit(scene, findings, 'eotf.rolloff', key, { stat: 'scalar' }, item, []);
      continue;
    }
    if (/warm|cool/.test(item.text) && key === 'on-target') {
      emit(scene, findings, 'white.cct', key, { stat: 'scalar' }, item, []);
      continue;
    }
    // "With a cold", "a chill": an ailment.
    if (isWord(item, 'cold') && isWord(scene.items[scene.items.indexOf(item) - 1], 'a', 'the')) continue;
    if (key === 'warm' || key === 'cool') {
      const subject = scene.items.find(
        (entry) =>
          ['cct', 'whitePoint'].includes(keyOf(entry, 'concept') ?? '') ||
          isWord(entry, 'whites', 'picture', 'image', 'the picture', 'the image'),
      );
      if (!subject) continue;
      if (
        hasValue &&
        item.index > 0 &&
        !/side$/.test(item.text) &&
        !scene.items.some((entry) => isWord(entry, 'too'))
      )
        continue;
      emit(scene, findings, 'white.cct', key, { stat: 'scalar' }, item, [subject]);
      continue;
    }
    if (hasValue && (key === 'over' || key === 'under')) continue;
    if (item.text === 'spot on' && scene.items[scene.items.indexOf(item) + 1]?.number) continue;
    const hues = scene.items.filter((entry) => keyOf(entry, 'hue') && !scene.used.has(entry));
    const isSaturation =
      /satur|pale|vivid|rich|washed|overcooked|lively|overdone|strong|weak|mute/.test(item.text) ||
      hasKey(scene, 'concept', 'saturation');
    const isLight =
      /bright|dark|dim|light|lumin|lifted|raised|crushed/.test(item.text) ||
      hasKey(scene, 'concept', 'luminance');
    if (hues.length > 0) {
      const measure = hasKey(scene, 'concept', 'hueError')
        ? 'hue'
        : isLight && !isSaturation
          ? 'luminance'
          : 'saturation';
      // "Neither red nor green": one denial serves every hue.
      const denied = negationBefore(scene, item);
      for (const hue of hues) {
        const id = `sweep.${keyOf(hue, 'hue')}.${measure}`;
        const every =
          statOf(scene) === 'all' &&
          measure === 'saturation' &&
          (key === 'over' || key === 'under') &&
          !denied;
        if (every) {
          emitEvery(scene, findings, id, key, item, hue);
          continue;
        }
        emit(scene, findings, id, key, region(scene, {}), item, [hue], undefined, denied);
      }
      continue;
    }
    if (hasKey(scene, 'concept', 'gamma')) {
      emit(
        scene,
        findings,
        'gamma.average',
        key === 'on-target' ? key : /low|under|below|short|bright/.test(item.text) ? 'under' : 'over',
        { stat: 'scalar' },
        item,
        [firstWith(scene, 'concept', 'gamma')],
      );
      continue;
    }
    if (hasKey(scene, 'concept', 'cct')) {
      if (key === 'on-target')
        emit(scene, findings, 'white.cct', key, { stat: 'scalar' }, item, [
          firstWith(scene, 'concept', 'cct'),
        ]);
      else
        emit(
          scene,
          findings,
          'white.cct',
          /low|under|below/.test(item.text) ? 'warm' : 'cool',
          { stat: 'scalar' },
          item,
          [firstWith(scene, 'concept', 'cct')],
        );
      continue;
    }
    const white = firstWith(scene, 'concept', 'whitePoint');
    if (white && key === 'on-target') {
      emit(scene, findings, 'white.cct', key, { stat: 'scalar' }, item, [white]);
      continue;
    }
    const curve =
      firstWith(scene, 'concept', 'eotf') ??
      scene.items.find((entry) => keyOf(entry, 'tone')) ??
      (isLight
        ? scene.items.find((entry) => isWord(entry, 'the picture', 'picture', 'image', 'pictures'))
        : undefined) ??
      (/curve|pq|1886|eotf|hlg|standard|2084|signal|asked/.test(item.text) ? item : undefined);
    if (curve && !isSaturation) {
      const conditions = eotfSignal(
        `${item.text} ${scene.items.map((entry) => entry.text).join(' ')}`,
        conditionsFor(scene, quantityById('eotf.error')),
      );
      emit(scene, findings, 'eotf.error', key, region(scene, {}), item, [curve], conditions);
      continue;
    }
    if (isSaturation && /satur/.test(item.text) && key !== 'on-target') {
      refuse(findings, scene, 'direction', 'the words do not say which hue is meant', [item]);
    }
  }
}
