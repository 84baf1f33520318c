/** What a link to a swatch trial asks for in vain is named as its reader would name it. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { leftOutOf } from '../../../src/core/trial/left-out';

const NAMES = {
  paper: (id: string) => (id === 'kozo' ? 'Kozo' : ''),
  adhesive: (id: string) => ({ pva: 'PVA', paste: 'Paste' })[id] ?? '',
  substrate: (id: string) => (id === 'card' ? 'Card' : ''),
  tool: (id: string) => (id === 'roller' ? 'Roller' : ''),
};

test('what a link asks for in vain is named', () => {
  expect(leftOutOf('?v=1&paper=kozo~18gsm&on=card&glue=paste.pva&tool=roller&hold=35', NAMES)).toEqual([]);
  expect(leftOutOf('', NAMES)).toEqual([]);
  expect(leftOutOf('paper=moon&glue=pva.moon&on=mars&tool=%00&rh=%', NAMES)).toEqual([
    'rh',
    'paper (moon)',
    'glue (pva.moon)',
    'on (mars)',
    'tool (\0)',
  ]);
  expect(leftOutOf('paper=~&glue=pva.pva.pva.pva.pva.pva.paste', NAMES)).toEqual([
    'paper (~)',
    'glue (pva.pva.pva.pva.pva.pva.paste)',
  ]);
});
test('no text throws', () => {
  fc.assert(fc.property(fc.string(), (text) => void leftOutOf(text, NAMES)));
});
