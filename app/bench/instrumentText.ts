import type { Instrument, Source } from '../../shared/contract/run.ts';
import { numberText, thin } from '../plots/numberText.ts';
import { dateText } from './dateText.ts';

/** The instrument and what it is good for, in one sentence; what is not noted is said. */
export function instrumentSentence(instrument: Instrument | undefined): string {
  if (!instrument) return 'No instrument noted: the house default stands in, and verdicts say so.';
  const { u_x: ux, u_y: uy, coverage_k: k } = instrument;
  const chromaticity =
    ux === undefined && uy === undefined
      ? null
      : ux === uy
        ? `x and y ±${plain(ux)}`
        : `x ±${plain(ux)}, y ±${plain(uy)}`;
  const parts = [
    instrument.name ?? 'instrument without a name',
    instrument.serial ? `no. ${instrument.serial}` : null,
    instrument.u_luminance_percent === undefined
      ? null
      : `luminance ±${plain(instrument.u_luminance_percent)}${thin}%`,
    chromaticity,
    k === undefined || k === 2 ? null : `k = ${plain(k)}`,
    instrument.calibrated ? `calibrated ${dateText(instrument.calibrated)}` : 'calibration not noted',
    instrument.matched_to ? `matched to the ${instrument.matched_to}` : null,
    instrument.drift_check ? `drift check: ${instrument.drift_check}` : null,
  ];
  const sentence = `${parts.filter((part) => part !== null).join(', ')}.`;
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}

/** "Pattern generator, 10 bits, narrow range." */
export function sourceSentence(source: Source | undefined): string {
  if (!source) return '';
  const parts = [
    source.name,
    source.bits === undefined ? null : `${source.bits}${thin}bits`,
    source.range ? `${source.range} range` : null,
    source.max_cll === undefined ? null : `MaxCLL ${numberText(source.max_cll, 0)}${thin}cd/m²`,
  ].filter(Boolean);
  const sentence = parts.join(', ');
  return sentence === '' ? '' : `${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}.`;
}

/** As many decimals as it was written with */
function plain(value: number | undefined): string {
  if (value === undefined) return 'not noted';
  return numberText(value, String(value).split('.')[1]?.length ?? 0);
}
