import { type Item, isWord, keyOf } from './items.ts';
import type { Scene } from './scene.ts';

/** Things that come with a set or stand around it: their prices, weights and sockets are not the set's. */
const accessories =
  /^(?:brackets?|mounts?|sound ?bars?|subwoofers?|remotes?|controllers?|handsets?|players?|consoles?|receivers?|amplifiers?|projectors?|headphones|cables?|leads?|adaptors?|adapters?|boxes|cartons?|packaging|sideboards?|tables?|sofas?|couch|phones?|tablets?|laptops?|discs?|films?|movies?|episodes?|subscriptions?|services?|channels?|deliver(?:y|ies)|couriers?|postage|batter(?:y|ies)|lamps?|cameras?|generators?|meters?|colorimeters?|licen[cs]es?|upgrades?|repairs?|engineers?|fitters?|fitting|installation|stickers?|cats?|dogs?|matches|match|games?|teams?|tickets?|dinners?|rooms?|walls?|gardens?|halls?|garages?|towers?|mountains?|hero|heroine|cars?|ships?|rockets?|stadiums?|chairs?|speakers?|woofers?|tweeters?|loudspeakers?|bass|treble|audio|sound|music|volume|bezels?|frames?|surrounds?|crates?|chairs?|kitchens?|pizzas?|books?)$/;

/** Words that may stand before an amount without naming what it is the price of. */
const plainBeforeAmount =
  /^(?:thing|i|we|you|one|they|who|nobody|anyone|everyone|wants?|wanting|wish|wishes|this|that|these|those|here|there|at|for|from|to|in|on|of|by|with|as|a|an|the|our|your|my|only|just|still|now|today|currently|then|also|even|yet|and|but|or|so|while|though|because|if|when|where|which|is|are|was|be|been|has|have|had|will|can|may|must|need|needs|comes?|came|get|gets|got|buys?|bought|pay|pays|paid|spend|spent|part|asks?|asked|asking|charges?|charging|shops?|dealers?|retailers?|buyers?|street|list|launch|launched|retail|recommended|sale|online|expect|expected|sold|sells|sell|sale|available|bill|tag|figure|sum|outlay|tested|reviewed|as|price-wise|all|mere|whopping|hefty|modest|reasonable|steep|full|fair|rather|quite|very|too|roughly|exactly|not|no|more|less|than|up|down|out|purse|wallet|change|remains?|stays?|starts?|starting|begins?|stands?|sits?|lists?|priced|costs?|costing|drops?|dropped|falls?|fell|rises?|rose|do|does|did|would|should|could|both|version|model|size|inches|inch|summer|spring|autumn|winter|week|month|year|day|back|set|sets|us|me|off|shelf|uk|britain|money|sterling|vat|including|tax|its|their|'s)$/;

function speaksOfSet(item: Item): boolean {
  return (
    keyOf(item, 'unit') !== undefined ||
    keyOf(item, 'maker') !== undefined ||
    keyOf(item, 'pronoun') !== undefined ||
    item.number?.role === 'size' ||
    isWord(item, 'television', 'televisions', 'tv', 'tvs', 'telly', 'model', 'models', 'rival', 'rivals')
  );
}

/** "The remote weighs 90 g", "a soundbar with two HDMI ports": the thing that the clause is about, when it is no set. */
export function accessoryBefore(scene: Scene, before: Item): Item | undefined {
  const lead = scene.items.filter((item) => item.index < before.index);
  // "On the scales in our post room": a place, and not what weighs so much.
  const isPlace = (place: number) =>
    lead
      .slice(Math.max(0, place - 3), place)
      .some(
        (word, step, all) =>
          isWord(word, 'in', 'into', 'at', 'for', 'across', 'beside', 'near') &&
          !isWord(all[step - 1], 'built'),
      );
  // "The meter at the wall read 172 watts": it only says so.
  const reads = isWord(lead.at(-1), 'read', 'reads', 'showed', 'shows', 'said', 'says', 'recorded');
  const at = lead.findIndex(
    (item, place) =>
      item.type === 'word' &&
      item.meanings.length === 0 &&
      accessories.test(item.text) &&
      !isPlace(place) &&
      !(reads && isWord(item, 'metre', 'metres', 'colorimeter')),
  );
  if (at < 0 || lead.slice(at).some(speaksOfSet)) return undefined;
  const isRelative = isWord(lead[at + 1], 'that', 'which', 'whose', 'with', 'of', 'weighing');
  const owner = lead
    .slice(0, at)
    .some(
      (item, index) => speaksOfSet(item) && !isWord(item, 'its', 'their') && !isWord(lead[index + 1], "'s"),
    );
  return owner && !isRelative ? undefined : lead[at];
}

/** Things that give light of their own: their nits and kelvins are not the set's. */
const lightGivers =
  /^(?:phones?|tablets?|laptops?|monitors?|lamps?|bulbs?|torch(?:es)?|candles?|daylight|sunlight|sun|moon|moonlight|sky|skies|cinemas?|theatres?|projectors?|fires?|headlights?|films?|movies|standards?)$/;

/** "A candle has a colour temperature of 1,900 K", "my phone reaches 1,200 nits" */
export function lightGiverBefore({ items }: Scene, number: Item): Item | undefined {
  const lead = items.filter((item) => item.index < number.index);
  if (lead.some(speaksOfSet)) return undefined;
  return lead.find(
    (item, at) =>
      item.type === 'word' &&
      lightGivers.test(item.text) &&
      !lead
        .slice(Math.max(0, at - 3), at)
        .some(
          (word, step, all) =>
            !isWord(all[step + 1], 'comparison', 'reference', 'scale') &&
            isWord(
              word,
              'in',
              'at',
              'for',
              'with',
              'by',
              'under',
              'on',
              'like',
              'against',
              'of',
              'from',
              'as',
              'during',
            ),
        ),
  );
}

/** "With the £39 bracket": the thing right behind an amount. */
export function accessoryAfter({ items }: Scene, amount: Item): Item | undefined {
  const [first, second] = items.slice(items.indexOf(amount) + 1);
  return [first, isWord(first, 'wall', 'optional', 'matching') ? second : undefined].find(
    (item) => item?.type === 'word' && item.meanings.length === 0 && accessories.test(item.text),
  );
}

/** "I paid £20 for the fern", "gave £4 to the busker": the thing or person behind an amount, when it is no set. */
function boughtThing(scene: Scene, amount: Item): Item | undefined {
  const at = scene.items.indexOf(amount);
  const [link, article, ...rest] = scene.items.slice(at + 1, at + 6);
  if (
    !isWord(link, 'for', 'to') ||
    !isWord(article, 'a', 'an', 'the', 'my', 'our', 'his', 'her', 'some', 'one')
  )
    return undefined;
  const noun = rest.find((item) => item.type !== 'mark');
  const isThing =
    noun?.type === 'word' &&
    noun.meanings.length === 0 &&
    noun.number === undefined &&
    !plainBeforeAmount.test(noun.text);
  if (!isThing || rest.some(speaksOfSet)) return undefined;
  const lead = scene.items.slice(0, at);
  // "It costs £799 for the privilege" is the set's price.
  return lead.some(
    (item) => speaksOfSet(item) || keyOf(item, 'concept') === 'price' || keyOf(item, 'verb') === 'cost',
  )
    ? undefined
    : noun;
}

/** "It has four sockets and, by some miracle, costs £20 more": the aside has no price, what was spoken of has. */
function goesOnBehindAside({ sentence, items, previous }: Scene, { index }: Item): boolean {
  const verb = sentence.findLastIndex((item) => item.index < index && keyOf(item, 'verb') === 'cost');
  return (
    previous !== null &&
    verb >= index - 3 &&
    isWord(sentence[verb - 1], ',') &&
    isWord(items[0], 'and', 'but') &&
    isWord(sentence[items[0]!.index + 1], ',')
  );
}

/** "Wall brackets start at £25": what an amount is the price of, when the words before it name no set. */
export function pricedThing(scene: Scene, amount: Item): Item | undefined {
  // "Picture editor: £799": who speaks is not what is sold.
  const label = scene.sentence.findIndex((item) => item.index < amount.index && isWord(item, ':'));
  const speaker = label > 0 && label <= 2 ? label : -1;
  const lead = scene.items.filter((item) => item.index < amount.index && item.index > speaker);
  const accessory = accessoryBefore(scene, amount) ?? boughtThing(scene, amount);
  if (accessory) return accessory;
  if (goesOnBehindAside(scene, amount)) return undefined;
  // "No other set under £1,100", but not "cables will set you back $25".
  const set = lead.some(
    (item, at) => isWord(item, 'set', 'sets') && !isWord(lead[at + 1], 'you', 'me', 'us', 'back', 'up'),
  );
  if (set || lead.some((item) => speaksOfSet(item) || keyOf(item, 'concept') === 'price')) return undefined;
  return lead.find(
    (item) =>
      item.type === 'word' &&
      item.meanings.length === 0 &&
      !plainBeforeAmount.test(item.text) &&
      // "It'll", "you'd"
      !/'(?:ll|d|re|ve|m)$/.test(item.text),
  );
}
