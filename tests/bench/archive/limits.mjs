// The least and the most of a reading, in millimetres: crates/core/src/bounds.rs has the reasons.
export const LIMITS = {
  width: [914.4, 2600],
  height: [914.4, 3098.8],
  header: [177.8, 1219.2],
  bow: [19.05, 50.8],
  diagonal: [914.4, 4600],
  loop: [914.4, 3800],
};
