//! Values from outside the project: the rows of `tests::evidence`, which name their sources.

mod rows;
