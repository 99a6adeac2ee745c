import { z } from 'zod';
import {
  acceptedProofSchema,
  type StoredClaim,
  storedClaimSchema,
} from '../../shared/contract/storedClaim.ts';
import { formatJson, nodeOf, parseJson } from './jsonNode.ts';

/**
 * `articles/<article>.claims.jsonld`: a W3C Web Annotation collection (Recommendation of 23 February 2017, from
 * memory). Each claim is an annotation on the article's plain text with a quote and a position selector; what only
 * Nitproof knows stands in the body under its own terms.
 */
export const claimsCollectionSchema = z.looseObject({
  '@context': z.unknown(),
  type: z.literal('AnnotationCollection'),
  total: z.number().int().nonnegative(),
  first: z.looseObject({
    type: z.literal('AnnotationPage'),
    items: z.array(
      z.looseObject({
        id: z.string().min(1),
        type: z.literal('Annotation'),
        target: z.looseObject({
          source: z.string(),
          selector: z.tuple([
            z.looseObject({
              type: z.literal('TextQuoteSelector'),
              exact: z.string().min(1),
              prefix: z.string(),
              suffix: z.string(),
            }),
            z.looseObject({
              type: z.literal('TextPositionSelector'),
              start: z.number().int().nonnegative(),
              end: z.number().int().positive(),
            }),
          ]),
        }),
        body: z.looseObject({
          type: z.literal('Proof'),
          origin: z.enum(['accepted', 'manual']),
          check: storedClaimSchema.shape.check,
          opinion: z.boolean().optional(),
          proof: acceptedProofSchema.optional(),
        }),
      }),
    ),
  }),
});
export type ClaimsCollection = z.infer<typeof claimsCollectionSchema>;

const context = ['http://www.w3.org/ns/anno.jsonld', { '@vocab': 'urn:nitproof:' }];
const claimIdPrefix = 'urn:nitproof:claim:';

export function claimsOf(collection: ClaimsCollection): StoredClaim[] {
  return collection.first.items.map(({ id, target, body }) => {
    const [quote, position] = target.selector;
    return {
      id: id.startsWith(claimIdPrefix) ? id.slice(claimIdPrefix.length) : id,
      anchor: {
        exact: quote.exact,
        prefix: quote.prefix,
        suffix: quote.suffix,
        start: position.start,
        end: position.end,
      },
      origin: body.origin,
      check: body.check,
      ...(body.opinion === undefined ? {} : { opinion: body.opinion }),
      ...(body.proof === undefined ? {} : { proof: body.proof }),
    };
  });
}

/** Canonical text of the collection; keys and number texts that `former` has and Nitproof does not know stay. */
export function claimsText(article: string, claims: readonly StoredClaim[], former: string | null): string {
  const before = former === null ? null : parseJson(former, 'claims');
  const formerNode = before?.ok ? before.value : undefined;
  const formerItems = new Map(
    former === null
      ? []
      : claimsCollectionSchema.parse(JSON.parse(former)).first.items.map((item) => [item.id, item]),
  );
  const collection = {
    ...(former === null ? { '@context': context } : (JSON.parse(former) as object)),
    type: 'AnnotationCollection',
    total: claims.length,
    first: {
      type: 'AnnotationPage',
      items: claims.map((claim) => {
        const id = formerItems.has(claim.id) ? claim.id : claimIdPrefix + claim.id;
        const old = formerItems.get(id);
        return {
          ...old,
          id,
          type: 'Annotation',
          ...(old === undefined ? { motivation: 'assessing' } : {}),
          target: {
            ...old?.target,
            source: `${article}.md`,
            selector: [
              {
                type: 'TextQuoteSelector',
                exact: claim.anchor.exact,
                prefix: claim.anchor.prefix,
                suffix: claim.anchor.suffix,
              },
              { type: 'TextPositionSelector', start: claim.anchor.start, end: claim.anchor.end },
            ],
          },
          body: {
            ...old?.body,
            type: 'Proof',
            origin: claim.origin,
            check: claim.check,
            opinion: claim.opinion,
            proof: claim.proof,
          },
        };
      }),
    },
  };
  return formatJson(nodeOf(collection, formerNode));
}
