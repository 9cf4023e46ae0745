//! The solver behind messages: what the workers of the page do, and what is said to them.
//!
//! ```text
//! page ─ message ─▶ worker (desk ─ solver) ─ message ─▶ page
//!   └──── road ───▶ study worker (study_desk ─ solver) ───┘
//! ```
//!
//! Two programs are built from this crate, `worker` and `study`. The page knows its [`message`]s. Nothing
//! but [`scope`] and the programs is of a browser: a desk answers natively as well.

pub mod desk;
pub mod message;
pub mod scope;
pub mod study_desk;
