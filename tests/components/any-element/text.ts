import fc from 'fast-check';

/** Strings that would do harm where text is taken for markup, or for a program. */
const hostile = [
  '<img src=x data-injected onerror="globalThis.injected = true">',
  '"><script>globalThis.injected = true</script>',
  "' onclick='globalThis.injected = true' data-injected='",
  '</text></svg><b data-injected onload=globalThis.injected=true>',
  '<!--',
  ']]>',
  '&lt;b data-injected&gt;',
  '&#60;i&#62;&amp;amp;',
  'javascript:globalThis.injected=true',
  '${globalThis.injected = true}',
  '{{constructor.constructor("globalThis.injected = true")()}}',
  ...[
    '__proto__',
    'constructor',
    'hasOwnProperty',
    'toString',
    'null',
    'true',
    '-0',
    '1e999',
    '٣',
    '\u202E',
    '\uD800',
    '\0',
  ],
] as const;

/** What a teacher may write, in one attribute or another. */
const sensible = [
  'B1 6 V + A1 + (R1 [4..40] 12 Ω ∥ (A2 + L1 8 Ω))',
  'B1 3 × 1.5 V r 0.5 Ω + S1 closed + R1 [2..40] 8 Ω hidden',
  'R1 12 Ω ∥ (R2 4 Ω + R3 8 Ω)',
  'B1 6 V + S1 + (L1 6 V 3 W ∥ L2 6 V 3 W); V1 across L2',
  '{"components": [{"id": "R1", "kind": "resistor", "ohms": "12"}]}',
  ...[
    'quay',
    'R1',
    'S1',
    'B1',
    'A1',
    'L1',
    'I_R1',
    'V_L1',
    'P_B1',
    'R_total',
    'needle',
    'digits',
    'readings',
    'values',
  ],
  ...[
    '0',
    '1',
    '3',
    '2.5',
    '0.6 A',
    '-3..3 A',
    '0.01 A',
    'ohm power',
    'junction',
    'en',
    'rtl',
    'off',
    'all',
    'blank',
    '',
  ],
] as const;

/** Any string at all. */
export const anyText: fc.Arbitrary<string> = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 60 }),
  fc.string({ unit: 'grapheme', maxLength: 200 }),
  fc.constantFrom(...hostile),
  fc
    .tuple(
      fc.constantFrom(...sensible),
      fc.nat({ max: 50 }),
      fc.nat({ max: 8 }),
      fc.constantFrom('', '-', ...hostile, '1e400', '∥', '('),
    )
    .map(([text, at, length, other]) => text.slice(0, at) + other + text.slice(at + length)),
  fc
    .array(fc.constantFrom(...Array.from('B1 6V + R1Ω∥()[]..;,-×rhidden\n\t')), { maxLength: 60 })
    .map((signs) => signs.join('')),
);

/** What stands in the other attributes meanwhile: mostly what makes sense there or elsewhere. */
export const otherText: fc.Arbitrary<string> = fc.oneof(
  { weight: 4, arbitrary: fc.constantFrom(...sensible) },
  anyText,
);
