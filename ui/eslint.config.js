import { defineConfig } from 'eslint/config';
import svelte from 'eslint-plugin-svelte';
import globals from 'globals';
import ts from 'typescript-eslint';
import svelteConfig from './svelte.config.js';

/** Only src/lib/backend knows what the screens run in. */
const oneDoor = {
  'no-restricted-imports': ['error', { patterns: [{ group: ['@tauri-apps/*'] }] }],
};

export default defineConfig(
  {
    ignores: [
      'dist',
      'dist-bridge',
      'dist-pseudo',
      'dist-web',
      'dist-contact',
      'node_modules',
      'coverage',
      'measure/**',
      'src/lib/backend/contract.ts',
    ],
  },
  ts.configs.strictTypeChecked,
  svelte.configs.recommended,
  {
    languageOptions: {
      globals: globals.browser,
      parserOptions: { projectService: true, extraFileExtensions: ['.svelte'] },
    },
    rules: {
      ...oneDoor,
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      '@typescript-eslint/no-confusing-void-expression': ['error', { ignoreArrowShorthand: true }],
      '@typescript-eslint/switch-exhaustiveness-check': [
        'error',
        { considerDefaultExhaustiveForUnions: true },
      ],
    },
  },
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: { parserOptions: { parser: ts.parser, svelteConfig } },
    rules: {
      'svelte/no-inline-styles': ['error', { allowTransitions: true }],
      'svelte/no-at-html-tags': 'error',
      // Keys are named by tests in Rust as they are by people: as they stand.
      'svelte/no-navigation-without-resolve': 'off',
      // A template names its last case as well, so that `never` fails to compile after a new one.
      '@typescript-eslint/no-unnecessary-condition': 'off',
    },
  },
  {
    files: ['e2e/**', 'playwright.config.ts'],
    rules: {
      // Tests wait for what they expect, never for a time.
      'no-restricted-globals': ['error', 'setTimeout', 'setInterval'],
      'no-restricted-syntax': [
        'error',
        { selector: "Identifier[name='waitForTimeout']", message: 'Expect something.' },
      ],
    },
  },
  {
    // Also read by engines that are too old for the rest.
    files: ['public/**'],
    extends: [ts.configs.disableTypeChecked],
    languageOptions: { ecmaVersion: 5, sourceType: 'script' },
  },
  { files: ['src/lib/backend/**'], rules: { 'no-restricted-imports': 'off' } },
);
