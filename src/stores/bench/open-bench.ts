/** The calculator that measures a bench, over this site's own records. */
import { catalogue } from '../../data/catalogue';
import { createBench, type BenchStore } from './bench';

export const openBench = (): BenchStore => createBench(catalogue);
