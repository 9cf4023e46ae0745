//! Values from outside the project, each with its source.

mod curves;
mod downgrade_temperature;
mod forces;
mod geodesic;
mod regulation_13;
mod service_brakes;
mod stopping;
mod trade;
