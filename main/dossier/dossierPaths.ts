import { idSchema } from '../../shared/contract/unit.ts';

/** What a file of a dossier is, by its path. */
export type KnownFile =
  | { kind: 'dossier' | 'house' | 'scoresheet' | 'protocol' | 'recipe' | 'history' }
  | { kind: 'unit' | 'observations'; unit: string }
  | { kind: 'photo'; unit: string; name: string }
  | { kind: 'run' | 'readings'; unit: string; run: string; version: number }
  | { kind: 'article' | 'markdown' | 'claims' | 'remarks'; article: string };

const fixed: Readonly<Record<string, KnownFile>> = {
  'dossier.json': { kind: 'dossier' },
  'house.json': { kind: 'house' },
  'scoresheet.json': { kind: 'scoresheet' },
  'protocol.json': { kind: 'protocol' },
  'history.jsonl': { kind: 'history' },
};
const articleKinds = {
  md: 'markdown',
  json: 'article',
  'claims.jsonld': 'claims',
  'remarks.json': 'remarks',
} as const;

/** Null: not part of the format. `badId`: the place is right, but the name is no id. */
export function recogniseFile(path: string): KnownFile | { badId: string } | null {
  if (Object.hasOwn(fixed, path)) return fixed[path]!;
  if (/^recipes\/[^/]+\.json$/.test(path)) return { kind: 'recipe' };
  const photo = /^units\/([^/]+)\/photos\/(.+)$/.exec(path);
  if (photo !== null) return withIds([photo[1]!], { kind: 'photo', unit: photo[1]!, name: photo[2]! });
  const unit = /^units\/([^/]+)\/(unit\.json|observations\.csv)$/.exec(path);
  if (unit !== null)
    return withIds([unit[1]!], {
      kind: unit[2] === 'unit.json' ? 'unit' : 'observations',
      unit: unit[1]!,
    });
  const run = /^units\/([^/]+)\/runs\/([^/]+?)(?:@([1-9]\d{0,8}))?\.(json|csv)$/.exec(path);
  if (run !== null)
    return withIds([run[1]!, run[2]!], {
      kind: run[4] === 'json' ? 'run' : 'readings',
      unit: run[1]!,
      run: run[2]!,
      version: Number(run[3] ?? 0),
    });
  const article = /^articles\/([^/]+?)\.(md|json|claims\.jsonld|remarks\.json)$/.exec(path);
  if (article === null) return null;
  return withIds([article[1]!], {
    kind: articleKinds[article[2] as keyof typeof articleKinds],
    article: article[1]!,
  });
}

function withIds(ids: readonly string[], file: KnownFile): KnownFile | { badId: string } {
  const badId = ids.find((id) => !idSchema.safeParse(id).success);
  return badId === undefined ? file : { badId };
}
