/**
 * Property tests draw the same cases on every run, so that a red test is red for everyone; another
 * SEED draws others.
 */
import fc from 'fast-check';

fc.configureGlobal({ seed: Number(process.env['SEED'] ?? '20260101') });
