//! Names of mistakes that may both be true of one answer.

/// Pairs that are never offered together: they say the same, one is a case of the other, or the
/// answer of one can come from the other. Read by people, one pair a line.
const ALIKE: &[(&str, &str)] = &[
    ("all-triangles-fold-the-same", "fold-line-for-each-side"),
    ("answer-given-again", "kept-the-number"),
    ("brackets-left-out", "operations-swapped"),
    ("compared-bottoms-only", "compared-tops-only"),
    ("compared-sizes-without-signs", "negatives-ordered-by-size"),
    ("corner-lines-taken-as-folds", "cut-in-half-is-a-fold"),
    ("counted-unshaded", "one-part-off"),
    ("cut-in-half-is-a-fold", "fold-line-for-each-side"),
    ("decimal-point-as-in-adding", "decimal-point-misplaced"),
    ("decimal-point-left-out", "decimal-point-misplaced"),
    ("decimal-point-misplaced", "moved-point-in-divisor-only"),
    ("divided-by-one-edge-only", "stopped-after-one-step"),
    ("dollars-multiplied-only", "used-one-only"),
    ("fact-one-off", "fact-one-short"),
    (
        "fact-question-as-statistical",
        "one-answer-question-as-statistical",
    ),
    ("factors-for-multiples", "factors-with-multiples"),
    ("factors-with-multiples", "multiples-for-factors"),
    ("family-of-four-sides-left-out", "only-one-family"),
    ("first-amount-as-answer", "used-one-only"),
    ("left-out-one-part", "stopped-after-one-step"),
    ("measures-turned-round", "middle-and-spread-mixed-up"),
    ("multiples-for-factors", "only-one-factor-found"),
    ("multiplied-all-numbers", "triangle-not-halved"),
    ("multiplied-bottom", "multiplied-top-and-bottom"),
    (
        "multiplied-instead-of-divided",
        "multiplied-instead-of-shared",
    ),
    ("not-rounded", "rounded-down"),
    ("not-rounded", "rounded-to-other-place"),
    ("not-rounded", "rounded-up"),
    ("not-the-least-multiple", "product-for-least-multiple"),
    ("odd-means-prime", "one-taken-as-prime"),
    ("odd-means-prime", "two-left-out-of-primes"),
    ("one-part-off", "same-difference"),
    ("one-part-off", "same-top-number"),
    ("one-zero-left-out", "zeros-left-out"),
    ("place-gap-off-by-one", "place-gap-too-many"),
    ("place-gap-off-by-one", "zeros-left-out"),
    ("quotient-place-wrong", "zero-in-quotient-left-out"),
    ("rounded-down", "rounded-to-larger-place"),
    ("rounded-down", "rounded-to-other-place"),
    ("rounded-to-larger-place", "rounded-up"),
    ("rounded-to-other-place", "rounded-up"),
    ("saw-a-tail-in-even-data", "tail-on-the-wrong-side"),
    ("second-amount-as-answer", "used-one-only"),
    ("stopped-after-one-step", "two-sides-only"),
    ("stopped-after-one-step", "used-one-only"),
    ("wrong-operation-for-words", "wrong-sign-for-words"),
];

/// Whether the two names may both be true of one answer.
pub(super) fn alike(one: &str, two: &str) -> bool {
    ALIKE
        .iter()
        .any(|pair| *pair == (one, two) || *pair == (two, one))
}
