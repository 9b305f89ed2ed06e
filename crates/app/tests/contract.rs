//! The TypeScript contract in the tree is the one that this code describes.

#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    reason = "a test that cannot go on fails"
)]

#[test]
fn typescript_contract_is_current() {
    let path = concat!(
        env!("CARGO_MANIFEST_DIR"),
        "/../../ui/src/lib/backend/contract.ts"
    );
    let want = surefoot_app::typescript();
    if std::env::var_os("WRITE_CONTRACT").is_some() {
        std::fs::write(path, &want).unwrap();
    }
    let have = std::fs::read_to_string(path).unwrap_or_default();
    assert!(
        have == want,
        "stale: run WRITE_CONTRACT=1 cargo test --test contract"
    );
}
