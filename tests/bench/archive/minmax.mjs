// What a web developer would write in Node.js: the least and the most of every reading of every
// survey, with zod and mathjs, over the same lines as `hangtrue check`.
//
//     node tests/bench/archive/minmax.mjs SURVEYS.jsonl > ANSWERS.jsonl
//
// It does: JSON; the shape (one text a place, or several), with zod; each text to a number, whole,
// fraction or both, by mathjs's own fractions, not by its parser of expressions, which is far
// slower; each number to millimetres with mathjs's units; least and most. One line of JSON a survey.
// It does not: feet, words, quotes and slips of the pen in a text; readings against each other; the
// judge; the four ordered numbers; sentences. Of mathjs only what is needed is loaded.

import { createReadStream } from 'node:fs';
import { createInterface } from 'node:readline';
import { create, fractionDependencies, unitDependencies } from 'mathjs';
import * as z from 'zod';
import { LIMITS } from './limits.mjs';

const { fraction, unit } = create({ fractionDependencies, unitDependencies });

const reading = (name, [least, most]) => {
  const length = z.string().transform((typed, context) => {
    try {
      return unit(fraction(typed).valueOf(), name).toNumber('mm');
    } catch {
      context.addIssue({ code: 'custom', message: `${typed} is no length` });
      return z.NEVER;
    }
  }).pipe(z.number().min(least).max(most));
  return z.record(z.string(), z.union([length, z.array(length)])).optional();
};
const surveyIn = (name) => z.object({
  id: z.string(),
  readings: z.object(Object.fromEntries(
    Object.entries(LIMITS).map(([group, limits]) => [group, reading(name, limits)]),
  )),
});
const schemas = { in: surveyIn('in'), mm: surveyIn('mm') };

let answers = '';
const lines = createInterface({ input: createReadStream(process.argv[2]) });
// The event, not `for await`: the manual says which of them is the faster.
lines.on('line', (line) => {
  const survey = JSON.parse(line);
  const { success, error } = schemas[survey.unit].safeParse(survey);
  const told = ({ path, message }) => `${path.join('.')}: ${message}`;
  const issues = success ? [] : error.issues.map(told);
  answers += `${JSON.stringify({ id: survey.id, ok: success, issues })}\n`;
  if (answers.length > 1 << 16) {
    process.stdout.write(answers);
    answers = '';
  }
});
lines.on('close', () => process.stdout.write(answers));
