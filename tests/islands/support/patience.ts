/** What a page fetches or works out takes its time on a busy machine: it is waited for, however long it takes. */
import { configure } from '@testing-library/preact';
import { beforeEach } from 'vitest';

configure({ asyncUtilTimeout: 180_000 });

/** A job that one test says is not known to the next. */
beforeEach(() => window.sessionStorage.clear());
