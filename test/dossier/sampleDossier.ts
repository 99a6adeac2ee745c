import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { onTestFinished } from 'vitest';

/** A fresh folder that goes when the test ends. */
export function freshFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'nitproof-test-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** A foreign dossier: other spaces, number texts, unknown keys, columns and files, superseded runs, a photo. */
export const foreignFiles: Readonly<Record<string, string | Buffer>> = {
  'dossier.json': '{"format":"nitproof-dossier","version":1,"made by":"a text editor"}',
  'notes.txt': 'kept\r\nas it is\n',
  'units/orrinvale-hearth-55/unit.json': `{
    "maker": "Orrinvale", "model": "Hearth 55", "size": {"diagonal_in": 55.0},
    "panel": "LCD IPS", "zones": 32, "price": {"amount": 1039.00, "currency": "GBP", "on": "2026-09-14"},
    "shelf": {"row": 3, "sticker": "0.10"}, "due_back": "2026-10-20", "returned": null,
    "facts": {"hdmi.count": {"value": 4}, "peak": [{"value": 1.0E3, "unit": "cd/m²", "by": "maker"}], "10": {"value": 1}}
  }`,
  'units/orrinvale-hearth-55/observations.csv':
    'id,severity,topic,angle,weather,note\r\nb1,1,blooming,,rain,"=SUM(1,2)"\r\nb2,0,banding,-30.50,,"said ""no"""\r\n',
  'units/orrinvale-hearth-55/photos/blooming.jpg': Buffer.from([0xff, 0xd8, 0, 10, 13, 0xff]),
  'units/orrinvale-hearth-55/runs/sdr-calm.json': `{"mode":"Calm","stage":"as-delivered","signal":"SDR","taken":"2026-09-15T10:20:00+01:00",
    "target":{"gamut":"BT.709","white":"D65","eotf":"BT.1886"},"source":{"bits":10,"range":"narrow"},"humidity":0.450}`,
  'units/orrinvale-hearth-55/runs/sdr-calm.csv':
    'series,code,x,y,Y,probe\ngreyscale,64,0.3000,0.310,0.0500,A\ngreyscale,502,0.3130,0.3290,57.90,A\n\n# pause\ngreyscale,940,0.3127,0.329,301.20,"A, B"\n',
  'units/orrinvale-hearth-55/runs/sdr-calm@1.json':
    '{"mode":"Calm","stage":"as-delivered","signal":"SDR","target":{"gamut":"BT.709","white":"D65","eotf":"BT.1886"}}',
  'units/orrinvale-hearth-55/runs/sdr-calm@1.csv':
    'series,stimulus,X,Y,Z\r\ngreyscale,100,286.10,301.20,328.20\r\n',
  'articles/hearth-55.md': '# Orrinvale Hearth 55\n\nBlacks are a deep 0.05\u00a0cd/m².',
  'articles/hearth-55.json':
    '{"title":"Orrinvale Hearth 55","unit":"orrinvale-hearth-55","state":"draft","date":"2026-10-02","score":7.50,"desk":"north"}',
  'recipes/quick.json': '{"steps":[1.50]}',
};

export function writeFiles(folder: string, files: Readonly<Record<string, string | Buffer>>): string {
  for (const [path, content] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), content);
  }
  return folder;
}

/** Every file below a folder by path, as Latin-1 text so that bytes compare. */
export function filesBelow(folder: string, below = ''): Record<string, string> {
  return Object.fromEntries(
    readdirSync(join(folder, below))
      .sort()
      .flatMap((name) => {
        const path = below === '' ? name : `${below}/${name}`;
        return statSync(join(folder, path)).isDirectory()
          ? Object.entries(filesBelow(folder, path))
          : [[path, readFileSync(join(folder, path), 'latin1')]];
      }),
  );
}
