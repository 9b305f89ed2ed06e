/** True only in the build for tests in a browser. */
declare const __TEST_BRIDGE__: boolean;
