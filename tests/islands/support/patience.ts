/** What a page fetches or works out takes its time on a busy machine: it is waited for, however long it takes. */
import { configure } from '@testing-library/preact';

configure({ asyncUtilTimeout: 180_000 });
