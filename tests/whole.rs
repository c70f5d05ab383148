//! The whole program against a fake platform and a fresh database.

use axum as _;
use insta as _;
use proptest as _;
use tempfile as _;
