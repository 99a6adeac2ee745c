import { basename } from 'node:path';
import { expect, test } from 'vitest';
import { judgeReviews, reviewFolders } from './reviews.ts';
import { sumOf } from './scoring.ts';

/** Reached, and not to be lost again: the share of the expected claims whose verdict is right. */
const floors: Readonly<Record<string, number>> = {
  'anchor-65': 0.97,
  'ashlar-55': 0.94,
  'ashlar-55-online': 0.98,
  'banner-55': 0.95,
  'barrow-55': 0.92,
  'bastion-65': 0.98,
  'bittern-65': 0.95,
  'brindle-55': 0.88,
  'brindle-55-versus': 0.98,
  'cairn-65': 0.98,
  'cobalt-55': 0.75,
  'compass-77': 0.94,
  'copper-55': 0.92,
  'copse-65': 0.92,
  'cordwain-55': 0.91,
  'cordwain-55-advice': 0.93,
  'crane-55': 0.86,
  'dunlin-77': 0.88,
  'ember-77': 0.92,
  'fennick-77': 0.96,
  'fennick-77-buyer': 0.88,
  'ferry-75': 0.98,
  'fresco-77': 0.98,
  'gannet-65': 0.97,
  'gorse-75': 0.96,
  'hamlet-55': 0.97,
  'harrow-77': 0.92,
  'harrow-77-column': 0.93,
  'harrow-77-pages': 0.91,
  'juniper-55': 0.96,
  'latch-65': 0.85,
  'ledger-50': 0.9,
  'linnet-55': 0.96,
  'linnet-55-group': 0.91,
  'linnet-55-video': 0.91,
  'lintel-55': 0.95,
  'lintern-65': 0.94,
  'lodestar-55': 0.86,
  'lumber-55': 0.88,
  'mallow-55': 0.88,
  'mallow-55-bench': 0.94,
  'mallow-55-page': 0.91,
  'meadow-50': 0.98,
  'merrow-65': 0.93,
  'ostrel-77': 0.89,
  'pavilion-77': 0.98,
  'pennant-65': 0.86,
  'pillar-55': 0.95,
  'quill-65': 0.89,
  'quill-65-trade': 0.96,
  'rushlight-55': 0.96,
  'rushlight-55-blog': 0.88,
  'rushlight-55-script': 0.88,
  'sable-55': 0.91,
  'saddle-65': 0.9,
  'saffron-65': 0.86,
  'sedge-55': 0.96,
  'sedge-65': 0.86,
  'sedge-65-household': 0.91,
  'sedge-65-verdict': 0.87,
  'skerry-65': 0.94,
  'skerry-65-letter': 0.82,
  'sonnet-65': 0.93,
  'sparrow-65': 0.73,
  'tallyman-55': 0.92,
  'tamarick-linnet-55': 0.95,
  'tarn-65': 0.86,
  'thorn-65': 0.93,
  'thrift-55': 0.98,
  'tiller-65': 0.98,
  'tinder-65': 0.93,
  'vesper-55': 0.97,
  'vesper-55-feature': 0.93,
  'vesper-55-museum': 0.95,
  'weaver-55': 0.9,
  'wicket-77': 0.93,
};

test.each(reviewFolders().map((folder) => [basename(folder), folder] as const))(
  'the review %s keeps its floor, and nothing in it holds wrongly',
  async (name, folder) => {
    const outcomes = await judgeReviews(folder);
    const wrong = outcomes.flatMap(({ row, found, wrongHolds }) =>
      wrongHolds.map((at) => `${row.text}: ${found[at]!.text}`),
    );
    expect(wrong).toEqual([]);
    const { expected, right } = sumOf(outcomes);
    expect(floors[name]).toBeDefined();
    expect(right / expected).toBeGreaterThanOrEqual(floors[name]!);
  },
);
