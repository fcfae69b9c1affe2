//! Every limit, once: least, most, why, and who says so.
