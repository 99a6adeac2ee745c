import type { TemplateConditions } from './placeholders.ts';

/** A sentence as the house says it: read by the same rules as any other, so that it carries its check. */
export interface HousePhrase extends TemplateConditions {
  words: string;
}

const sdr = { signal: 'SDR', stage: 'as-delivered' } as const;
const adjusted = { signal: 'SDR', stage: 'adjusted' } as const;
const hdr = { signal: 'HDR10', stage: 'as-delivered' } as const;

export const housePhrases: readonly HousePhrase[] = [
  { words: 'As delivered, the average greyscale error is {grey.de2000@average}.', ...sdr },
  { words: 'As delivered, the greyscale error peaks at {grey.de2000@max}.', ...sdr },
  { words: 'White reaches {white} in SDR.', ...sdr },
  { words: 'Black stops at {black}.', ...sdr },
  { words: 'The native contrast is {contrast.native}.', ...sdr },
  { words: 'The chequerboard contrast is {contrast.chequer}.', ...sdr },
  { words: 'The average gamma is {gamma.average}.', ...sdr },
  { words: 'The colour chart averages {chart.de2000@average}.', ...sdr },
  { words: 'It covers {coverage.bt709.uv} of BT.709.', ...sdr },
  { words: 'Input lag is {lag}.', ...sdr },
  { words: 'After adjustment the average greyscale error is {grey.de2000@average}.', ...adjusted },
  { words: 'After adjustment the greyscale error peaks at {grey.de2000@max}.', ...adjusted },
  { words: 'In HDR a 10% window reaches {peak@10}.', ...hdr },
  { words: 'In HDR a full white screen reaches {peak@100}.', ...hdr },
  { words: 'In HDR it covers {coverage.p3.uv} of P3.', ...hdr },
  { words: 'In HDR the average greyscale error is {grey.de2000@average}.', ...hdr },
];
