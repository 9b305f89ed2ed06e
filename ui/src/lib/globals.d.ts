/** True only in the build for tests in a browser. */
declare const __TEST_BRIDGE__: boolean;
/** True only in the build for a browser without the program's window. */
declare const __WEB__: boolean;
/** Concepts of the built-in catalogue for each grade. */
declare const __CONCEPTS_BY_GRADE__: Record<number, number>;
