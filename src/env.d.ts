/// <reference path="../.astro/types.d.ts" />

declare module 'virtual:records' {
  const records: import('./data/tables').Tables;
  export default records;
}
