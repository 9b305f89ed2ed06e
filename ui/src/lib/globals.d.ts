/** True only in the build for tests in a browser. */
declare const __TEST_BRIDGE__: boolean;
/** Concepts of the built-in catalogue for each grade. */
declare const __CONCEPTS_BY_GRADE__: Record<number, number>;
