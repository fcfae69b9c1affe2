// The survey in which a key is pressed, and what both stacks hold it to.
// In millimetres; crates/core/src/bounds.rs has the reasons.

export const READINGS = {
  'width.low': '92 1/4',
  'width.middle': '92 3/16',
  'width.high': '92 1/4',
  'height.left': '101 1/2',
  'height.center': '101 9/16',
  'height.right': '101 1/2',
  'header.left': '9 1/2',
  'header.right': '9 1/2',
  'bow.first': '1 1/4',
  'bow.second': '1 1/4',
  'diagonal.rising': '137 1/8',
  'loop.sill_to_bow': '109 3/4',
};

export { LIMITS } from '../archive/limits.mjs';

export const SPREAD = 38.1;

export const group = (name) => name.slice(0, name.indexOf('.'));

// What the checks across readings need, and no more: the spread of what is read at several places,
// the diagonal by Pythagoras. Neither judges; `lengths` is by name.
export const across = (lengths, tell) => {
  for (const name of ['width', 'height', 'header', 'bow']) {
    const all = Object.keys(lengths).filter((key) => group(key) === name).map((key) => lengths[key]);
    if (Math.max(...all) - Math.min(...all) > SPREAD) tell(`The ${name}s differ by more than 1 1/2 in`);
  }
  const square = Math.hypot(lengths['width.middle'], lengths['height.center']);
  if (Math.abs(lengths['diagonal.rising'] - square) > SPREAD) tell('The diagonal does not fit');
};

// The tape that follows the reading: its ticks stand still, one attribute moves it.
export const shift = (millimetres) => `translate(${-(millimetres ?? 0)} 0)`;
export const TICKS = Array.from({ length: 65 }, (_, at) => `M${at * 5} 0v${[30, 10, 15, 10, 20, 10, 15, 10][at % 8]}`);
export const FIELDS = [['width.low', 'Low'], ['width.middle', 'Middle'], ['width.high', 'High']];
