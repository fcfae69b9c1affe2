// The lean stack: numeric-quantity reads, valibot checks, the document is changed by hand.
//
// A key does what it does in the usual stack (usual.mjs), with the same limits and the same fields,
// and leaves the same things out. Fast path: it writes the few texts and attributes that can have
// changed, and only those that have.

import { numericQuantity } from 'numeric-quantity';
import * as v from 'valibot';
import { FIELDS, LIMITS, READINGS, TICKS, across, group, shift } from './survey.mjs';

const length = ([least, most]) => v.pipe(
  v.string(),
  v.transform((text) => numericQuantity(text) * 25.4),
  v.number('no length'),
  v.minValue(least),
  v.maxValue(most),
);
const schema = v.pipe(
  v.object(Object.fromEntries(
    Object.keys(READINGS).map((name) => [name, length(LIMITS[group(name)])]),
  )),
  v.rawCheck(({ dataset, addIssue }) => {
    if (dataset.typed) across(dataset.value, (message) => addIssue({ message }));
  }),
);

const field = ([name, label]) => `<div class="field"><label for="l-${name}">${label}</label>
  <p class="hint" id="l-${name}-hint">For example 96 3/16</p>
  <input id="l-${name}" name="${name}" value="${READINGS[name]}" inputmode="decimal" autocomplete="off"
    spellcheck="false" aria-describedby="l-${name}-hint l-${name}-echo" aria-invalid="false">
  <p class="echo" id="l-${name}-echo"></p><p class="error" hidden></p></div>`;

export const lean = (root) => {
  root.innerHTML = `<form>${FIELDS.map(field).join('')}<svg class="tape" viewBox="0 0 320 60"><g>${
    TICKS.map((d) => `<path d="${d}"/>`).join('')}</g></svg><p class="all"></p></form>`;
  const texts = { ...READINGS };
  const [all, tape] = [root.querySelector('.all'), root.querySelector('g')];
  const shown = FIELDS.map(([name]) => {
    const input = root.querySelector(`[name="${name}"]`);
    const [echo, error] = ['.echo', '.error'].map((css) => input.parentNode.querySelector(css));
    return { name, input, echo, error };
  });
  const write = (element, text) => {
    if (element.textContent !== text) element.textContent = text;
  };
  const show = () => {
    const { success, output, issues } = v.safeParse(schema, texts);
    const problems = {};
    for (const issue of issues ?? []) problems[issue.path?.[0].key ?? 'all'] ??= issue.message;
    for (const { name, input, echo, error } of shown) {
      write(echo, success ? `${texts[name]} in · ${output[name].toFixed(1)} mm` : '');
      write(error, problems[name] ?? '');
      error.hidden = !(name in problems);
      input.setAttribute('aria-invalid', String(name in problems));
    }
    write(all, problems.all ?? '');
    tape.setAttribute('transform', shift(success ? output['width.low'] : undefined));
  };
  root.addEventListener('input', ({ target }) => {
    texts[target.name] = target.value;
    show();
  });
  show();
  const { input, echo } = shown[0];
  return {
    input,
    echo: () => echo.textContent,
    set: (text) => { input.value = text; },
    key: () => input.dispatchEvent(new InputEvent('input', { bubbles: true })),
  };
};
