// The usual stack: fraction.js reads, mathjs converts, zod checks, React renders.
//
// A key does: every reading of the survey to a number and to millimetres, least and most of each,
// spread and diagonal, all with zod in one pass; the three fields of the screen, echo, problems, and
// the tape anew. Fast paths: fields are memoised, so that only the one typed in is rendered; what
// never changes is one constant element; production build; of mathjs only its units, and no parser
// of expressions. It does not: feet, words, slips of the pen; the judge; the drawing of the opening;
// keeping the draft; the live region.

import Fraction from 'fraction.js';
import { create, unitDependencies } from 'mathjs';
import { createElement as h, memo, useState } from 'react';
import { flushSync } from 'react-dom';
import { createRoot } from 'react-dom/client';
import * as z from 'zod';
import { FIELDS, LIMITS, READINGS, TICKS, across, group, shift } from './survey.mjs';

const { unit } = create({ unitDependencies });

const length = ([least, most]) => z.string().transform((text, context) => {
  try {
    return unit(new Fraction(text).valueOf(), 'in').toNumber('mm');
  } catch {
    context.addIssue({ code: 'custom', message: `${text} is no length` });
    return z.NEVER;
  }
}).pipe(z.number().min(least).max(most));
const schema = z.object(Object.fromEntries(
  Object.keys(READINGS).map((name) => [name, length(LIMITS[group(name)])]),
)).superRefine((lengths, context) =>
  across(lengths, (message) => context.addIssue({ code: 'custom', path: ['all'], message })));

const Field = memo(({ name, label, text, millimetres, problem, type }) => h(
  'div', { className: 'field' },
  h('label', { htmlFor: `r-${name}` }, label),
  h('p', { className: 'hint', id: `r-${name}-hint` }, 'For example 96 3/16'),
  h('input', {
    id: `r-${name}`, value: text, inputMode: 'decimal', autoComplete: 'off', spellCheck: false,
    'aria-describedby': `r-${name}-hint r-${name}-echo`, 'aria-invalid': problem !== undefined,
    onChange: type, name,
  }),
  h('p', { className: 'echo', id: `r-${name}-echo` },
    millimetres === undefined ? '' : `${text} in · ${millimetres.toFixed(1)} mm`),
  problem === undefined ? null : h('p', { className: 'error' }, problem),
));
const still = TICKS.map((d) => h('path', { key: d, d }));
const Tape = memo(({ millimetres }) => h(
  'svg', { className: 'tape', viewBox: '0 0 320 60' }, h('g', { transform: shift(millimetres) }, still),
));

const Survey = () => {
  const [texts, setTexts] = useState(READINGS);
  const [type] = useState(() => ({ target: { name, value } }) =>
    setTexts((old) => ({ ...old, [name]: value })));
  const result = schema.safeParse(texts);
  const problems = {};
  if (!result.success)
    for (const { path, message } of result.error.issues) problems[path[0]] ??= message;
  const read = (name) => result.data?.[name];
  return h('form', null, FIELDS.map(([name, label]) => h(Field, {
    key: name, name, label, type, text: texts[name], millimetres: read(name), problem: problems[name],
  })), h(Tape, { millimetres: read('width.low') }),
  h('p', { className: 'all' }, problems.all ?? ''));
};

export const usual = (root) => {
  flushSync(() => createRoot(root).render(h(Survey)));
  const input = root.querySelector('input');
  // As React's own tests type: past its record of the value, then the event.
  const set = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value').set;
  return {
    input,
    echo: () => root.querySelector('.echo').textContent,
    set: (text) => set.call(input, text),
    // An event that a script sends is rendered later unless it is flushed; one of a person's is not.
    key: () => flushSync(() => input.dispatchEvent(new InputEvent('input', { bubbles: true }))),
  };
};
