import { plainTextOfMarkdown } from '../../../shared/article/plainText.ts';
import { defaultHouse } from '../../../shared/claims/house/defaults.ts';
import { readArticle } from '../../../shared/claims/reading/index.ts';
import type { NamedUnit, ReadingContext } from '../../../shared/contract/articleText.ts';
import type { Check, Operand, StatedNumber } from '../../../shared/contract/check.ts';
import type { Proposal } from '../../../shared/contract/claim.ts';

function unit(
  id: string,
  maker: string,
  model: string,
  diagonalInches: number,
  more: Partial<NamedUnit> = {},
): NamedUnit {
  return { id, maker, model, diagonalInches, variantInches: [], modes: [], facts: [], topics: [], ...more };
}

/** The invented world that the sentences speak of. */
export const context: ReadingContext = {
  own: 'orrinvale-hearth-55',
  locale: 'en-GB',
  date: '2026-10-02',
  house: defaultHouse,
  conditions: {
    SDR: { mode: 'Calm', stage: 'as-delivered' },
    HDR10: { mode: 'HDR Calm', stage: 'as-delivered' },
  },
  units: [
    unit('orrinvale-hearth-55', 'Orrinvale', 'Hearth 55', 55, {
      variantInches: [65],
      modes: [
        { mode: 'Calm', signal: 'SDR', stage: 'as-delivered' },
        { mode: 'HDR Calm', signal: 'HDR10', stage: 'as-delivered' },
        { mode: 'Game', signal: 'SDR', stage: 'as-delivered' },
      ],
      criteria: ['picture', 'value'],
    }),
    unit('veltrane-plain-50', 'Veltrane', 'Plain 50', 50),
    unit('kasulind-vane-50', 'Kasulind', 'Vane 50', 50),
    unit('tamarick-crest-55', 'Tamarick', 'Crest 55', 55),
    unit('nocthale-umbra-55', 'Nocthale', 'Umbra 55', 55),
  ],
};

export function read(markdown: string, more: Partial<ReadingContext> = {}): Proposal[] {
  return readArticle(plainTextOfMarkdown(markdown), { ...context, ...more }).proposals;
}

function conditionsText(conditions: Operand['conditions']): string {
  const { origin: _origin, unmatched, unit: unitId, ...rest } = conditions;
  const parts = Object.entries(rest).map(([key, value]) => `${key} ${value}`);
  if (unitId) parts.push(unitId.split('-')[0]!);
  if (unmatched) parts.push('unmatched');
  return parts.length > 0 ? ` {${parts.sort().join(', ')}}` : '';
}

function operandText(operand: Operand): string {
  if (operand.type === 'fact') return `fact.${operand.key}${conditionsText(operand.conditions)}`;
  const { selector, conditions, id } = operand;
  const from =
    selector.from === undefined ? '' : ` ${selector.fromIncluded === false ? '>' : '≥'}${selector.from}`;
  const to = selector.to === undefined ? '' : ` ${selector.toIncluded === false ? '<' : '≤'}${selector.to}`;
  const stat =
    selector.stat === 'scalar'
      ? ''
      : ` ${selector.stat}${selector.at === undefined ? '' : ` ${selector.at}`}`;
  const exceptions = selector.exceptions ? ` but ${selector.exceptions}` : '';
  return `${id}${stat}${from}${to}${exceptions}${conditionsText(conditions)}`;
}

function statedText(stated: StatedNumber | undefined): string {
  if (!stated) return '';
  const round = (value: number) => Number(value.toPrecision(6));
  return `${round(stated.x)} ${stated.lowOpen ? '(' : '['}${round(stated.low)}, ${round(stated.high)}${stated.highOpen ? ')' : ']'}`;
}

/** A check in one line, so that a table of sentences can be read by a person. */
export function checkText(check: Check): string {
  const not = 'negated' in check && check.negated ? 'not ' : '';
  switch (check.kind) {
    case 'value':
      return `${not}value ${operandText(check.operand)} = ${check.range ? `${statedText(check.range.min)} to ${statedText(check.range.max)}` : statedText(check.stated)}${check.eitherSide ? ' either side' : ''}`;
    case 'bound':
      return `${not}bound ${check.bounds.map((bound) => `${operandText(bound.operand)} ${bound.op} ${bound.x}`).join(' and ')}`;
    case 'onset':
      return `onset ${operandText(check.operand).replace(' all', '')} ${check.side} ${check.limit} ${check.from === undefined ? `to ${check.to}` : `from ${check.from}`} ${check.edge}${check.mostly ? ' mostly' : ''}`;
    case 'ratio':
    case 'difference':
      if (check.op)
        return `${check.kind} ${operandText(check.a)} : ${operandText(check.b)} ${check.op} ${Number(check.stated.x.toPrecision(6))}`;
      return `${not}${check.kind} ${operandText(check.a)} : ${operandText(check.b)} = ${statedText(check.stated)}`;
    case 'order': {
      const { cohort } = check;
      const parts = [
        cohort.units && `of ${cohort.units.join(' ')}`,
        cohort.priceUnder && `under ${cohort.priceUnder.amount} ${cohort.priceUnder.currency}`,
        cohort.year && `in ${cohort.year}`,
        cohort.last && `last ${cohort.last}`,
        cohort.except && `bar ${cohort.except.join(' ')}`,
        cohort.diagonalInches && `${cohort.diagonalInches} in`,
      ].filter(Boolean);
      const rank = check.rank.type === 'position' ? `position ${check.rank.n}` : check.rank.type;
      return `${not}order ${operandText(check.key)} ${check.direction} ${rank}${parts.length > 0 ? ` ${parts.join(' ')}` : ''}`;
    }
    case 'direction':
      return `${not}direction ${operandText(check.operand)} ${check.name}${check.size ? ` ${check.size}` : ''}${check.from ? ` from ${check.from.x}` : ''}`;
    case 'fact':
      return `${not}fact ${check.key} ${check.op} ${Array.isArray(check.x) ? check.x.join('+') : check.x}${check.by ? ` by ${check.by}` : ''}${conditionsText(check.conditions)}`;
    case 'observed':
      return `${not}observed ${check.topic} ${check.severity.join('–')}${conditionsText(check.conditions)}`;
    case 'score':
      return `${not}score ${check.criterion} ${check.op ?? '='} ${check.x}${check.max ? ` of ${check.max}` : ''}`;
  }
}

export function proposalText(proposal: Proposal): string {
  if (proposal.check) return checkText(proposal.check);
  if (proposal.asks) return `asks ${proposal.asks.map(checkText).join(' or ')}`;
  return proposal.opinion ? 'opinion' : 'unproven';
}
