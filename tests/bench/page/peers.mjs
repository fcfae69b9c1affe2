// All that the page of the bench needs from npm, in one bundle.

export { READINGS } from './survey.mjs';
export { lean } from './lean.mjs';
export { leanPicture, link, usualPicture } from './pack.mjs';
export { usual } from './usual.mjs';
