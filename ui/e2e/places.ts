// Folders and dates that the tests share.
import { fileURLToPath } from 'node:url';

const folder = (path: string) => fileURLToPath(new URL(`../../${path}`, import.meta.url));

export const TOP = folder('');
export const UI = folder('ui/');
export const LOGS = folder('target/test-logs/');
export const SAMPLES = folder('shared/samples/');
export const SHOTS = folder('shots/');
/** The sample class, made once in a run and copied for each test. */
export const SAMPLE = folder('target/test-logs/sample/');

/** The folder that `tests/pseudo/make.py` makes. */
export const PSEUDO_LANGUAGE = folder('target/pseudo/');

/** A Wednesday in the fifth week of the classes that tests make. */
export const TODAY = '2026-09-16';
/** A day in the middle of the sample class's year. */
export const SAMPLE_DAY = '2026-11-24';
